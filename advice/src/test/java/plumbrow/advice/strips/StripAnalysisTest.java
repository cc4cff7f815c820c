package plumbrow.advice.strips;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.advice.strips.StripAnswer.Compared;

@DisplayName("Strips compared")
class StripAnalysisTest {
    private static final StripAnalysis.Stakes NOTHING_TOLD = new StripAnalysis.Stakes(OptionalDouble.empty(), Map.of());

    private static StripAnalysis.Stakes stakes(double price, double cost) {
        return new StripAnalysis.Stakes(OptionalDouble.of(price), Map.of("treated", cost));
    }

    private static StripTrial pairs(double[] treated, double[] check) {
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < treated.length; i++) {
            strips.add(new Strip("B" + i, "treated", treated[i], null));
            strips.add(new Strip("B" + i, "check", check[i], null));
        }
        return new StripTrial("check", strips);
    }

    @Test
    @DisplayName(
            "Barley of Immer and others 1934: gain 15.91333, 6.121954 to 25.704713, p .002413, above 8 with .94544")
    void barley() {
        double[] first = {
            81.0, 105.4, 119.7, 109.7, 98.3, 146.6, 142.0, 150.7, 191.5, 145.7, 82.3, 77.3, 78.4, 131.3, 89.6, 119.8,
            121.4, 124.0, 140.8, 124.8, 98.9, 89.0, 69.1, 89.3, 104.1, 86.9, 77.1, 78.9, 101.8, 96.0
        };
        double[] second = {
            80.7, 82.3, 80.4, 87.2, 84.2, 100.4, 115.5, 112.2, 147.7, 108.1, 103.1, 105.1, 116.5, 139.9, 129.6, 98.9,
            61.9, 96.2, 125.5, 75.7, 66.4, 49.9, 96.7, 61.9, 80.3, 67.7, 66.7, 67.4, 91.8, 94.1
        };
        Compared gain = StripAnalysis.of(pairs(first, second), stakes(1, 8), .95)
                .compared()
                .get(0);

        assertThat(gain.gainBuPerAcre()).isCloseTo(15.91333, within(1e-5));
        assertThat(gain.lowBuPerAcre()).isCloseTo(6.121954, within(1e-5));
        assertThat(gain.highBuPerAcre()).isCloseTo(25.704713, within(1e-5));
        assertThat(gain.p()).isCloseTo(.002413, within(1e-6));
        assertThat(gain.chanceOfPaying()).isCloseTo(.94544, within(1e-5));
        assertThat(gain.shown()).isTrue();
    }

    @Test
    @DisplayName(
            "Rice of Gomez and Gomez 1984: CV 6.7043 %, error of a difference 235.115, no rate shown against 25 kg")
    void rice() {
        double[][] yields = {
            {5113, 5346, 5272, 5164, 4804, 5254},
            {5398, 5952, 5713, 4831, 4848, 4542},
            {5307, 4719, 5483, 4986, 4432, 4919},
            {4678, 4264, 4749, 4410, 4748, 4098}
        };
        List<Strip> strips = new ArrayList<>();
        for (int b = 0; b < 4; b++) {
            for (int k = 0; k < 6; k++) {
                strips.add(new Strip("R" + b, 25 * (k + 1) + " kg", yields[b][k], null));
            }
        }
        StripAnswer answer = StripAnalysis.of(new StripTrial("25 kg", strips), NOTHING_TOLD, .95);

        assertThat(answer.cvPct()).isCloseTo(6.7043, within(1e-4));
        assertThat(answer.degreesOfFreedom()).isEqualTo(15);
        assertThat(answer.compared())
                .allSatisfy(each -> {
                    assertThat(each.standardErrorBuPerAcre()).isCloseTo(235.115, within(1e-3));
                    assertThat(each.shown()).isFalse();
                    assertThat(each.chanceOfPaying()).isNull();
                })
                .extracting(Compared::meanBuPerAcre)
                .satisfies(means -> assertThat(means.get(1)).isCloseTo(5304.25, within(1e-8)));
    }

    @Test
    @DisplayName("A lost plot costs itself: error squares 1540725.99 on 14 degrees of freedom (Yates 1933, by hand)")
    void lostPlot() {
        double[][] yields = {
            {5113, 5346, 5272, 5164, 4804, 5254},
            {5398, 5952, 5713, Double.NaN, 4848, 4542},
            {5307, 4719, 5483, 4986, 4432, 4919},
            {4678, 4264, 4749, 4410, 4748, 4098}
        };
        List<Strip> strips = new ArrayList<>();
        for (int b = 0; b < 4; b++) {
            for (int k = 0; k < 6; k++) {
                if (!Double.isNaN(yields[b][k])) {
                    strips.add(new Strip("R" + b, "t" + k, yields[b][k], null));
                }
            }
        }
        StripAnswer answer = StripAnalysis.of(new StripTrial("t0", strips), NOTHING_TOLD, .95);

        assertThat(answer.degreesOfFreedom()).isEqualTo(14);
        assertThat(answer.stripSdBuPerAcre() * answer.stripSdBuPerAcre() * 14).isCloseTo(1540725.99, within(.01));
        assertThat(answer.compared().get(2).strips()).isEqualTo(3);
    }

    @Test
    @DisplayName(
            "2,000 made trials: 95 % intervals cover 94 to 96, false alarms 5, stated chance of paying as often right")
    void holds() {
        Random random = new Random(20_261_130);
        int trials = 2000;
        int covered = 0;
        int alarms = 0;
        double[] stated = new double[5];
        double[] came = new double[5];
        int[] in = new int[5];
        for (int trial = 0; trial < trials; trial++) {
            // a gain from anywhere, as the flat prior of the stated chance has it
            double gain = 40 * random.nextDouble() - 20;
            int blocks = 3 + random.nextInt(4);
            double[] treated = new double[blocks];
            double[] check = new double[blocks];
            double[] same = new double[blocks];
            for (int b = 0; b < blocks; b++) {
                double ground = 180 + 15 * random.nextGaussian();
                treated[b] = ground + gain + 4 * random.nextGaussian();
                check[b] = ground + 4 * random.nextGaussian();
                same[b] = ground + 4 * random.nextGaussian();
            }
            Compared answer = StripAnalysis.of(pairs(treated, check), stakes(4, 8), .95)
                    .compared()
                    .get(0);
            covered += answer.lowBuPerAcre() <= gain && gain <= answer.highBuPerAcre() ? 1 : 0;
            alarms += StripAnalysis.of(pairs(same, check), NOTHING_TOLD, .95)
                            .compared()
                            .get(0)
                            .shown()
                    ? 1
                    : 0;
            double pays = answer.chanceOfPaying() == null ? -1 : answer.chanceOfPaying();
            int fifth = (int) Math.min(4, 5 * pays);
            stated[fifth] += pays;
            came[fifth] += gain > 2 ? 1 : 0;
            in[fifth]++;
        }
        // the error of such a count is half a point
        assertThat(100.0 * covered / trials).isBetween(94.0, 96.0);
        assertThat(100.0 * alarms / trials).isBetween(4.0, 6.0);
        for (int k = 0; k < 5; k++) {
            double error = Math.sqrt(stated[k] / in[k] * (1 - stated[k] / in[k]) / in[k]);
            assertThat(came[k] / in[k])
                    .as("stated chance of paying in fifth %d, %d trials", k, in[k])
                    .isCloseTo(stated[k] / in[k], within(3 * error + .002));
        }
    }

    @Test
    @DisplayName(
            "By place: a slope of the ground that passes for chance is taken out, and asked only where places are known")
    void byPlace() {
        Random random = new Random(7);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            boolean treated = (i / 2 + i) % 2 == 0;
            strips.add(new Strip(
                    "B" + i / 4,
                    treated ? "treated" : "check",
                    150 + 12 * Math.sin(i / 4.0) + (treated ? 5 : 0) + .5 * random.nextGaussian(),
                    (double) i));
        }
        Compared gain = StripAnalysis.of(new StripTrial("check", strips), stakes(4, 8), .95)
                .compared()
                .get(0);
        StripAnswer.ByPlace near = gain.byPlace();
        assertThat(near).isNotNull();
        if (near != null) {
            assertThat(near.gainBuPerAcre()).isCloseTo(5, within(1.0));
            assertThat(near.standardErrorBuPerAcre()).isLessThan(gain.standardErrorBuPerAcre());
        }
        assertThat(StripAnalysis.of(pairs(new double[] {5, 7, 6}, new double[] {4, 4, 4}), NOTHING_TOLD, .95)
                        .compared()
                        .get(0)
                        .byPlace())
                .isNull();
    }

    @Test
    @DisplayName("Doubts: few blocks, a strip far off, one order in all blocks")
    void doubts() {
        assertThat(StripAnalysis.of(pairs(new double[] {5, 7, 6}, new double[] {4, 4, 4.5}), NOTHING_TOLD, .95)
                        .doubts())
                .first()
                .asString()
                .startsWith("Weak: 3 blocks");
        List<Strip> strips = new ArrayList<>();
        Random random = new Random(3);
        for (int i = 0; i < 24; i++) {
            strips.add(new Strip(
                    "B" + i / 2, i % 2 == 0 ? "a" : "b", i == 9 ? 90 : 150 + random.nextGaussian(), (double) i));
        }
        assertThat(StripAnalysis.of(new StripTrial("a", strips), NOTHING_TOLD, .95)
                        .doubts())
                .anyMatch(doubt -> doubt.startsWith("The strip of 'b' in block B4 (90 bu/ac) lies "))
                .anyMatch(doubt -> doubt.startsWith("The treatments lie in the same order"));
    }

    @Test
    @DisplayName("What can't answer is refused with a sentence")
    void refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pairs(new double[] {5}, new double[] {4}))
                .withMessageContaining("a demonstration, not a trial");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pairs(new double[] {5, 5}, new double[] {5, 5}))
                .withMessageContaining("the same yield");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StripTrial("c", List.of(new Strip("1", "a", 5, null))))
                .withMessageContaining("'c'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StripTrial(
                        "a",
                        List.of(
                                new Strip("1", "a", 5, null),
                                new Strip("1", "a", 6, null),
                                new Strip("2", "b", 7, null),
                                new Strip("2", "b", 8, null))))
                .withMessageContaining("don't tie");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StripAnalysis.of(
                        pairs(new double[] {5, 7, 6}, new double[] {4, 4, 4}),
                        new StripAnalysis.Stakes(OptionalDouble.of(4), Map.of("trated", 3.0)),
                        .95))
                .withMessageContaining("'trated'");
        // differences that agree to the last digit leave no error
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        StripAnalysis.of(pairs(new double[] {5, 7, 6}, new double[] {4, 6, 5}), NOTHING_TOLD, .95))
                .withMessageContaining("agree to the last digit");
    }

    @Test
    @DisplayName(
            "Layout: each treatment once in each block, the same lot the same order; 6 pairs see 5 bu/ac at 8 in .239")
    void layout() {
        StripLayout layout = StripLayout.drawn(List.of("none", "half", "full"), 6, 11, 5.0, 8 / Math.sqrt(2));
        assertThat(layout.blocks())
                .hasSize(6)
                .allSatisfy(block -> assertThat(block).containsExactlyInAnyOrder("none", "half", "full"));
        assertThat(layout).isEqualTo(StripLayout.drawn(List.of("none", "half", "full"), 6, 11, 5.0, 8 / Math.sqrt(2)));
        assertThat(layout.blocks().stream().distinct().count()).isGreaterThan(1);
        assertThat(layout.chance()).isCloseTo(.239, within(5e-4));
        assertThat(layout.needed()).isEqualTo(23);
        assertThatIllegalArgumentException().isThrownBy(() -> StripLayout.drawn(List.of("a", "a"), 4, 1, null, null));
        assertThatIllegalArgumentException().isThrownBy(() -> StripLayout.drawn(List.of("a", "b"), 1, 1, null, null));
    }
}
