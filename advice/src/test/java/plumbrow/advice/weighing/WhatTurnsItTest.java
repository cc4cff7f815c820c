package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.outlook.OutlookQuantity;

/** Break-evens, dominance and the value of knowing, where hand arithmetic or a bound says what they must be. */
class WhatTurnsItTest {
    @Test
    @DisplayName("break-even price and gain: $22 extra and 5.432 bu at $4.40 less $0.35 (reference 1.1, row 1e)")
    void priceAndGain() {
        FieldAdvice advice = new OneField()
                .outlook(OutlookQuantity.PRICE, new Law.Pert(3.6, 4.4, 5.2))
                .outlook(OutlookQuantity.YIELD, new Law.Fixed(200))
                .outlook(OutlookQuantity.HANDLING, new Law.Fixed(0.35))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 122, 0, new Law.Triangular(3.5, 5.5, 7.5))
                .course("plain", true, plant("Plain"), harvest(2))
                .course("dearer", false, plant("Dearer"), harvest(2))
                .weigh(20_000);
        assertThat(turn(advice, "gain: Dearer").value()).isCloseTo(5.432, within(0.001));
        assertThat(turn(advice, "price").value()).isCloseTo(22 / 5.5 + 0.35, within(0.001));
        assertThat(turn(advice, "price").says()).contains("while price of corn is above $4.35/bu");
    }

    @Test
    @DisplayName("an input that never turns the order says so")
    void never() {
        FieldAdvice advice = new OneField()
                .outlook(OutlookQuantity.PRICE, new Law.Pert(3.6, 4.4, 5.2))
                .outlook(OutlookQuantity.YIELD, new Law.Pert(150, 180, 220))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 110, 0, new Law.Fixed(20))
                .course("plain", true, plant("Plain"), harvest(2))
                .course("dearer", false, plant("Dearer"), harvest(2))
                .weigh(2_000);
        assertThat(advice.breakEvens()).hasSize(2).allSatisfy(turn -> {
            assertThat(turn.value()).isNull();
            assertThat(turn.says()).contains("never turns the order of dearer and plain");
        });
        assertThat(advice.whatMatters())
                .allSatisfy(knowing -> assertThat(knowing.usdPerAcre()).isLessThan(1e-9));
        Comparison comparison = advice.comparisons().get(0);
        assertThat(comparison.firstDegree()).isEqualTo("dearer");
        assertThat(comparison.secondDegree()).isEqualTo("dearer");
        assertThat(comparison.chanceBetter()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    @DisplayName("0 ≤ worth of one input or sample ≤ worth of knowing all; chances of being best sum to 1")
    void bounds(long seed) {
        FieldAdvice advice = RandomField.of(new SplittableRandom(seed)).weigh(4_000);
        double all = advice.worthOfKnowingAllUsdPerAcre();
        assertThat(all).isNotNegative();
        assertThat(advice.whatMatters())
                .allSatisfy(knowing -> assertThat(knowing.usdPerAcre()).isBetween(0.0, all + 1e-9));
        assertThat(advice.courses().stream()
                        .mapToDouble(WeighedCourse::chanceBest)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    @DisplayName(
            "identical courses tie: each beats the other half the time, the cheaper or first is taken and it says so")
    void ties() {
        FieldAdvice advice = new OneField()
                .outlook(OutlookQuantity.PRICE, new Law.Pert(3.6, 4.4, 5.2))
                .outlook(OutlookQuantity.YIELD, new Law.Pert(150, 180, 220))
                .seed("Plain", 100, 0, NONE)
                .course("one", true, plant("Plain"), harvest(2))
                .course("same again", false, plant("Plain"), harvest(2))
                .weigh(1_000);
        assertThat(advice.course("same again").orElseThrow().chanceBeatsBaseline())
                .isEqualTo(0.5);
        assertThat(advice.courses())
                .allSatisfy(course -> assertThat(course.chanceBest()).isCloseTo(0.5, within(1e-9)));
        assertThat(advice.cautions()).anyMatch(caution -> caution.contains("within $1/ac"));
    }

    @Test
    @DisplayName("a barred course is weighed and shown, and never advised, however well it pays")
    void barred() {
        FieldAdvice advice = new OneField()
                .outlook(6, 200)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Guard", 1)
                .control("Guard", "beetle", 6, new Law.Fixed(0.9))
                .insect("beetle", new Law.Fixed(1), new Law.Fixed(20))
                .course("none", true, plant("Plain"), harvest(2))
                .course("over the label", false, plant("Plain"), spray(2, "Guard", 7), harvest(3))
                .weigh(500);
        assertThat(advice.advised()).isEqualTo("none");
        WeighedCourse over = advice.course("over the label").orElseThrow();
        assertThat(over.meanGainUsdPerAcre()).isGreaterThan(100);
        assertThat(over.standing().word()).isEqualTo("barred");
        assertThat(over.chanceBest()).isZero();
    }

    private static BreakEven turn(FieldAdvice advice, String input) {
        return advice.breakEvens().stream()
                .filter(turn -> turn.input().equals(input))
                .findFirst()
                .orElseThrow();
    }
}
