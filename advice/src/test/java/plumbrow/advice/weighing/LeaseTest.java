package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.CostShares;
import plumbrow.advice.field.Farm;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.science.figure.Step;

/** By hand: 200 bu at $4.40, seed $100, insecticide 6 fl oz at $3, a trip of $9, handling $0.15, drying $0.20. */
@DisplayName("A lease shares each kind of cost by itself, and drying as the crop unless it says otherwise")
class LeaseTest {
    private static final double CROP = 200 * 4.40 * 0.5;

    @Test
    @DisplayName(
            "half the crop, all the seed, half the insecticide, no trip, a quarter of the hauling, drying as the crop")
    void eachKindByItself() {
        CostShares shares = new CostShares(1.0, null, 0.5, null, 0.0, null, 0.25);
        assertThat(margin(new Farm("Home", "A grower", 0.5, 0.6, shares), true))
                .isCloseTo(CROP - 200 * (0.15 * 0.25 + 0.20 * 0.5) - (100 + 0.5 * 18), within(1e-9));
    }

    @Test
    @DisplayName("drying and hauling go as the lease enters them")
    void asEntered() {
        CostShares shares = new CostShares(null, null, null, null, null, 1.0, 0.0);
        assertThat(margin(new Farm("Home", "A grower", 0.5, 0.6, shares), true))
                .isCloseTo(CROP - 200 * 0.20 - 0.6 * (100 + 18 + 9), within(1e-9));
    }

    @Test
    @DisplayName(
            "a farm of an older book, with nothing parted and drying in its handling, keeps its margin, and is told")
    void asBefore() {
        Farm farm = new Farm("Home", "A grower", 0.5, 0.6);
        assertThat(margin(farm, false)).isCloseTo(CROP - 200 * 0.15 - 0.6 * (100 + 18 + 9), within(1e-9));
        assertThat(advice(farm, false).cautions()).anyMatch(caution -> caution.contains("enter drying by itself"));
        assertThat(advice(farm, true).cautions()).noneMatch(caution -> caution.contains("enter drying by itself"));
    }

    @Test
    @DisplayName("the working shows each share and ends in the margin")
    void working() {
        CostShares shares = new CostShares(1.0, null, 0.5, null, 0.0, null, 0.25);
        Farm farm = new Farm("Home", "A grower", 0.5, 0.6, shares);
        List<Step> steps = advice(farm, true).program("sprayed").orElseThrow().working();
        assertThat(steps.get(steps.size() - 1).value()).isCloseTo(margin(farm, true), within(1e-9));
        assertThat(steps)
                .anyMatch(step -> step.text().contains("drying") && step.text().contains("50 % of it the operator's"))
                .anyMatch(step -> step.text().contains("haul") && step.text().contains("25 % of it the operator's"))
                .anyMatch(step ->
                        step.text().contains("Insecticide") && step.text().contains("50 % of it the operator's"));
    }

    private static double margin(Farm farm, boolean apart) {
        return advice(farm, apart).program("sprayed").orElseThrow().meanMarginUsdPerAcre();
    }

    private static FieldAdvice advice(Farm farm, boolean apart) {
        OneField field = new OneField()
                .assumptions(4.40, 200)
                .assumptions(AssumptionQuantity.HANDLING, new Distribution.Fixed(0.15))
                .seed("Hybrid", 100, 0, OneField.NONE)
                .insecticide("Guard", 3)
                .program("sprayed", true, OneField.plant("Hybrid"), spray());
        if (apart) {
            field.assumptions(AssumptionQuantity.DRYING, new Distribution.Fixed(0.20));
        }
        Season own = field.season();
        Season season = new Season(
                own.year(),
                own.asOf(),
                own.adviser(),
                List.of(farm),
                own.fields(),
                own.history(),
                own.shelf(),
                own.pests(),
                own.programs(),
                own.assumptions(),
                own.ground(),
                own.work());
        return Adviser.adviseField(
                season,
                season.fields().get(0),
                WeighingOptions.DEFAULT
                        .withDraws(100)
                        .withChanged(Map.of("stand sharpness", new Distribution.Fixed(1))));
    }

    private static Pass spray() {
        return new Pass(
                2,
                PassKind.SPRAY,
                LocalDate.of(2026, 6, 1),
                "Guard",
                new Amount(6, FarmUnit.FL_OZ),
                100,
                9,
                OneField.NONE,
                0);
    }
}
