package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;
import static plumbrow.advice.weighing.OneField.spray;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;

/** Ranges over which the advice holds, dominance and the value of knowing, where hand arithmetic or a bound says what they must be. */
class WhatTurnsItTest {
    @Test
    @DisplayName("break-even price and gain: $22 extra and 5.432 bu at $4.40 less $0.35 (reference 1.1, row 1e)")
    void priceAndGain() {
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(3.6, 4.4, 5.2))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .assumptions(AssumptionQuantity.HANDLING, new Distribution.Fixed(0.35))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 122, 0, new Distribution.Triangular(3.5, 5.5, 7.5))
                .program("plain", true, plant("Plain"), harvest(2))
                .program("dearer", false, plant("Dearer"), harvest(2))
                .weigh(20_000);
        assertThat(range(advice, "gain: Dearer").holdsFrom()).isCloseTo(5.432, within(0.001));
        assertThat(range(advice, "price").holdsFrom()).isCloseTo(22 / 5.5 + 0.35, within(0.001));
        assertThat(range(advice, "price").says())
                .contains("while price of corn is above $4.35/bu", "Below, plain takes over");
    }

    @Test
    @DisplayName("of three the middle one is best from $4 to $6: the cheap one below, the dear one above, by hand")
    void ofAllAndNotOfTwo() {
        // Mid costs $20 more and brings 5 bu more than plain (turns at $4); dear $24 and 4 bu more than mid (turns at
        // $6).
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(2, 4.9, 8))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .seed("Plain", 100, 0, NONE)
                .seed("Mid", 120, 0, new Distribution.Fixed(5))
                .seed("Dear", 144, 0, new Distribution.Fixed(9))
                .program("plain", true, plant("Plain"), harvest(2))
                .program("mid", false, plant("Mid"), harvest(2))
                .program("dear", false, plant("Dear"), harvest(2))
                .weigh(5_000);
        AdviceRange price = range(advice, "price");
        assertThat(advice.advised()).isEqualTo("mid");
        assertThat(price.bands()).extracting(BestBand::program).containsExactly("plain", "mid", "dear");
        assertThat(price.holdsFrom()).isCloseTo(4, within(1e-4));
        assertThat(price.holdsTo()).isCloseTo(6, within(1e-4));
        assertThat(price.says())
                .isEqualTo("mid stays best while price of corn is between $4.00/bu and $6.00/bu; it is taken as about"
                        + " $4.93/bu. Below, plain takes over. Above, dear takes over.");
        // E max over the price less the best mean, on a million draws of the same distribution in bench/numpy/bands.py:
        // 1.40.
        assertThat(advice.whatMatters().get(0).usdPerAcre()).isCloseTo(advice.evpiUsdPerAcre(), within(0.05));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    @DisplayName("held in the middle of a band, an input makes that band's program the best of a whole weighing")
    void bandsAreWeighings(long seed) {
        OneField field = RandomField.of(new SplittableRandom(seed));
        FieldAdvice advice = field.weigh(4_000);
        for (AdviceRange range : advice.ranges()) {
            for (BestBand band : range.turns() ? range.bands() : List.<BestBand>of()) {
                double middle = (band.from() + band.to()) / 2;
                Distribution distribution = range.unit().equals("chance")
                        ? new Distribution.Chance(middle)
                        : new Distribution.Fixed(middle);
                FieldAdvice again = field.weigh(
                        WeighingOptions.DEFAULT.withDraws(4_000).withChanged(Map.of(range.input(), distribution)));
                double best = again.programs().stream()
                        .filter(program -> program.standing().advisable())
                        .mapToDouble(WeighedProgram::meanMarginUsdPerAcre)
                        .max()
                        .orElseThrow();
                assertThat(again.program(band.program()).orElseThrow().meanMarginUsdPerAcre())
                        .as(range.says())
                        .isCloseTo(best, within(0.3));
            }
        }
        assertThat(advice.ranges()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    @DisplayName("what turns nothing by itself is worth nothing to know by itself, or is said to count with others")
    void worthAndRangeAgree(long seed) {
        FieldAdvice advice = RandomField.of(new SplittableRandom(seed)).weigh(4_000);
        for (AdviceRange range : advice.ranges()) {
            double worth = advice.whatMatters().stream()
                    .filter(knowing -> knowing.input().equals(range.input()))
                    .findFirst()
                    .orElseThrow()
                    .usdPerAcre();
            if (!range.turns() && worth >= 0.05) {
                assertThat(range.says()).contains("It counts together with");
                assertThat(range.input()).isIn("price", "yield"); // the two that are tied
            }
            assertThat(range.says()).doesNotContain("never");
        }
    }

    @Test
    @DisplayName(
            "another seed moves the ends by no more than their errors, and finds the same inputs where they are clear of them")
    void anotherSeed() {
        OneField field = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(2, 4.9, 8))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Weibull(180, 0.2))
                .seed("Plain", 100, 0, new Distribution.Normal(1, 8))
                .seed("Mid", 120, 0, new Distribution.Normal(6, 1.3))
                .seed("Dear", 144, 0, new Distribution.Normal(10, 0.8))
                .program("plain", true, plant("Plain"), harvest(2))
                .program("mid", false, plant("Mid"), harvest(2))
                .program("dear", false, plant("Dear"), harvest(2));
        FieldAdvice first =
                field.weigh(WeighingOptions.DEFAULT.withDraws(10_000).withSeed(1));
        for (long seed = 2; seed <= 8; seed++) {
            FieldAdvice other =
                    field.weigh(WeighingOptions.DEFAULT.withDraws(10_000).withSeed(seed));
            assertThat(other.advised()).isEqualTo(first.advised());
            for (AdviceRange range : first.ranges()) {
                AdviceRange again = range(other, range.input());
                for (int b = 1; b < range.bands().size(); b++) {
                    BestBand band = range.bands().get(b);
                    if (band.from() - band.fromError() > range.plausibleLow()
                            && band.from() + band.fromError() < range.plausibleHigh()) {
                        BestBand same = again.bands().stream()
                                .filter(each -> each.program().equals(band.program()) && each.fromError() > 0)
                                .findFirst()
                                .orElseThrow(() -> new AssertionError(range.says() + " but " + again.says()));
                        assertThat(same.from()).isCloseTo(band.from(), within(band.fromError() + same.fromError()));
                    }
                }
            }
        }
    }

    @Test
    @DisplayName("an input that never turns the order says so")
    void never() {
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(3.6, 4.4, 5.2))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Pert(150, 180, 220))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 110, 0, new Distribution.Fixed(20))
                .program("plain", true, plant("Plain"), harvest(2))
                .program("dearer", false, plant("Dearer"), harvest(2))
                .weigh(2_000);
        assertThat(advice.ranges()).hasSize(2).allSatisfy(range -> {
            assertThat(range.turns()).isFalse();
            assertThat(range.says()).startsWith("dearer stays best from");
        });
        assertThat(advice.whatMatters())
                .allSatisfy(knowing -> assertThat(knowing.usdPerAcre()).isLessThan(1e-9));
        Comparison comparison = advice.comparisons().get(0);
        assertThat(comparison.firstDegree()).isEqualTo("dearer");
        assertThat(comparison.secondDegree()).isEqualTo("dearer");
        assertThat(comparison.chanceBetter()).isEqualTo(1);
    }

    @Test
    @DisplayName("a mean of nought is nought, not what rounding leaves of it")
    void noughtIsNought() {
        FieldAdvice advice = new OneField()
                .assumptions(4, 200)
                .seed("Plain", 100, 0, new Distribution.Triangular(-3, 0, 3))
                .seed("Dearer", 101, 0, new Distribution.Triangular(-2.7, 0, 2.7))
                .program("plain", true, plant("Plain"), harvest(2))
                .program("dearer", false, plant("Dearer"), harvest(2))
                .weigh(10_000);
        assertThat(advice.ranges()).isNotEmpty().allSatisfy(range -> {
            assertThat(range.likely()).isZero();
            assertThat(range.says()).doesNotContain("E-").doesNotContain("E−");
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    @DisplayName("0 ≤ worth of one input or sample ≤ value of information all; chances of being best sum to 1")
    void bounds(long seed) {
        FieldAdvice advice = RandomField.of(new SplittableRandom(seed)).weigh(4_000);
        double all = advice.evpiUsdPerAcre();
        assertThat(all).isNotNegative();
        assertThat(advice.whatMatters())
                .allSatisfy(knowing -> assertThat(knowing.usdPerAcre()).isBetween(0.0, all + 1e-9));
        assertThat(advice.programs().stream()
                        .mapToDouble(WeighedProgram::chanceBest)
                        .sum())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    @DisplayName(
            "identical programs tie: each beats the other half the time, the cheaper or first is taken and it says so")
    void ties() {
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Pert(3.6, 4.4, 5.2))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Pert(150, 180, 220))
                .seed("Plain", 100, 0, NONE)
                .program("one", true, plant("Plain"), harvest(2))
                .program("same again", false, plant("Plain"), harvest(2))
                .weigh(1_000);
        assertThat(advice.program("same again").orElseThrow().chanceBeatsBaseline())
                .isEqualTo(0.5);
        assertThat(advice.programs())
                .allSatisfy(program -> assertThat(program.chanceBest()).isCloseTo(0.5, within(1e-9)));
        AboutEqual equal = Objects.requireNonNull(advice.aboutEqual());
        assertThat(equal.programs()).containsExactly("one", "same again");
        assertThat(advice.sentence()).startsWith("one and same again are about equal: $0/ac apart on average");
    }

    @Test
    @DisplayName("a barred program is weighed and shown, and never advised, however well it pays")
    void barred() {
        FieldAdvice advice = new OneField()
                .assumptions(6, 200)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Guard", 1)
                .control("Guard", "beetle", 6, new Distribution.Fixed(0.9))
                .insect("beetle", new Distribution.Fixed(1), new Distribution.Fixed(20))
                .program("none", true, plant("Plain"), harvest(2))
                .program("over the label", false, plant("Plain"), spray(2, "Guard", 7), harvest(3))
                .weigh(500);
        assertThat(advice.advised()).isEqualTo("none");
        WeighedProgram over = advice.program("over the label").orElseThrow();
        assertThat(over.meanGainUsdPerAcre()).isGreaterThan(100);
        assertThat(over.standing().word()).isEqualTo("barred");
        assertThat(over.chanceBest()).isZero();
    }

    private static AdviceRange range(FieldAdvice advice, String input) {
        return advice.ranges().stream()
                .filter(range -> range.input().equals(input))
                .findFirst()
                .orElseThrow();
    }
}
