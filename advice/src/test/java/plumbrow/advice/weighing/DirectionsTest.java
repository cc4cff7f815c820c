package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.program.Pass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** Which way the weighing must move, and what it says when it can't weigh. */
class DirectionsTest {
    @ParameterizedTest(name = "{0} fl oz controls {1}")
    @CsvSource({"6, .8", "3, .5", "4.5, .65", "1.5, .25", "12, .8"})
    @DisplayName("control between known rates on a straight line, below in proportion, above no more")
    void controlAtRate(double flOz, double control) {
        FieldAdvice advice = treated(flOz, "fl oz").weigh(100);
        double lost = 200 - advice.program("treated").orElseThrow().meanYieldBuPerAcre();
        assertThat(lost).isCloseTo(200 * 0.2 * (1 - control), within(1e-9));
        boolean offTheRow = flOz != 6 && flOz != 3;
        assertThat(advice.cautions().stream().anyMatch(caution -> caution.contains("not in the control sheet")))
                .isEqualTo(offTheRow);
    }

    @Test
    @DisplayName("the same rate in quarts gives the same answer")
    void otherUnits() {
        assertThat(treated(4.5 / 32, "qt")
                        .weigh(100)
                        .program("treated")
                        .orElseThrow()
                        .meanMarginUsdPerAcre())
                .isCloseTo(
                        treated(4.5, "fl oz")
                                .weigh(100)
                                .program("treated")
                                .orElseThrow()
                                .meanMarginUsdPerAcre(),
                        within(1e-9));
    }

    @Test
    @DisplayName("weeds: two species through one hyperbola, 2·4 % + 10·1 % load, A 60 % (reference weeds 1.2)")
    void weeds() {
        FieldAdvice advice = new OneField()
                .assumptions(5, 200)
                .seed("Plain", 100, 0, NONE)
                .weed("waterhemp", new Distribution.Fixed(2), 4, 60)
                .weed("giant foxtail", new Distribution.Fixed(10), 1, 40)
                .program("plain", true, plant("Plain"), harvest(2))
                .weigh(100);
        double lossPct = 18 / (1 + 18.0 / 60);
        assertThat(advice.programs().get(0).meanYieldBuPerAcre()).isCloseTo(200 * (1 - lossPct / 100), within(1e-9));
    }

    @Test
    @DisplayName("share of crop and cost: the half-share break-even of row 1e, 5.946 bu")
    void shares() {
        FieldAdvice advice = new OneField()
                .shares(0.5, 0.5)
                .assumptions(4.40, 200)
                .assumptions(AssumptionQuantity.HANDLING, new Distribution.Fixed(0.35))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 122, 0, new Distribution.Fixed(5.9459459459))
                .program("plain", true, plant("Plain"), harvest(2))
                .program("dearer", false, plant("Dearer"), harvest(2))
                .weigh(100);
        assertThat(advice.program("dearer").orElseThrow().meanGainUsdPerAcre()).isCloseTo(0, within(1e-6));
    }

    @Test
    @DisplayName("what the season lacks is said in one sentence")
    void gaps() {
        OneField noPrice = new OneField()
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .seed("Plain", 100, 0, NONE)
                .program("plain", true, plant("Plain"), harvest(2));
        assertThatThrownBy(() -> noPrice.weigh(100))
                .isInstanceOf(SeasonGapException.class)
                .hasMessage("Creek 100 can't be weighed: the assumptions have no price for it or for corn.");
        assertThatThrownBy(() -> new OneField().assumptions(4, 200).weigh(100))
                .hasMessageContaining("it has no program");
        OneField noSeed = new OneField()
                .assumptions(4, 200)
                .seed("Plain", 100, 0, NONE)
                .program("plain", true, plant(1, "Plain", 50), harvest(2));
        assertThatThrownBy(() -> noSeed.weigh(100)).hasMessageContaining("cover 50 % of the field; expected 100 %");
        OneField plain = new OneField()
                .assumptions(4, 200)
                .seed("Plain", 100, 0, NONE)
                .program("plain", true, plant("Plain"), harvest(2));
        assertThatThrownBy(() -> plain.weigh(WeighingOptions.DEFAULT.withChanged(Map.of("moon", NONE))))
                .hasMessageContaining("no uncertain input 'moon'");
    }

    private static OneField treated(double amount, String unit) {
        OneField field = new OneField()
                .assumptions(6, 200)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Guard", 3)
                .control("Guard", "beetle", 3, new Distribution.Fixed(0.5))
                .control("Guard", "beetle", 6, new Distribution.Fixed(0.8))
                .insect("beetle", new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("none", true, plant("Plain"), harvest(2));
        FarmUnit farmUnit = FarmUnit.parse(unit).orElseThrow();
        return field.program(
                "treated",
                false,
                plant("Plain"),
                new Pass(
                        2,
                        spray(2, "Guard", 1).kind(),
                        spray(2, "Guard", 1).date(),
                        "Guard",
                        new Amount(amount, farmUnit),
                        100,
                        0,
                        NONE,
                        0),
                harvest(3));
    }
}
