package plumbrow.advice.years;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.science.chance.SortedDraws;
import plumbrow.science.figure.Step;

@DisplayName("What a program costs in the years after it")
class LaterYearsTest {
    private static final WeighingOptions WEIGHING = WeighingOptions.DEFAULT.withDraws(200);

    private static TwoFields fields() {
        return new TwoFields()
                .weed("waterhemp", 5)
                .herbicide("Good", "glyphosate", "waterhemp", 1)
                .herbicide("Poor", "S-metolachlor", "waterhemp", .6)
                .program("nothing", true, "bare corn")
                .program("poor", false, "bare corn", "Poor")
                .program("good", false, "bare corn", "Good");
    }

    @Test
    @DisplayName("seed that is left costs: the better the control, the less; a clean year leaves the field better")
    void lessSeedCostsLess() {
        Season season = fields().season();
        double[][] cost = new LaterYears(6, 5).of(season, season.fields().get(0), WEIGHING);
        double nothing = SortedDraws.mean(cost[0]);
        double poor = SortedDraws.mean(cost[1]);
        double good = SortedDraws.mean(cost[2]);
        assertThat(nothing).isGreaterThan(poor).isPositive();
        assertThat(poor).isGreaterThan(good);
        assertThat(good).isNegative();
    }

    @Test
    @DisplayName("it is taken off the margin, to the cent, as a line of its own, and only when asked for")
    void takenOff() {
        Season season = fields().season();
        Field field = season.fields().get(0);
        LaterYears later = new LaterYears(6, 5);
        double[][] cost = later.of(season, field, WEIGHING);
        FieldAdvice plain = Adviser.adviseField(season, field, WEIGHING);
        FieldAdvice counted = Adviser.adviseField(season, field, WEIGHING.withLater(later));
        for (int c = 0; c < cost.length; c++) {
            WeighedProgram without =
                    plain.program(season.programs().get(c).name()).orElseThrow();
            WeighedProgram with =
                    counted.program(season.programs().get(c).name()).orElseThrow();
            double mean = SortedDraws.mean(cost[c]);
            assertThat(with.meanMarginUsdPerAcre()).isCloseTo(without.meanMarginUsdPerAcre() - mean, within(1e-6));
            Step line = with.working().stream()
                    .filter(step -> step.label().equals("cost in later years"))
                    .findFirst()
                    .orElseThrow();
            assertThat(line.value()).isCloseTo(mean, within(1e-9));
            assertThat(without.working()).noneMatch(step -> step.label().equals("cost in later years"));
        }
        assertThat(counted.cautions()).contains(later.says());
    }

    @Test
    @DisplayName("without weeds or traits there is nothing to leave: the cost is nought in every draw")
    void nothingToLeave() {
        Season season = new TwoFields().program("plain", true, "bare corn").season();
        double[][] cost = new LaterYears(10, 5).of(season, season.fields().get(0), WEIGHING);
        assertThat(cost[0]).containsOnly(0);
    }

    @Test
    @DisplayName("fewer than two seasons are refused")
    void tooFew() {
        assertThatThrownBy(() -> new LaterYears(1, 5)).hasMessage("the number of seasons is 1; expected 2 to 20");
    }
}
