package plumbrow.science.economics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.figure.FigureInputException;

@DisplayName("What it is worth to know, against separate arithmetic")
class InformationTest {
    /** States: pest at low and high price, no pest at low and high price. */
    private static final double[][] SEES_PEST = {{1, 1, 0, 0}, {0, 0, 1, 1}};

    private static final double[][] SEES_PRICE = {{1, 0, 1, 0}, {0, 1, 0, 1}};

    @Test
    @DisplayName(
            "2.7 pest .3 saves 10 or 1 bu, price 3.50 or 5.50, cost 18: EV −1.35, EVPI 8.10, pest 8.10, price 1.175")
    void rarePest() {
        double[] chances = {.15, .15, .35, .35};
        double[][] payoffs = {{0, 0, 0, 0}, {10 * 3.5 - 18, 10 * 5.5 - 18, 3.5 - 18, 5.5 - 18}};
        assertPrinted(PerfectInformation.expected(chances, payoffs[1]), "-1.35");
        double best = PerfectInformation.bestExpected(chances, payoffs);
        assertThat(best).isZero();
        assertPrinted(PerfectInformation.withInformation(chances, payoffs) - best, "8.10");
        assertPrinted(SampleInformation.withSignal(chances, payoffs, SEES_PEST) - best, "8.10");
        assertPrinted(SampleInformation.withSignal(chances, payoffs, SEES_PRICE) - best, "1.175");
    }

    @Test
    @DisplayName("2.7 pest .5 saves 5 or 1 bu: EV −4.50, EVPI 2.375, pest 2.25, price 0")
    void commonPest() {
        double[] chances = {.25, .25, .25, .25};
        double[][] payoffs = {{0, 0, 0, 0}, {5 * 3.5 - 18, 5 * 5.5 - 18, 3.5 - 18, 5.5 - 18}};
        assertPrinted(PerfectInformation.expected(chances, payoffs[1]), "-4.50");
        assertPrinted(PerfectInformation.withInformation(chances, payoffs), "2.375");
        assertPrinted(SampleInformation.withSignal(chances, payoffs, SEES_PEST), "2.25");
        assertThat(SampleInformation.withSignal(chances, payoffs, SEES_PRICE)).isZero();
    }

    @Test
    @DisplayName("2.7 normal gain: μ 5, σ 20 → 5.7269; μ −8, σ 15 → 2.8156")
    void normalGain() {
        assertPrinted(PerfectInformation.ofNormalGain(5, 20), "5.7269");
        assertPrinted(PerfectInformation.ofNormalGain(-8, 15), "2.8156");
        assertThat(PerfectInformation.ofNormalGain(5, 0)).isZero();
    }

    @Test
    @DisplayName("From many normal draws the value of knowing comes close to the closed form")
    void drawsMeetTheClosedForm() {
        SplittableRandom random = new SplittableRandom(5);
        double[][] margins = new double[2][200_000];
        for (int k = 0; k < margins[1].length; k++) {
            margins[1][k] = 5 + 20 * random.nextGaussian();
        }
        assertThat(PerfectInformation.fromDraws(margins)).isCloseTo(PerfectInformation.ofNormalGain(5, 20), within(.1));
    }

    @Test
    @DisplayName("0 ≤ value of a test ≤ value of certainty, over many random tables")
    void bounds() {
        SplittableRandom random = new SplittableRandom(6);
        for (int round = 0; round < 500; round++) {
            double p = random.nextDouble();
            double[] chances = {p, 1 - p};
            double[][] payoffs = {
                {random.nextDouble(-50, 50), random.nextDouble(-50, 50)},
                {random.nextDouble(-50, 50), random.nextDouble(-50, 50)}
            };
            double hit = random.nextDouble();
            double alarm = random.nextDouble();
            double[][] likelihoods = {{hit, alarm}, {1 - hit, 1 - alarm}};
            double best = PerfectInformation.bestExpected(chances, payoffs);
            double test = SampleInformation.withSignal(chances, payoffs, likelihoods) - best;
            double certain = PerfectInformation.withInformation(chances, payoffs) - best;
            assertThat(test).isBetween(-1e-9, certain + 1e-9);
        }
    }

    @Test
    @DisplayName("A trial's value rises with its pairs and stays below the value of certainty")
    void trialValueRises() {
        double before = 0;
        for (int pairs = 1; pairs < 200; pairs++) {
            double value = PerfectInformation.ofNormalGain(5, TrialValue.sdOfAnswer(20, 40, pairs));
            assertThat(value).isGreaterThan(before).isLessThan(PerfectInformation.ofNormalGain(5, 20));
            before = value;
        }
    }

    @Test
    @DisplayName("Tables that don't fit together are refused with the key")
    void refused() {
        refused(Map.of("chances", "0.5,0.4", "payoffs", "1,2"), "chances", "0.9");
        refused(Map.of("chances", "0.5,0.5", "payoffs", "1,2,3"), "payoffs", "2 numbers");
        assertThatThrownBy(() -> SampleInformation.FIGURE.answer(
                        Map.of("chances", "0.5,0.5", "payoffs", "1,2;0,0", "likelihoods", "0.5,0.5;0.4,0.5")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("likelihoods")
                .hasMessageContaining("column 1 sums to 0.9");
    }

    private static void refused(Map<String, String> typed, String key, String part) {
        assertThatThrownBy(() -> PerfectInformation.FIGURE.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining(key)
                .hasMessageContaining(part);
    }
}
