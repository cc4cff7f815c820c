package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/**
 * Runs single programs on the draws that a weighing takes: while a pass is being moved, all that is asked is what becomes of this
 * one program. Draws once made are kept. Safe for several threads.
 */
public final class ProgramTrials {
    private final WeighingOptions options;
    private final DrawSource source;

    public ProgramTrials(WeighingOptions options) {
        this.options = options;
        this.source = new DrawSource(options.draws(), options.seed());
    }

    public WeighingOptions options() {
        return options;
    }

    /**
     * A program of a season's field.
     *
     * @throws SeasonGapException where the season lacks what weighing needs, or has no such program
     */
    public ProgramTrial of(Season season, Field field, String program) {
        FieldModel model = FieldModels.of(season, field, options.changed());
        ProgramModel asked = model.programs().stream()
                .filter(known -> known.program().name().equals(program))
                .findFirst()
                .orElseThrow(() -> new SeasonGapException(
                        field.name() + " has no program '" + program + "' that could be weighed."));
        double[][] columns = Arrays.stream(FieldWeighing.drawn(model, source))
                .map(Column::values)
                .toArray(double[][]::new);
        double[] yields = new double[options.draws()];
        double[] margins = new double[options.draws()];
        SeasonLoads loads = SeasonLoads.of(List.of(asked), columns, options.draws());
        new Kernel(model, loads).run(asked, columns, yields, margins);
        return new ProgramTrial(
                asked.program(),
                asked.meanCostUsdPerAcre(columns),
                yields,
                margins,
                asked.season(),
                Arrays.stream(columns).mapToDouble(FieldWeighing::meanOf).toArray());
    }
}
