package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import plumbrow.advice.field.Field;
import plumbrow.advice.outlook.Column;
import plumbrow.advice.outlook.DrawSource;
import plumbrow.advice.season.Season;

/**
 * Runs single courses on the draws that a weighing takes: while a pass is being moved, all that is asked is what becomes of this
 * one course. Draws once made are kept. Safe for several threads.
 */
public final class CourseTrials {
    private final WeighingOptions options;
    private final DrawSource source;

    public CourseTrials(WeighingOptions options) {
        this.options = options;
        this.source = new DrawSource(options.draws(), options.seed());
    }

    public WeighingOptions options() {
        return options;
    }

    /**
     * A course of a season's field.
     *
     * @throws SeasonGapException where the season lacks what weighing needs, or has no such course
     */
    public CourseTrial of(Season season, Field field, String course) {
        FieldModel model = FieldModels.of(season, field, options.changed());
        CourseModel asked = model.courses().stream()
                .filter(known -> known.course().name().equals(course))
                .findFirst()
                .orElseThrow(() -> new SeasonGapException(
                        field.name() + " has no course '" + course + "' that could be weighed."));
        double[][] columns = Arrays.stream(FieldWeighing.drawn(model, source))
                .map(Column::values)
                .toArray(double[][]::new);
        double[] yields = new double[options.draws()];
        double[] margins = new double[options.draws()];
        SeasonLoads loads = SeasonLoads.of(List.of(asked), columns, options.draws());
        new Kernel(model, loads).run(asked, columns, yields, margins);
        return new CourseTrial(
                asked.course(),
                asked.costUsdPerAcre(),
                yields,
                margins,
                asked.season(),
                Arrays.stream(columns).mapToDouble(FieldWeighing::meanOf).toArray());
    }
}
