package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.science.chance.SortedDraws;

/**
 * Margins of any program of a field, draw by draw, on the same draws as the weighing: what a search over many programs and a
 * plan over many fields weigh by. A program need not stand in the season.
 *
 * <p>With {@code between} more than 0 the attainable yields of all fields are tied to one growing season besides, as a
 * risk of many fields together needs it; then the draws are not those of the weighing, though each field's own distribution is.
 */
public final class ProgramDraws {
    private static final String GROWING_SEASON = "growing season of the farm";

    private final Season season;
    private final Field field;
    private final DrawSource source;
    private final double between;
    private final DoneWork done;
    private final double[] growingSeason;

    /** On the draws of the weighing. */
    public ProgramDraws(Season season, Field field, DrawSource source) {
        this(season, field, source, 0);
    }

    /** @param between correlation of the yields of two fields, as scores [0 to 1] */
    public ProgramDraws(Season season, Field field, DrawSource source, double between) {
        this.season = season;
        this.field = field;
        this.source = source;
        this.between = between;
        this.done = DoneWork.of(season, field);
        this.growingSeason = between > 0 ? source.normals(GROWING_SEASON) : new double[0];
    }

    /**
     * One program on its draws. Arrays are read only.
     *
     * @param costUsdPerAcre the operator's cost [$/ac], on average where passes wait for scouting
     * @param mostUsdPerAcre the same where all such passes are made [$/ac]
     * @param spentUsdPerAcre what of that is spent already on what the log says was done [$/ac]
     * @param costs its lines, before the operator's share [$/ac]
     * @param yields [bu/ac]
     * @param margins the operator's margin [$/ac]
     */
    @SuppressWarnings("ArrayRecordComponent") // One column of draws, handed on and never written to.
    public record Weighed(
            double costUsdPerAcre,
            double mostUsdPerAcre,
            double spentUsdPerAcre,
            List<CostLine> costs,
            double[] yields,
            double[] margins,
            List<String> cautions) {
        public double meanYieldBuPerAcre() {
            return SortedDraws.mean(yields);
        }

        public double meanMarginUsdPerAcre() {
            return SortedDraws.mean(margins);
        }

        /** Mean margin of the worst tenth of draws [$/ac]. */
        public double shortfallUsdPerAcre() {
            double[] sorted = margins.clone();
            Arrays.sort(sorted);
            return SortedDraws.worstShareMean(sorted, 0.1);
        }
    }

    /**
     * Weighs one program.
     *
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public Weighed weigh(Program program) {
        Program alone =
                new Program(program.field(), program.name(), true, program.refuge(), program.note(), program.passes());
        FieldModel model = FieldModels.of(
                season.withPrograms(List.of(alone), season.work()), field, WeighingOptions.DEFAULT.changed(), done);
        ProgramModel only = model.programs().get(0);
        double[] yields = new double[source.draws()];
        double[] margins = new double[source.draws()];
        double[][] columns = columns(model);
        SeasonLoads loads = SeasonLoads.of(List.of(only), columns, source.draws());
        new Kernel(model, loads).run(only, columns, yields, margins);
        return new Weighed(
                only.meanCostUsdPerAcre(columns),
                only.mostCostUsdPerAcre(),
                spent(program),
                only.costLines(columns),
                yields,
                margins,
                model.cautions());
    }

    private double spent(Program program) {
        Farm farm = season.farm(field.farm()).orElseThrow();
        return done.donePasses(program).stream()
                .flatMap(pass -> ProgramCosts.of(season, program, pass).stream())
                .mapToDouble(line -> line.operatorUsdPerAcre(farm))
                .sum();
    }

    private double[][] columns(FieldModel model) {
        Column[] drawn = FieldWeighing.drawn(model, source);
        if (between > 0) {
            drawn[model.yield()] = FieldWeighing.yieldColumn(model, drawn, source, growingSeason, between);
        }
        return Arrays.stream(drawn).map(Column::values).toArray(double[][]::new);
    }
}
