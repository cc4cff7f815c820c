package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weedseason.WeedField.spray;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.Column;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weedseason.WeedField;
import plumbrow.science.figure.Step;

@DisplayName("A field whose weeds are followed through the season")
class FollowedFieldTest {
    private static WeedField field() {
        return new WeedField()
                .weed("waterhemp", new Distribution.Pert(5, 25, 80), 1, 45)
                .weed("burcucumber", new Distribution.Pert(2, 10, 20), 5, 60)
                .herbicide("soil", "atrazine")
                .herbicide("leaf", "glyphosate")
                .rating("soil", "waterhemp", Timing.SOIL, 30, new Distribution.Pert(.5, .7, .85))
                .rating("soil", "burcucumber", Timing.SOIL, 30, new Distribution.Pert(.4, .6, .8))
                .rating("leaf", "waterhemp", Timing.LEAF, 30, new Distribution.Pert(.2, .6, .97))
                .rating("leaf", "burcucumber", Timing.LEAF, 30, new Distribution.Pert(.5, .9, .97))
                .program("pre", spray(5, 2, "soil", 30))
                .program("post", spray(5, 20, "leaf", 30))
                .program("both", spray(5, 2, "soil", 30), spray(6, 1, "leaf", 30));
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
            at[place] =
                    source.column(variable.stream(), variable.distribution()).values()[11];
            columns[place][0] = at[place];
        }
        for (ProgramModel program : model.programs()) {
            double[] margin = new double[1];
            SeasonLoads loads = SeasonLoads.of(model.programs(), columns, 1);
            new Kernel(model, loads).run(program, columns, new double[1], margin);
            List<Step> steps = LikelyWorking.of(model, program, at);
            assertThat(steps.get(steps.size() - 1).value()).isCloseTo(margin[0], within(1e-6));
            assertThat(steps).anyMatch(step -> step.label().equals("seed returned by burcucumber"));
        }
    }

    @Test
    @DisplayName("an input of the season that is held is held as if it were typed, for all programs at once")
    void held() {
        Season season = field().season();
        int draws = 600; // no more than are followed again: nothing is thinned
        DrawSource source = new DrawSource(draws, 5);
        FieldModel model = FieldModels.of(season, season.fields().get(0), Map.of());
        Column[] drawn = FieldWeighing.drawn(model, source);
        double[][] columns = java.util.Arrays.stream(drawn).map(Column::values).toArray(double[][]::new);
        var programs = model.programs();
        SeasonLoads loads = SeasonLoads.of(programs, columns, draws);
        double[][] margins = new double[programs.size()][draws];
        new Kernel(model, loads).run(programs, columns, new double[programs.size()][0], margins);
        HeldMargins held = new HeldMargins(model, columns, loads, programs, margins);
        int followed = 0;
        for (int place = 0; place < columns.length; place++) {
            double value = drawn[place].sorted()[draws / 3];
            double[][] typed = columns.clone();
            typed[place] = new double[draws];
            java.util.Arrays.fill(typed[place], value);
            double[][] again = new double[programs.size()][draws];
            new Kernel(model, SeasonLoads.of(programs, typed, draws))
                    .run(programs, typed, new double[programs.size()][0], again);
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
    @DisplayName("every uncertain input of the season has its value of information")
    void inputs() {
        FieldAdvice advice = field().weigh(500);
        var ids = advice.inputs().stream().map(UncertainInput::id).toList();
        assertThat(ids).contains("shift: waterhemp", "density: burcucumber", "weather", "late: sprayer");
        assertThat(ids).filteredOn(id -> id.startsWith("rating: ")).hasSize(4);
        assertThat(advice.whatMatters()).extracting(InformationValue::input).contains("density: waterhemp");
    }

    @Test
    @DisplayName("one program tried by itself agrees with the weighing of it")
    void trial() {
        Season season = field().season();
        WeighingOptions options = WeighingOptions.DEFAULT.withDraws(400);
        FieldAdvice advice = Adviser.adviseField(season, season.fields().get(0), options);
        for (var program : season.programs()) {
            ProgramTrial trial =
                    new ProgramTrials(options).of(season, season.fields().get(0), program.name());
            WeighedProgram weighed = advice.program(program.name()).orElseThrow();
            assertThat(trial.numbers().meanMarginUsdPerAcre()).isEqualTo(weighed.meanMarginUsdPerAcre());
            assertThat(trial.weeds()).isEqualTo(weighed.weeds());
            assertThat(Gates.of(season).check(season.fields().get(0), program)).isEqualTo(weighed.findings());
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
        assertThat(advice.programs()).allMatch(program -> program.weeds().isEmpty());
    }

    /** The same without a climate. */
    private static final class HyperbolicField {
        static FieldAdvice weigh() {
            Season season = new OneField()
                    .assumptions(4, 200)
                    .seed("plain", 100, 0, OneField.NONE)
                    .weed("waterhemp", new Distribution.Fixed(10), 1, 45)
                    .program("as is", true, OneField.plant("plain"))
                    .season();
            return Adviser.adviseField(season, season.fields().get(0), WeighingOptions.DEFAULT.withDraws(200));
        }
    }
}
