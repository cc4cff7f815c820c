package plumbrow.advice.weighing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.ProgramSeason;
import plumbrow.science.chance.Dominance;
import plumbrow.science.chance.SortedDraws;

/** The weighing of one field: draws, margins, odds, and what would change the answer. */
final class FieldWeighing {
    private static final int STRIP_STEPS = 50;

    /** Share of draws that must agree with a count for the others to be left out. */
    private static final double FEWEST_AGREEING = 0.02;

    private final Season season;
    private final FieldModel model;
    private final WeighingOptions options;
    private final DrawSource source;
    private final Column[] drawn;
    private final double[][] columns;
    private final double[] means;
    private final double[][] yields;
    private final double[][] margins;
    private final double[] meanMargins;
    private final double[] meanCosts;
    private final double[][] sortedMargins;
    private final SeasonLoads loads;
    private final List<List<Finding>> findings = new ArrayList<>();
    private final List<Standing> standings = new ArrayList<>();

    FieldWeighing(Season season, Gates gates, FieldModel model, DrawSource source, WeighingOptions options) {
        this.season = season;
        this.model = model;
        this.options = options;
        this.source = source;
        this.drawn = drawn(model, source);
        this.columns = Arrays.stream(drawn).map(Column::values).toArray(double[][]::new);
        this.means = Arrays.stream(columns).mapToDouble(FieldWeighing::meanOf).toArray();
        int programs = model.programs().size();
        this.yields = new double[programs][source.draws()];
        this.margins = new double[programs][source.draws()];
        this.meanMargins = new double[programs];
        this.meanCosts = model.programs().stream()
                .mapToDouble(program -> program.meanCostUsdPerAcre(columns))
                .toArray();
        this.sortedMargins = new double[programs][];
        this.loads = SeasonLoads.of(model.programs(), columns, source.draws());
        new Kernel(model, loads).run(model.programs(), columns, yields, margins);
        for (int c = 0; c < programs; c++) {
            ProgramModel program = model.programs().get(c);
            meanMargins[c] = SortedDraws.mean(margins[c]);
            sortedMargins[c] = margins[c].clone();
            Arrays.sort(sortedMargins[c]);
            List<Finding> found = gates.check(model.field(), program.program());
            findings.add(found);
            standings.add(Gates.standing(found));
        }
    }

    /** Mean of draws; what rounding leaves of a mean of nought is nought. */
    static double meanOf(double[] draws) {
        return withoutRounding(SortedDraws.mean(draws), draws);
    }

    /** A figure read from draws; nought where it is no more than what rounding leaves of them. */
    static double withoutRounding(double value, double[] draws) {
        double widest = Arrays.stream(draws).map(Math::abs).max().orElse(0);
        return Math.abs(value) < 1e-12 * widest ? 0 : value;
    }

    /** The draws of every input, by its place; yield tied to price and weather. */
    static Column[] drawn(FieldModel model, DrawSource source) {
        List<Variable> variables = model.variables();
        Column[] columns = new Column[variables.size()];
        Column price = column(variables.get(model.price()), source);
        for (int place = 0; place < columns.length; place++) {
            Variable variable = variables.get(place);
            columns[place] = place == model.yield() ? price : column(variable, source);
        }
        columns[model.yield()] = yieldColumn(model, columns, source, new double[0], 0);
        return counted(model, columns);
    }

    /**
     * The draws that agree with what was counted: where scouting found too few, those in which fewer are counted, each as often as
     * the others. Where hardly any agrees, all of them stand, and {@link #contradicts} says so.
     */
    private static Column[] counted(FieldModel model, Column[] columns) {
        int[] agree = agreeing(model, columns);
        if (agree.length == 0 || agree.length == columns[0].values().length) {
            return columns;
        }
        return Arrays.stream(columns).map(column -> column.of(agree)).toArray(Column[]::new);
    }

    /** Draws that agree with every count; none where they are too few to go on from. */
    private static int[] agreeing(FieldModel model, Column[] columns) {
        double[][] values = Arrays.stream(columns).map(Column::values).toArray(double[][]::new);
        int draws = columns[0].values().length;
        int[] agree = IntStream.range(0, draws)
                .filter(i -> model.tooFew().stream().allMatch(trigger -> trigger.tooFew(values, i)))
                .toArray();
        return agree.length < FEWEST_AGREEING * draws ? new int[0] : agree;
    }

    /** Whether what was counted hardly ever comes of the pressures that were entered. */
    private boolean contradicts() {
        return model.tooFew().stream()
                .anyMatch(trigger -> IntStream.range(0, source.draws()).anyMatch(i -> !trigger.tooFew(columns, i)));
    }

    /**
     * Draws of the attainable yield: tied to the price, to the weather of the season, and where {@code between} is above 0 to
     * normals that many fields share.
     */
    static Column yieldColumn(FieldModel model, Column[] drawn, DrawSource source, double[] shared, double between) {
        Variable attainable = model.variables().get(model.yield());
        WeatherTie weather = model.weather();
        if (between == 0 && (weather == null || !weather.ties())) {
            return source.tied(attainable.stream(), attainable.distribution(), drawn[model.price()], model.tie());
        }
        List<DrawSource.Tie> ties = new ArrayList<>();
        ties.add(new DrawSource.Tie(drawn[model.price()].ranks(), model.tie()));
        if (weather != null && weather.ties()) {
            ties.add(new DrawSource.Tie(weather.ranks(drawn[weather.place()]), weather.rankCorrelation()));
        }
        return source.tied(attainable.stream(), attainable.distribution(), ties, shared, between);
    }

    private static Column column(Variable variable, DrawSource source) {
        return source.column(variable.stream(), variable.distribution());
    }

    FieldAdvice advice() {
        int baseline = baseline();
        Choice choice = choice(options.asIfLookedUp() ? asIfLookedUp() : standings);
        List<Integer> byMargin = byMargin();
        Knowledge knowledge = new Knowledge(rows(choice.advisable()));
        double everything = knowledge.ofEverything();
        Optional<AdviceRanges> ranges = choice.advised() < 0 || choice.rival() < 0
                ? Optional.empty()
                : Optional.of(new AdviceRanges(model, drawn, means, loads, margins, choice));
        double[] worths = Information.worths(model, columns, knowledge, ranges);
        List<AdviceRange> told = ranges.map(found -> found.all(worths)).orElse(List.of());
        List<InformationValue> matters = Information.onInputs(model, columns, knowledge, worths);
        List<SampleWorth> samples = Information.onSamples(season, model, columns, knowledge, source);
        double[] best = chancesBest();
        List<WeighedProgram> weighed =
                byMargin.stream().map(c -> weighed(c, baseline, best[c])).toList();
        List<Comparison> comparisons = comparisons(choice.advised(), byMargin);
        Optional<GainDoubt> doubt = doubt(choice, baseline);
        boolean entered = model.variables().stream().anyMatch(variable -> !Chances.settled(variable.distribution()));
        Telling telling = new Telling(model, weighed, choice, comparisons, told, matters, entered);
        return new FieldAdvice(
                model.field(),
                model.farm().grower(),
                source.draws(),
                options.seed(),
                weighed,
                name(baseline),
                choice.advised() < 0 ? null : name(choice.advised()),
                telling.aboutEqual().orElse(null),
                options.equal(),
                telling.sentence(),
                telling.reason(),
                telling.doubt(),
                doubt.orElse(null),
                comparisons,
                told,
                matters,
                samples,
                inputs(),
                everything,
                contradicts() ? withContradiction(telling.cautions()) : telling.cautions());
    }

    private static List<String> withContradiction(List<String> cautions) {
        List<String> all = new ArrayList<>(cautions);
        all.add(
                0,
                "So few as scouting found are counted in fewer than 2 of 100 simulated seasons of the pressure that was"
                        + " entered, so the count is left out of the weighing. Put the pressure on the insects sheet right.");
        return all;
    }

    private Choice choice(List<Standing> as) {
        return Choice.among(meanCosts, as, margins, meanMargins, baseline(), options.equal());
    }

    /** The standings, were everything that nobody has looked up clear. */
    private List<Standing> asIfLookedUp() {
        return standings.stream()
                .map(standing -> standing == Standing.UNKNOWN ? Standing.CONDITIONAL : standing)
                .toList();
    }

    /** The mean margin of every program that is not barred [$/ac], by name. */
    Map<String, Double> means() {
        Map<String, Double> byName = new LinkedHashMap<>();
        for (int c = 0; c < meanMargins.length; c++) {
            if (standings.get(c) != Standing.BARRED) {
                byName.put(name(c), meanMargins[c]);
            }
        }
        return byName;
    }

    /** What somebody could tell or look up, by what that is worth on this field. */
    NextInputs next() {
        return new NextWorth(
                        season,
                        model,
                        drawn,
                        margins,
                        meanMargins,
                        choice(standings),
                        choice(asIfLookedUp()),
                        findings,
                        baseline())
                .inputs();
    }

    /** The doubt about the gain that the advice rests on: of the advised program over the baseline, else of the next best over it. */
    private Optional<GainDoubt> doubt(Choice choice, int baseline) {
        int subject = choice.advised() == baseline ? choice.rival() : choice.advised();
        return subject < 0 || subject == baseline
                ? Optional.empty()
                : GainDoubts.of(model, columns, margins, subject, baseline);
    }

    private List<Integer> byMargin() {
        List<Integer> order = new ArrayList<>();
        for (int c = 0; c < margins.length; c++) {
            order.add(c);
        }
        order.sort(Comparator.comparingDouble((Integer c) -> -meanMargins[c]));
        return order;
    }

    private WeighedProgram weighed(int c, int baseline, double chanceBest) {
        ProgramModel program = model.programs().get(c);
        double[] sorted = sortedMargins[c];
        double[] gain = difference(margins[c], margins[baseline]);
        double beats = chanceAbove(gain);
        Arrays.sort(gain);
        List<Double> points = new ArrayList<>();
        for (int i = 0; i <= STRIP_STEPS; i++) {
            points.add(SortedDraws.quantile(sorted, (double) i / STRIP_STEPS));
        }
        return new WeighedProgram(
                program.program().name(),
                program.program().baseline(),
                program.program().note(),
                standings.get(c),
                findings.get(c),
                meanCosts[c],
                program.costLines(columns),
                SortedDraws.mean(yields[c]),
                meanMargins[c],
                standardError(margins[c], meanMargins[c]),
                band(sorted),
                meanMargins[c] - meanMargins[baseline],
                band(gain),
                beats,
                chanceBest,
                SortedDraws.worstShareMean(sorted, 0.1),
                points,
                LikelyWorking.of(model, program, means),
                weeds(program),
                scouted(program));
    }

    private List<ScoutedPass> scouted(ProgramModel program) {
        List<ScoutedPass> scouted = new ArrayList<>();
        for (int t = 0; t < program.triggers().size(); t++) {
            ProgramModel.Trigger trigger = program.triggers().get(t);
            if (trigger.settled()) {
                continue;
            }
            scouted.add(ScoutedPass.of(
                    trigger.scouting(),
                    trigger.pass(),
                    trigger.product(),
                    trigger.insect().measure(),
                    trigger.chance(columns),
                    BestThreshold.of(model, loads, program, t, columns)));
        }
        return scouted;
    }

    private String weeds(ProgramModel program) {
        ProgramSeason followed = program.season();
        return followed == null ? "" : SeasonWords.sentence(program.program().name(), followed.storyAt(means));
    }

    private List<Comparison> comparisons(int advised, List<Integer> byMargin) {
        if (advised < 0) {
            return List.of();
        }
        List<Comparison> all = new ArrayList<>();
        for (int other : byMargin) {
            if (other != advised) {
                all.add(compare(advised, other));
            }
        }
        return all;
    }

    private Comparison compare(int one, int other) {
        double[] difference = difference(margins[one], margins[other]);
        double better = chanceAbove(difference);
        Arrays.sort(difference);
        double[] a = sortedMargins[one];
        double[] b = sortedMargins[other];
        return new Comparison(
                name(one),
                name(other),
                meanMargins[one] - meanMargins[other],
                band(difference),
                better,
                options.equal().leads(margins[one], margins[other], 1),
                dominant(Dominance.first(a, b), one, other),
                dominant(Dominance.second(a, b), one, other));
    }

    private String dominant(Dominance verdict, int one, int other) {
        return switch (verdict) {
            case A -> name(one);
            case B -> name(other);
            case NONE -> "none";
        };
    }

    /** For each program, the share of draws in which it earns most of those not barred; ties share. */
    private double[] chancesBest() {
        double[] shares = new double[margins.length];
        boolean anyOpen = standings.stream().anyMatch(standing -> standing != Standing.BARRED);
        for (int i = 0; i < source.draws(); i++) {
            double most = Double.NEGATIVE_INFINITY;
            int holders = 0;
            for (int c = 0; c < margins.length; c++) {
                if (anyOpen && standings.get(c) == Standing.BARRED) {
                    continue;
                }
                if (margins[c][i] > most) {
                    most = margins[c][i];
                    holders = 1;
                } else if (margins[c][i] == most) {
                    holders++;
                }
            }
            for (int c = 0; c < margins.length; c++) {
                if (margins[c][i] == most && !(anyOpen && standings.get(c) == Standing.BARRED)) {
                    shares[c] += 1.0 / holders;
                }
            }
        }
        for (int c = 0; c < shares.length; c++) {
            shares[c] = Math.min(1, shares[c] / source.draws());
        }
        return shares;
    }

    private List<UncertainInput> inputs() {
        List<UncertainInput> inputs = new ArrayList<>();
        for (int place = 0; place < columns.length; place++) {
            Variable variable = model.variables().get(place);
            if (TriggerReader.luck(variable)) {
                continue;
            }
            double[] sorted = drawn[place].sorted();
            inputs.add(new UncertainInput(
                    variable.id(),
                    variable.label(),
                    variable.unit(),
                    variable.doubt(),
                    variable.distribution(),
                    means[place],
                    band(sorted),
                    variable.source()));
        }
        return inputs;
    }

    private int baseline() {
        for (int c = 0; c < margins.length; c++) {
            if (model.programs().get(c).program().baseline()) {
                return c;
            }
        }
        throw new IllegalStateException("a field model has a baseline");
    }

    private String name(int c) {
        return model.programs().get(c).program().name();
    }

    private double[][] rows(List<Integer> programs) {
        return programs.stream().map(c -> margins[c]).toArray(double[][]::new);
    }

    static double[] difference(double[] a, double[] b) {
        double[] difference = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            difference[i] = a[i] - b[i];
        }
        return difference;
    }

    static double chanceAbove(double[] gains) {
        return SortedDraws.shareAbove(gains, 0);
    }

    static Band band(double[] sorted) {
        return new Band(
                SortedDraws.quantile(sorted, 0.1),
                SortedDraws.quantile(sorted, 0.5),
                SortedDraws.quantile(sorted, 0.9));
    }

    static double standardError(double[] draws, double mean) {
        double squares = 0;
        for (double draw : draws) {
            squares += (draw - mean) * (draw - mean);
        }
        return Math.sqrt(squares / (draws.length - 1) / draws.length);
    }
}
