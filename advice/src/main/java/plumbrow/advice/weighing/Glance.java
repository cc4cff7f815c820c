package plumbrow.advice.weighing;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.outlook.Column;
import plumbrow.advice.outlook.DrawSource;
import plumbrow.advice.season.Season;
import plumbrow.advice.weedseason.CourseSeason;
import plumbrow.advice.weedseason.SeasonStory;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.weedseason.SeasonTrace;

/**
 * One course of a field weighed by itself, as while a pass is dragged to another day or a rate changed: on the draws that the
 * weighing takes, so that it agrees with it.
 *
 * @param findings of every gate
 * @param meanYieldBuPerAcre mean yield [bu/ac]
 * @param meanMarginUsdPerAcre mean margin, the operator's [$/ac]
 * @param margin 10, 50 and 90 % points of it [$/ac]
 * @param weeds what its weeds do, in one sentence; empty where they are not followed through the season
 * @param trace its weeds day by day, every input at its mean; null where they are not followed
 * @param story the same weed by weed; null where they are not followed
 */
public record Glance(
        Course course,
        List<Finding> findings,
        double meanYieldBuPerAcre,
        double meanMarginUsdPerAcre,
        Band margin,
        String weeds,
        @Nullable SeasonTrace trace,
        @Nullable SeasonStory story) {
    public Glance {
        findings = List.copyOf(findings);
    }

    /**
     * A look at one course, of the season or just thought of. How tillage is run is known by the names of field and course and
     * the number of the pass.
     *
     * @throws SeasonGapException where the season lacks what weighing needs
     */
    public static Glance at(Season season, Gates gates, Field field, Course course, WeighingOptions options) {
        Season alone = season.withCourses(List.of(
                new Course(course.field(), course.name(), true, course.refuge(), course.note(), course.passes())));
        FieldModel model = FieldModels.of(alone, field, Map.of());
        DrawSource source = new DrawSource(options.draws(), options.seed());
        double[][] columns = Arrays.stream(FieldWeighing.drawn(model, source))
                .map(Column::values)
                .toArray(double[][]::new);
        double[][] yields = new double[1][source.draws()];
        double[][] margins = new double[1][source.draws()];
        new Kernel(model, SeasonLoads.of(model.courses(), columns, source.draws()))
                .run(model.courses(), columns, yields, margins);
        double mean = SortedDraws.mean(margins[0]);
        double[] sorted = margins[0].clone();
        Arrays.sort(sorted);
        double[] at = Arrays.stream(columns).mapToDouble(SortedDraws::mean).toArray();
        CourseSeason followed = model.courses().get(0).season();
        SeasonStory story = followed == null ? null : followed.storyAt(at);
        return new Glance(
                course,
                gates.check(field, course),
                SortedDraws.mean(yields[0]),
                mean,
                FieldWeighing.band(sorted),
                story == null ? "" : SeasonWords.sentence(course.name(), story),
                followed == null ? null : followed.traceAt(at),
                story);
    }
}
