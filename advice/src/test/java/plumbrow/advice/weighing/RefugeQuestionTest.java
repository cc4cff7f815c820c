package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.Distribution;

/** Refuge in the bag and insecticide over the trait, against rows worked apart from this code. */
class RefugeQuestionTest {
    private static final String WORM = "corn rootworm";

    /** 200 bu at $6, an unprotected stand loses 40 bu; a perfect trait in a bag with so much refuge. */
    private static OneField blend(double refugePct) {
        return new OneField()
                .assumptions(6, 200)
                .seed("Blend", 100, refugePct, NONE, "Cry3Bb1")
                .seed("Whole", 100, 0, NONE, "Cry3Bb1")
                .trait("Cry3Bb1", "Cry3", WORM, new Distribution.Fixed(1))
                .insecticide("Full", 3)
                .control("Full", WORM, 6, new Distribution.Fixed(0.75))
                .insecticide("Half", 10.0 / 3)
                .control("Half", WORM, 3, new Distribution.Fixed(0.60))
                .insect(WORM, new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("trait alone", true, plant("Blend"), harvest(2))
                .program("no refuge", false, plant("Whole"), harvest(2))
                .program("full rate over it", false, plant("Blend"), spray(2, "Full", 6), harvest(3))
                .program("half rate over it", false, plant("Blend"), spray(2, "Half", 3), harvest(3));
    }

    @ParameterizedTest(name = "{0} % refuge loses {1} bu and ${2}")
    @CsvSource({"5, 2, 12", "20, 8, 48"})
    @DisplayName("6a, 6b (common practice): 40 bu lost on 1 plant in 20 is 2 bu/ac and $12/ac at $6")
    void refugeLoss(double refugePct, double bushels, double dollars) {
        FieldAdvice advice = blend(refugePct).weigh(100);
        WeighedProgram alone = advice.program("trait alone").orElseThrow();
        WeighedProgram whole = advice.program("no refuge").orElseThrow();
        assertThat(whole.meanYieldBuPerAcre() - alone.meanYieldBuPerAcre()).isCloseTo(bushels, within(1e-9));
        assertThat(whole.meanMarginUsdPerAcre() - alone.meanMarginUsdPerAcre()).isCloseTo(dollars, within(1e-9));
    }

    @ParameterizedTest(name = "{0} % refuge: net {1}")
    @CsvSource({"5, -9", "20, 18"})
    @DisplayName("6d, 6e (computed): full rate, e .75, $18 over a trait that works")
    void fullRate(double refugePct, double net) {
        WeighedProgram full =
                blend(refugePct).weigh(100).program("full rate over it").orElseThrow();
        assertThat(full.meanGainUsdPerAcre()).isCloseTo(net, within(1e-9));
    }

    @Test
    @DisplayName("6f, 6g, 6h (computed): one chance in ten that the trait fails and 30 bu are lost")
    void traitMayFail() {
        // L_r is 40 bu and L_t 30 bu on one scale: a failed trait still prevents a quarter.
        FieldAdvice advice = failing(0.10).weigh(10_000);
        assertThat(gain(advice, "full rate over it")).isCloseTo(3.825, within(1e-9));
        assertThat(gain(advice, "half rate over it")).isCloseTo(7.46, within(1e-9));
        assertThat(advice.advised()).isEqualTo("half rate over it");
    }

    @Test
    @DisplayName(
            "6f, 6g (computed): the order turns at a failure chance of .070 for the full and .027 for the half rate")
    void failureChanceWhereItPays() {
        assertThat(gain(failing(0.070).weigh(10_000), "full rate over it")).isCloseTo(0, within(0.1));
        assertThat(gain(failing(0.027).weigh(10_000), "half rate over it")).isCloseTo(0, within(0.1));
        AdviceRange range = failing(0.01).weigh(10_000).ranges().stream()
                .filter(each -> each.input().startsWith("trait works"))
                .findFirst()
                .orElseThrow();
        assertThat(range.holdsFrom()).isCloseTo(1 - 0.0272, within(0.001));
        // At stake are 2 + 28.5·f bu at $6: full saves .75 of it for $18, half .60 for $10. Equal at f = (8/.9 −
        // 2)/28.5 = .2417.
        assertThat(range.bands())
                .extracting(BestBand::program)
                .containsExactly("full rate over it", "half rate over it", "trait alone");
        assertThat(range.bands().get(1).from()).isCloseTo(1 - 0.2417, within(0.0005));
    }

    @Test
    @DisplayName("two modes of action fail together only if both fail")
    void pyramid() {
        OneField field = new OneField()
                .assumptions(6, 200)
                .seed("Single", 100, 0, NONE, "Cry3Bb1")
                .seed("Pyramid", 100, 0, NONE, "Cry3Bb1", "Cry34/35")
                .seed("Same group", 100, 0, NONE, "Cry3Bb1", "mCry3A")
                .trait("Cry3Bb1", "Cry3", WORM, new Distribution.Fixed(0.9))
                .trait("mCry3A", "Cry3", WORM, new Distribution.Fixed(0.9))
                .trait("Cry34/35", "Cry34/35", WORM, new Distribution.Fixed(0.9))
                .doubt("Cry3", WORM, 0.5)
                .insect(WORM, new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("single", true, plant("Single"), harvest(2))
                .program("pyramid", false, plant("Pyramid"), harvest(2))
                .program("same group twice", false, plant("Same group"), harvest(2));
        FieldAdvice advice = field.weigh(1_000);
        // 20 % × (½·0.1 + ½·1) = 11 % lost on one mode, 20 % × 0.1 × (½·0.1 + ½) = 1.1 % on two.
        assertThat(bushels(advice, "single")).isCloseTo(200 * 0.89, within(1e-9));
        assertThat(bushels(advice, "pyramid")).isCloseTo(200 * 0.989, within(1e-9));
        assertThat(bushels(advice, "same group twice")).isCloseTo(bushels(advice, "single"), within(1e-9));
    }

    @Test
    @DisplayName("a block refuge of 20 % loses what its share of unprotected acres loses")
    void block() {
        OneField field = new OneField()
                .assumptions(6, 200)
                .seed("Trait", 100, 0, NONE, "Cry3Bb1")
                .seed("Conventional", 60, 0, NONE)
                .trait("Cry3Bb1", "Cry3", WORM, new Distribution.Fixed(1))
                .insect(WORM, new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("block", true, plant(1, "Trait", 80), plant(2, "Conventional", 20), harvest(3));
        WeighedProgram block = field.weigh(100).programs().get(0);
        assertThat(block.meanYieldBuPerAcre()).isCloseTo(200 - 0.2 * 40, within(1e-9));
        assertThat(block.costUsdPerAcre()).isCloseTo(0.8 * 100 + 0.2 * 60, within(1e-9));
    }

    private static OneField failing(double chance) {
        return new OneField()
                .assumptions(6, 200)
                .seed("Blend", 100, 5, NONE, "Cry3Bb1")
                .trait("Cry3Bb1", "Cry3", WORM, new Distribution.Fixed(1))
                .doubt("Cry3", WORM, chance, 0.25)
                .insecticide("Full", 3)
                .control("Full", WORM, 6, new Distribution.Fixed(0.75))
                .insecticide("Half", 10.0 / 3)
                .control("Half", WORM, 3, new Distribution.Fixed(0.60))
                .insect(WORM, new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("trait alone", true, plant("Blend"), harvest(2))
                .program("full rate over it", false, plant("Blend"), spray(2, "Full", 6), harvest(3))
                .program("half rate over it", false, plant("Blend"), spray(2, "Half", 3), harvest(3));
    }

    private static double gain(FieldAdvice advice, String program) {
        return advice.program(program).orElseThrow().meanGainUsdPerAcre();
    }

    private static double bushels(FieldAdvice advice, String program) {
        return advice.program(program).orElseThrow().meanYieldBuPerAcre();
    }
}
