package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.check.LookUp;
import plumbrow.advice.check.Where;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.science.chance.StandardNormal;
import plumbrow.science.reference.TypicalValue;

/**
 * What telling or looking up each thing is worth on a field, before choosing among the programs that are not barred, as if what
 * nobody has looked up came out clear.
 *
 * <pre>  a number   E_s[ max_c E(m_c | s) ] − max_c E(m_c)     s the answer, which takes away a stated share r of the doubt about x
 *             E(m_c | s) = Σ_k a_ck · r^(k/2) · He_k(s)     a_ck = E( m_c · He_k(z) ) / k!, z the normal score of x, k = 0 to 3
 *  a yes or no  the same over both answers, each right with a stated chance
 *  a price    E_p[ max_c (m_c − spent_c · (p/p0 − 1)) ] − max_c m_c
 *  a look-up  the lead of a program that waits for n of them over the best that may be advised now, times q^n, shared evenly by the n</pre>
 *
 * <p>The program is chosen by one half of the draws and counted by the other, both ways about, so that chance differences between
 * draws are not taken for worth. Source: preposterior analysis, Raiffa &amp; Schlaifer 1961 (value from memory); Hermite expansion of a
 * bivariate normal, Mehler 1866; even shares are the Shapley value where all n are needed. That a thing looked up comes out clear with
 * chance {@value #CLEARS} is common practice, no source.
 */
final class NextWorth {
    /** Chance that one thing looked up comes out clear. */
    static final double CLEARS = 0.8;

    /** Standard deviation of a price that is only typical, of the price. */
    private static final double TYPICAL_PRICE_SD = 0.25;

    private static final int DEGREE = 3;
    /** Normal scores of answers, each as likely as the next. */
    private static final double[] ANSWERS = IntStream.range(0, 200)
            .mapToDouble(i -> StandardNormal.quantile((i + 0.5) / 200))
            .toArray();

    private static final double LABEL_USD = 5;
    private static final double FIELD_USD = 25;
    private static final double ASKING_USD = 0;

    private final Season season;
    private final FieldModel model;
    private final Column[] drawn;
    private final double[] means;
    private final List<Integer> open;
    private final List<List<Finding>> findings;
    private final double now;
    private final double[][] openMargins;

    NextWorth(
            Season season,
            FieldModel model,
            Column[] drawn,
            double[][] margins,
            double[] means,
            Choice asItIs,
            Choice asIfLookedUp,
            List<List<Finding>> findings,
            int baseline) {
        this.season = season;
        this.model = model;
        this.drawn = drawn;
        this.means = means;
        this.open = asIfLookedUp.advisable();
        this.findings = findings;
        this.openMargins = open.stream().map(c -> margins[c]).toArray(double[][]::new);
        this.now = means[asItIs.advised() < 0 ? baseline : asItIs.advised()];
    }

    NextInputs inputs() {
        List<NextInput> all = new ArrayList<>();
        if (open.size() > 1) {
            numbers(all);
            prices(all);
        }
        lookUps(all);
        return NextInputs.of(all);
    }

    private void numbers(List<NextInput> all) {
        Map<String, NextInput> byQuestion = new LinkedHashMap<>();
        for (int place = 0; place < drawn.length; place++) {
            Variable input = model.variables().get(place);
            Optional<Tellable> tellable = Tellable.of(input);
            if (tellable.isEmpty() || Chances.settled(input.distribution())) {
                continue;
            }
            Tellable tell = tellable.get();
            boolean yesOrNo = input.distribution() instanceof Distribution.Chance;
            double worth = yesOrNo
                    ? ofAnswer(openMargins, drawn[place].values(), Tellable.RIGHT)
                    : ofSignal(openMargins, drawn[place].ranks(), tell.share(input));
            NextInput next = input(
                    input.id(),
                    yesOrNo ? NextInput.Kind.YES_OR_NO : NextInput.Kind.NUMBER,
                    tell.question(input),
                    tell.where(),
                    tell.usd(),
                    worth,
                    List.of());
            byQuestion.merge(next.asks(), next, (one, other) -> one.usdPerAcre() >= other.usdPerAcre() ? one : other);
        }
        all.addAll(byQuestion.values());
    }

    /** Products whose prices come from one typical value are dear or cheap together. */
    private void prices(List<NextInput> all) {
        Map<String, List<Product>> together = new LinkedHashMap<>();
        season.shelf().products().stream()
                .filter(product -> TypicalValue.marked(product.source()))
                .forEach(product -> together.computeIfAbsent(
                                product.source() + product.priceUsd(), first -> new ArrayList<>())
                        .add(product));
        for (List<Product> products : together.values()) {
            double[] spent = spent(products);
            Product first = products.get(0);
            if (differs(spent)) {
                all.add(input(
                        "price: " + first.name(),
                        NextInput.Kind.NUMBER,
                        "What do you pay for " + lower(first.name()) + "?",
                        "a phone call to the dealer",
                        ASKING_USD,
                        ofPrice(open.stream().mapToDouble(c -> means[c]).toArray(), spent),
                        List.of()));
            }
        }
    }

    private static String lower(String name) {
        return name.isEmpty() || (name.length() > 1 && Character.isUpperCase(name.charAt(1)))
                ? name
                : Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    /** What each open program's operator spends on some products [$/ac]. */
    private double[] spent(List<Product> products) {
        return open.stream()
                .mapToDouble(c -> model.programs().get(c).costs().stream()
                        .filter(line -> line.kind() != CostKind.TRIP
                                && line.kind() != CostKind.PAYMENT
                                && products.stream()
                                        .anyMatch(product -> line.label().endsWith(": " + product.name())))
                        .mapToDouble(line -> line.operatorUsdPerAcre(model.farm()))
                        .sum())
                .toArray();
    }

    private static boolean differs(double[] values) {
        for (double value : values) {
            if (Math.abs(value - values[0]) > 1e-9) {
                return true;
            }
        }
        return false;
    }

    /**
     * Expected gain of choosing after a price is known that is now taken at its middle [$/ac].
     *
     * @param means mean margins, highest first
     * @param spent what each spends at that price
     */
    static double ofPrice(double[] means, double[] spent) {
        double sum = 0;
        for (double z : ANSWERS) {
            double change = Math.max(-1, TYPICAL_PRICE_SD * z);
            double best = Double.NEGATIVE_INFINITY;
            for (int c = 0; c < spent.length; c++) {
                best = Math.max(best, means[c] - spent[c] * change);
            }
            sum += best;
        }
        return Math.max(0, sum / ANSWERS.length - means[0]);
    }

    /**
     * Expected gain of choosing after an answer that takes away a share of the doubt about an input [$/ac].
     *
     * @param margins one row a program, one number a draw
     * @param ranks of the input's draws
     */
    static double ofSignal(double[][] margins, int[] ranks, double share) {
        double[] scores = StandardNormal.strata(ranks.length);
        double[][] even = new double[margins.length][];
        double[][] odd = new double[margins.length][];
        for (int c = 0; c < margins.length; c++) {
            even[c] = hermite(margins[c], ranks, scores, 0);
            odd[c] = hermite(margins[c], ranks, scores, 1);
        }
        double r = Math.sqrt(share);
        return Math.max(0, (chosenBy(even, odd, r) + chosenBy(odd, even, r)) / 2);
    }

    /** Coefficients of the margin's expansion in the input's normal score, from every second draw. */
    private static double[] hermite(double[] margin, int[] ranks, double[] scores, int from) {
        double[] sums = new double[DEGREE + 1];
        int n = 0;
        for (int i = from; i < margin.length; i += 2, n++) {
            double z = scores[ranks[i]];
            double z2 = z * z;
            sums[0] += margin[i];
            sums[1] += margin[i] * z;
            sums[2] += margin[i] * (z2 - 1) / 2;
            sums[3] += margin[i] * (z2 * z - 3 * z) / 6;
        }
        for (int k = 0; k <= DEGREE; k++) {
            sums[k] /= n;
        }
        return sums;
    }

    /** Gain of the program that one half of the draws chooses after the answer over that which it chooses before, by the other. */
    private static double chosenBy(double[][] choosing, double[][] counting, double r) {
        int before = 0;
        for (int c = 1; c < choosing.length; c++) {
            if (choosing[c][0] > choosing[before][0]) {
                before = c;
            }
        }
        double gain = 0;
        for (double s : ANSWERS) {
            int after = 0;
            for (int c = 1; c < choosing.length; c++) {
                if (at(choosing[c], s, r) > at(choosing[after], s, r)) {
                    after = c;
                }
            }
            gain += at(counting[after], s, r) - at(counting[before], s, r);
        }
        return gain / ANSWERS.length;
    }

    private static double at(double[] a, double s, double r) {
        double s2 = s * s;
        return a[0] + r * (a[1] * s + r * (a[2] * (s2 - 1) + r * a[3] * (s2 * s - 3 * s)));
    }

    /**
     * Expected gain of choosing after a yes or no that is right with a stated chance [$/ac].
     *
     * @param margins one row a program, one number a draw
     * @param works 1 or 0 in each draw
     */
    static double ofAnswer(double[][] margins, double[] works, double right) {
        double[][] even = byAnswer(margins, works, right, 0);
        double[][] odd = byAnswer(margins, works, right, 1);
        return Math.max(0, (chosenByAnswer(even, odd) + chosenByAnswer(odd, even)) / 2);
    }

    /** For each program its margin times the chance of the answer yes, and of no. From every second draw. */
    private static double[][] byAnswer(double[][] margins, double[] works, double right, int from) {
        double[][] sums = new double[margins.length][2];
        int n = 0;
        for (int i = from; i < works.length; i += 2, n++) {
            double yes = works[i] > 0.5 ? right : 1 - right;
            for (int c = 0; c < margins.length; c++) {
                sums[c][0] += margins[c][i] * yes;
                sums[c][1] += margins[c][i] * (1 - yes);
            }
        }
        for (double[] sum : sums) {
            sum[0] /= n;
            sum[1] /= n;
        }
        return sums;
    }

    private static double chosenByAnswer(double[][] choosing, double[][] counting) {
        int before = 0;
        int yes = 0;
        int no = 0;
        for (int c = 1; c < choosing.length; c++) {
            before = choosing[c][0] + choosing[c][1] > choosing[before][0] + choosing[before][1] ? c : before;
            yes = choosing[c][0] > choosing[yes][0] ? c : yes;
            no = choosing[c][1] > choosing[no][1] ? c : no;
        }
        return counting[yes][0] - counting[before][0] + counting[no][1] - counting[before][1];
    }

    /** One thing that programs wait for: a label is read once for all its lines. */
    private record Wait(Where where, String about) {}

    private void lookUps(List<NextInput> all) {
        Map<Wait, Double> worths = new LinkedHashMap<>();
        Map<Wait, Set<String>> waiting = new LinkedHashMap<>();
        Map<Wait, Set<String>> asks = new LinkedHashMap<>();
        for (int c : open) {
            Set<Wait> waits = findings.get(c).stream()
                    .filter(finding -> finding.standing() == Standing.UNKNOWN)
                    .map(finding -> wait(finding, asks))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            double lead = means[c] - now;
            for (Wait wait : waits) {
                double share = Math.max(0, lead) * Math.pow(CLEARS, waits.size()) / waits.size();
                worths.merge(wait, share, Math::max);
                waiting.computeIfAbsent(wait, first -> new LinkedHashSet<>())
                        .add(model.programs().get(c).program().name());
            }
        }
        worths.forEach((wait, worth) -> {
            Set<String> first = asks.getOrDefault(wait, Set.of());
            String more = first.size() > 1 ? " (and " + (first.size() - 1) + " more there)" : "";
            String ask = first.isEmpty()
                    ? "look it up"
                    : firstSentence(first.iterator().next());
            all.add(input(
                    "look up: " + wait.about(),
                    NextInput.Kind.LOOK_UP,
                    wait.about() + ": " + Character.toLowerCase(ask.charAt(0)) + ask.substring(1) + more + ".",
                    wait.where().words(),
                    wait.where() == Where.FIELD ? FIELD_USD : wait.where() == Where.LABEL ? LABEL_USD : ASKING_USD,
                    worth,
                    List.copyOf(waiting.getOrDefault(wait, Set.of()))));
        });
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        String first = end < 0 ? text : text.substring(0, end);
        return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    }

    private static Wait wait(Finding finding, Map<Wait, Set<String>> asks) {
        Where where = Where.of(finding);
        Wait wait = new Wait(where, where == Where.PLAN ? "How it is sprayed" : LookUp.thing(finding));
        asks.computeIfAbsent(wait, first -> new LinkedHashSet<>()).add(finding.clears());
        return wait;
    }

    private NextInput input(
            String id,
            NextInput.Kind kind,
            String asks,
            String where,
            double usd,
            double worth,
            List<String> programs) {
        return NextInput.of(id, kind, asks, where, usd, worth, model.field().acres(), programs);
    }
}
