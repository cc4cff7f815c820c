package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weedseason.WeedField.spray;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.outlook.Column;
import plumbrow.advice.outlook.DrawSource;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weedseason.WeedField;
import plumbrow.science.figure.Step;

@DisplayName("A field whose weeds are followed through the season")
class FollowedFieldTest {
    private static WeedField field() {
        return new WeedField()
                .weed("waterhemp", new Law.Pert(5, 25, 80), 1, 45)
                .weed("burcucumber", new Law.Pert(2, 10, 20), 5, 60)
                .herbicide("soil", "atrazine")
                .herbicide("leaf", "glyphosate")
                .rating("soil", "waterhemp", Timing.SOIL, 30, new Law.Pert(.5, .7, .85))
                .rating("soil", "burcucumber", Timing.SOIL, 30, new Law.Pert(.4, .6, .8))
                .rating("leaf", "waterhemp", Timing.LEAF, 30, new Law.Pert(.2, .6, .97))
                .rating("leaf", "burcucumber", Timing.LEAF, 30, new Law.Pert(.5, .9, .97))
                .course("pre", spray(5, 2, "soil", 30))
                .course("post", spray(5, 20, "leaf", 30))
                .course("both", spray(5, 2, "soil", 30), spray(6, 1, "leaf", 30));
    }

    @Test
    @DisplayName("same season and seed give the same advice to the bit for any number of threads")
    void threads() {
        Season season = field().season();
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(300);
        Advice one = Adviser.advise(season, options.withThreads(1), (done, all) -> {});
        Advice three = Adviser.advise(season, options.withThreads(3), (done, all) -> {});
        assertThat(one).isEqualTo(three);
    }

    @Test
    @DisplayName("the working by hand is the kernel at the same values")
    void working() {
        Season season = field().season();
        FieldModel model = FieldModels.of(season, season.fields().get(0), Map.of());
        double[] at = new double[model.variables().size()];
        double[][] columns = new double[at.length][1];
        DrawSource source = new DrawSource(100, 3);
        for (int place = 0; place < at.length; place++) {
            Variable variable = model.variables().get(place);
            at[place] = source.column(variable.stream(), variable.law()).values()[11];
            columns[place][0] = at[place];
        }
        for (CourseModel course : model.courses()) {
            double[] margin = new double[1];
            SeasonLoads loads = SeasonLoads.of(model.courses(), columns, 1);
            new Kernel(model, loads).run(course, columns, new double[1], margin);
            List<Step> steps = LikelyWorking.of(model, course, at);
            assertThat(steps.get(steps.size() - 1).value()).isCloseTo(margin[0], within(1e-6));
            assertThat(steps).anyMatch(step -> step.label().equals("seed returned by burcucumber"));
        }
    }

    @Test
    @DisplayName("an input of the season that is held is held as if it were typed, for all courses at once")
    void held() {
        Season season = field().season();
        int draws = 600; // no more than are followed again: nothing is thinned
        DrawSource source = new DrawSource(draws, 5);
        FieldModel model = FieldModels.of(season, season.fields().get(0), Map.of());
        Column[] drawn = FieldWeighing.drawn(model, source);
        double[][] columns = java.util.Arrays.stream(drawn).map(Column::values).toArray(double[][]::new);
        var courses = model.courses();
        SeasonLoads loads = SeasonLoads.of(courses, columns, draws);
        double[][] margins = new double[courses.size()][draws];
        new Kernel(model, loads).run(courses, columns, new double[courses.size()][0], margins);
        HeldMargins held = new HeldMargins(model, columns, loads, courses, margins);
        int followed = 0;
        for (int place = 0; place < columns.length; place++) {
            double value = drawn[place].sorted()[draws / 3];
            double[][] typed = columns.clone();
            typed[place] = new double[draws];
            java.util.Arrays.fill(typed[place], value);
            double[][] again = new double[courses.size()][draws];
            new Kernel(model, SeasonLoads.of(courses, typed, draws))
                    .run(courses, typed, new double[courses.size()][0], again);
            double[] means = held.at(place, value);
            for (int c = 0; c < means.length; c++) {
                assertThat(means[c])
                        .as(model.variables().get(place).id())
                        .isCloseTo(java.util.Arrays.stream(again[c]).average().orElseThrow(), within(1e-6));
            }
            followed += held.follows(place) ? 1 : 0;
        }
        assertThat(followed).isGreaterThan(4);
    }

    @Test
    @DisplayName("every uncertain input of the season has its worth of knowing")
    void inputs() {
        FieldAdvice advice = field().weigh(500);
        var ids = advice.inputs().stream().map(UncertainInput::id).toList();
        assertThat(ids).contains("shift: waterhemp", "density: burcucumber", "weather", "late: sprayer");
        assertThat(ids).filteredOn(id -> id.startsWith("rating: ")).hasSize(4);
        assertThat(advice.whatMatters()).extracting(Knowing::input).contains("density: waterhemp");
    }

    @Test
    @DisplayName("one course tried by itself agrees with the weighing of it")
    void trial() {
        Season season = field().season();
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(400);
        FieldAdvice advice = Adviser.adviseField(season, season.fields().get(0), options);
        for (var course : season.courses()) {
            CourseTrial trial =
                    new CourseTrials(options).of(season, season.fields().get(0), course.name());
            WeighedCourse weighed = advice.course(course.name()).orElseThrow();
            assertThat(trial.numbers().meanMarginUsdPerAcre()).isEqualTo(weighed.meanMarginUsdPerAcre());
            assertThat(trial.weeds()).isEqualTo(weighed.weeds());
            assertThat(Gates.of(season).check(season.fields().get(0), course)).isEqualTo(weighed.findings());
            assertThat(trial.season().orElseThrow().traceAt(trial.means())).isNotNull();
        }
    }

    @Test
    @DisplayName("without climate the hyperbola of what passes leave is taken, and what is missing is said")
    void hyperbola() {
        FieldAdvice advice = HyperbolicField.weigh();
        assertThat(advice.cautions())
                .anyMatch(caution -> caution.startsWith("Weeds are weighed by what the passes leave")
                        && caution.contains("twelve months (sheet climate)"));
        assertThat(advice.courses()).allMatch(course -> course.weeds().isEmpty());
    }

    /** The same without a climate. */
    private static final class HyperbolicField {
        static FieldAdvice weigh() {
            Season season = new OneField()
                    .outlook(4, 200)
                    .seed("plain", 100, 0, OneField.NONE)
                    .weed("waterhemp", new Law.Fixed(10), 1, 45)
                    .course("as is", true, OneField.plant("plain"))
                    .season();
            return Adviser.adviseField(season, season.fields().get(0), WeighingOptions.DEFAULT.withDraws(200));
        }
    }
}
