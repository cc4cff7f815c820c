package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DoubtKind;
import plumbrow.science.chance.SortedDraws;

/**
 * Splits the variance of a gain into what the field is and what the year brings.
 *
 *   S_field = Cov(g(F, Y), g(F, Y')) / Var g      S_year = Cov(g(F', Y'), g(F, Y')) / Var g
 *
 *   g  gain in a draw;  F  inputs of the field, Y of the year, both of the same draw;  F', Y'  those of another draw
 *
 * <p>First-order indices of two groups of inputs by pick-freeze: the other draw is the one half a round further on. Price and
 * yield, which are tied, are both of the year and stay together.
 *
 * <p>Source: Sobol' 1993, Math. Model. Comput. Exp. 1:407; Saltelli et al. 2008, Global Sensitivity Analysis, ch. 4 (values from
 * memory).
 */
final class GainDoubts {
    private static final int FEW = 2_000;
    private static final double WORTH_NAMING = 0.1;
    private static final double THIRD = 1.0 / 3;

    private final FieldModel model;
    private final double[][] columns;
    private final double[] gain;
    private final ProgramModel program;
    private final ProgramModel other;
    private final List<Integer> read;
    private final double variance;

    private GainDoubts(FieldModel model, double[][] columns, double[][] margins, int program, int other) {
        this.model = model;
        this.columns = columns;
        this.gain = FieldWeighing.difference(margins[program], margins[other]);
        this.program = model.programs().get(program);
        this.other = model.programs().get(other);
        this.read = IntStream.concat(model.inputs(this.program), model.inputs(this.other))
                .distinct()
                .filter(place -> !Chances.settled(model.variables().get(place).distribution()))
                .sorted()
                .boxed()
                .toList();
        this.variance = covariance(gain, gain);
    }

    /** The doubt about a program's gain over another; empty where nothing entered leaves any. */
    static Optional<GainDoubt> of(FieldModel model, double[][] columns, double[][] margins, int program, int other) {
        GainDoubts doubts = new GainDoubts(model, columns, margins, program, other);
        double widest = Arrays.stream(doubts.gain).map(Math::abs).max().orElse(0);
        return doubts.variance <= 1e-18 * widest * widest ? Optional.empty() : Optional.of(doubts.split());
    }

    private GainDoubt split() {
        boolean field = anyRead(place -> kind(place) == DoubtKind.FIELD);
        boolean year = anyRead(place -> kind(place) == DoubtKind.YEAR);
        double[] shares = !field ? new double[] {0, 1} : !year ? new double[] {1, 0} : groups();
        double most = 0;
        int top = -1;
        for (int place : read) {
            double share = kind(place) == DoubtKind.FIELD ? share(place) : 0;
            if (share > most) {
                most = share;
                top = place;
            }
        }
        boolean named = top >= 0 && most >= WORTH_NAMING;
        List<GainDoubt.Case> cases = named ? cases(top) : List.of();
        return new GainDoubt(
                program.program().name(),
                other.program().name(),
                shares[0],
                shares[1],
                named ? model.variables().get(top).id() : null,
                named ? Math.min(most, shares[0]) : 0,
                cases,
                says(shares, named ? top : -1, most, cases));
    }

    private boolean anyRead(IntPredicate which) {
        return read.stream().anyMatch(which::test);
    }

    private DoubtKind kind(int place) {
        return model.variables().get(place).doubt();
    }

    /** Share of the variance that one input brings by itself: that of the gain's mean given the input. */
    private double share(int place) {
        double[] x = columns[place];
        if (Arrays.stream(x).allMatch(value -> value == x[0])) {
            return 0;
        }
        double[] fitted = new Regression(x, x.length).fitted(gain);
        return covariance(fitted, fitted) / variance;
    }

    /** The shares of field and year, on all draws, or on fewer where the season has to be followed again. */
    private double[] groups() {
        boolean followed = program.season() != null || other.season() != null;
        int step = followed ? Math.max(1, gain.length / FEW) : 1;
        double[][] same = Thinned.rows(columns, step);
        double[] own = Thinned.row(gain, step);
        int draws = own.length;
        double[][] mixed = same.clone();
        for (int place = 0; place < mixed.length; place++) {
            if (kind(place) == DoubtKind.YEAR) {
                mixed[place] = further(same[place]);
            }
        }
        List<ProgramModel> pair = List.of(program.thinned(step), other.thinned(step));
        double[][] margins = new double[2][draws];
        new Kernel(model, SeasonLoads.of(pair, mixed, draws)).run(pair, mixed, new double[2][0], margins);
        double[] other = FieldWeighing.difference(margins[0], margins[1]);
        double all = (covariance(own, own) + covariance(other, other)) / 2;
        double field = Math.max(0, covariance(own, other) / all);
        double year = Math.max(0, covariance(further(own), other) / all);
        double sum = Math.max(1, field + year);
        return new double[] {field / sum, year / sum};
    }

    /** The same draws, each in the place of one half a round before it. */
    private static double[] further(double[] draws) {
        double[] moved = new double[draws.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = draws[(i + draws.length / 2) % draws.length];
        }
        return moved;
    }

    private static double covariance(double[] a, double[] b) {
        double meanA = SortedDraws.mean(a);
        double meanB = SortedDraws.mean(b);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - meanA) * (b[i] - meanB);
        }
        return sum / a.length;
    }

    private List<GainDoubt.Case> cases(int place) {
        Variable input = model.variables().get(place);
        double[] x = columns[place];
        List<GainDoubt.Case> cases = new ArrayList<>();
        if (input.distribution() instanceof Distribution.Chance) {
            String what = whether(input);
            add(cases, "if " + what, i -> x[i] == 1);
            add(cases, "if not", i -> x[i] == 0);
            return cases;
        }
        double[] sorted = x.clone();
        Arrays.sort(sorted);
        double low = SortedDraws.quantile(sorted, THIRD);
        double high = SortedDraws.quantile(sorted, 1 - THIRD);
        add(
                cases,
                "in the third of the seasons in which it is lowest (under " + Quantities.text(low, input.unit()) + ")",
                i -> x[i] < low);
        add(
                cases,
                "in the third in which it is highest (over " + Quantities.text(high, input.unit()) + ")",
                i -> x[i] > high);
        return cases;
    }

    private void add(List<GainDoubt.Case> cases, String when, IntPredicate there) {
        double[] gains = IntStream.range(0, gain.length)
                .filter(there)
                .mapToDouble(i -> gain[i])
                .toArray();
        if (gains.length > 0) {
            cases.add(new GainDoubt.Case(
                    when,
                    (double) gains.length / gain.length,
                    SortedDraws.mean(gains),
                    FieldWeighing.chanceAbove(gains)));
        }
    }

    /** "Cry3 works on corn rootworm here", from "chance that Cry3 works on corn rootworm here". */
    private static String whether(Variable input) {
        return input.label().replace("chance that ", "");
    }

    private String says(double[] shares, int top, double topShare, List<GainDoubt.Case> cases) {
        String over = "the gain of " + program.program().name() + " over "
                + other.program().name();
        if (shares[0] == 0 && top < 0) {
            return "What is in doubt about " + over + " is what the year brings" + mostly(DoubtKind.YEAR)
                    + ": no one can know it yet. No doubt that counts was entered about the field itself.";
        }
        StringBuilder words = new StringBuilder(
                "Of the doubt about " + over + ", " + part(shares[0]) + " is about this field and could be found out");
        if (top >= 0) {
            Variable input = model.variables().get(top);
            words.append(topShare >= shares[0] / 2 ? ", most of it " : ", the largest part of it ")
                    .append(
                            input.distribution() instanceof Distribution.Chance
                                    ? "whether " + whether(input)
                                    : input.label());
        }
        words.append(". ");
        words.append(cases.stream()
                .map(one -> capital(one.when()) + ", it earns " + more(one.meanGainUsdPerAcre())
                        + " on average and is ahead in " + Odds.words(one.chanceAhead()) + " simulated seasons.")
                .collect(Collectors.joining(" ")));
        if (!cases.isEmpty()) {
            words.append(' ');
        }
        return words.append(capital(part(shares[1])))
                .append(" is what the year brings")
                .append(shares[1] == 0 ? "" : mostly(DoubtKind.YEAR))
                .append(", which no one can know yet.")
                .toString();
    }

    private String mostly(DoubtKind kind) {
        double most = 0;
        int top = -1;
        for (int place : read) {
            double share = kind(place) == kind ? share(place) : 0;
            if (share > most) {
                most = share;
                top = place;
            }
        }
        return top < 0 || most < WORTH_NAMING
                ? ""
                : ", above all " + model.variables().get(top).label();
    }

    private static String more(double gain) {
        return gain >= 0 ? Quantities.dollarsPerAcre(gain) + " more" : Quantities.dollarsPerAcre(-gain) + " less";
    }

    /** A share to the nearest twentieth, which is what the draws support. */
    private static String part(double share) {
        long percent = 5 * Math.round(share * 20);
        if (percent == 0 || percent == 100) {
            return percent == 0 ? "next to nothing" : "nearly all";
        }
        return percent == 50 ? "about half" : "about " + percent + " %";
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
