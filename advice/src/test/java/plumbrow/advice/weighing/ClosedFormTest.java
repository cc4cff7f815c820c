package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.advice.weighing.OneField.NONE;
import static plumbrow.advice.weighing.OneField.harvest;
import static plumbrow.advice.weighing.OneField.plant;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.science.chance.LognormalDistribution;
import plumbrow.science.chance.StandardNormal;

/**
 * The weighing against answers that need no draws: one uncertain input, normal or lognormal.
 *
 * <p>Source of the formulas: Raiffa & Schlaifer 1961 and closed forms (normal gain: EVPI = σφ(μ/σ) −
 * |μ|Φ(−|μ|/σ); expected shortfall of a normal = μ − σφ(z)/α, the standard result for a normal tail).
 */
class ClosedFormTest {
    private static final double PRICE = 4;
    private static final double ALPHA = 0.1;

    /** Bushels gained normal, sold at $4, for $12/ac: margin gain normal with μ = 4·m − 12, σ = 4·s. */
    private static OneField normalGain(double meanBushels, double sdBushels) {
        return new OneField()
                .assumptions(PRICE, 200)
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 112, 0, new Distribution.Normal(meanBushels, sdBushels / meanBushels))
                .program("plain seed", true, plant("Plain"), harvest(2))
                .program("dearer seed", false, plant("Dearer"), harvest(2));
    }

    @ParameterizedTest(name = "gain {0} bu, spread {1} bu")
    @CsvSource({"4.25, 5", "1, 3.75", "3, 2", "9, 6"})
    @DisplayName("normal gain: mean, chance of paying, value of knowing, shortfall")
    void normal(double bushels, double spread) {
        int draws = 10_000;
        FieldAdvice advice = normalGain(bushels, spread).weigh(draws);
        WeighedProgram dearer = advice.program("dearer seed").orElseThrow();
        double mean = PRICE * bushels - 12;
        double sd = PRICE * spread;
        double error = sd / Math.sqrt(draws);
        assertThat(dearer.meanGainUsdPerAcre()).isCloseTo(mean, within(4 * error));
        double chance = StandardNormal.below(mean / sd);
        assertThat(dearer.chanceBeatsBaseline())
                .isCloseTo(chance, within(4 * Math.sqrt(chance * (1 - chance) / draws)));
        double knowing =
                sd * StandardNormal.density(mean / sd) - Math.abs(mean) * StandardNormal.below(-Math.abs(mean) / sd);
        assertThat(advice.evpiUsdPerAcre()).isCloseTo(knowing, within(4 * error));
        assertThat(advice.whatMatters().get(0).usdPerAcre()).isCloseTo(knowing, within(4 * error));
        double z = StandardNormal.quantile(ALPHA);
        double shortfall = PRICE * 200 - 112 + PRICE * bushels - sd * StandardNormal.density(z) / ALPHA;
        assertThat(dearer.shortfallUsdPerAcre()).isCloseTo(shortfall, within(4 * sd / Math.sqrt(ALPHA * draws)));
        assertThat(dearer.standardErrorUsdPerAcre()).isCloseTo(error, within(error * 0.05));
    }

    @Test
    @DisplayName("EVPI of μ 5, σ 20 and μ −8, σ 15: 5.7269 and 2.8156 (reference 2.7, computed)")
    void printedValues() {
        assertThat(normalGain(4.25, 5).weigh(100_000).evpiUsdPerAcre()).isCloseTo(5.7269, within(0.002));
        assertThat(normalGain(1, 3.75).weigh(100_000).evpiUsdPerAcre()).isCloseTo(2.8156, within(0.002));
    }

    @Test
    @DisplayName("the error of mean, chance, worth and shortfall shrinks as draws are added")
    void errorShrinks() {
        double mean = 5;
        double sd = 20;
        double z = StandardNormal.quantile(ALPHA);
        double shortfall = 700 + 5 - sd * StandardNormal.density(z) / ALPHA - 0;
        double[] last = null;
        for (int draws : new int[] {200, 2_000, 20_000}) {
            FieldAdvice advice = normalGain(4.25, 5).weigh(draws);
            WeighedProgram dearer = advice.program("dearer seed").orElseThrow();
            double[] errors = {
                Math.abs(dearer.chanceBeatsBaseline() - StandardNormal.below(mean / sd)),
                Math.abs(advice.evpiUsdPerAcre() - 5.7269),
                Math.abs(dearer.shortfallUsdPerAcre() - shortfall)
            };
            if (last != null) {
                for (int i = 0; i < errors.length; i++) {
                    assertThat(errors[i]).as("error %d at %d draws", i, draws).isLessThan(Math.max(last[i], 1e-4));
                }
            }
            last = errors;
        }
    }

    @Test
    @DisplayName("lognormal price: mean F, chance above a strike, value of knowing the price")
    void lognormalPrice() {
        int draws = 10_000;
        double futures = 4.50;
        LognormalDistribution distribution = LognormalDistribution.ofPrice(futures, 0.25, 0.5);
        FieldAdvice advice = new OneField()
                .assumptions(AssumptionQuantity.PRICE, new Distribution.Lognormal(futures, 0.25, 0.5))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(200))
                .seed("Plain", 100, 0, NONE)
                .seed("Dearer", 100 + 10 * 4.20, 0, new Distribution.Fixed(10))
                .program("plain seed", true, plant("Plain"), harvest(2))
                .program("dearer seed", false, plant("Dearer"), harvest(2))
                .weigh(draws);
        WeighedProgram dearer = advice.program("dearer seed").orElseThrow();
        double error = 10 * distribution.sd() / Math.sqrt(draws);
        assertThat(dearer.meanGainUsdPerAcre()).isCloseTo(10 * (futures - 4.20), within(4 * error));
        // P(S > 4.20) = .61863 and mean shortfall below 4.20 = .17935 (reference 2.1, computed).
        assertThat(dearer.chanceBeatsBaseline()).isCloseTo(0.61863, within(4 * 0.0049));
        assertThat(advice.evpiUsdPerAcre()).isCloseTo(10 * 0.17935, within(4 * error));
        assertThat(advice.whatMatters().get(0).input()).isEqualTo("price");
        AdviceRange range = advice.ranges().stream()
                .filter(each -> each.input().equals("price"))
                .findFirst()
                .orElseThrow();
        assertThat(range.holdsFrom()).isCloseTo(4.20, within(1e-3));
        double z = StandardNormal.quantile(ALPHA);
        double worst = futures * StandardNormal.below(z - distribution.logSd()) / ALPHA;
        assertThat(dearer.shortfallUsdPerAcre())
                .isCloseTo(210 * worst - 142, within(4 * 210 * distribution.sd() / Math.sqrt(ALPHA * draws)));
    }

    @ParameterizedTest(name = "{0} pairs are worth {1} $/ac")
    @CsvSource({"1, 1.612", "4, 3.491", "8, 4.318", "16, 4.913"})
    @DisplayName("worth of a sample, prior μ 5 σ 20, spread 40 (reference 2.7, computed)")
    void sample(int size, double worth) {
        // Pressure normal: each unit costs 1 % of 100 bu at $4, and the treatment that ends it costs 4·m − 5.
        double mean = 12;
        FieldAdvice advice = new OneField()
                .assumptions(PRICE, 100)
                .seed("Plain", 100, 0, NONE)
                .insecticide("Ender", (4 * mean - 5) / 6)
                .control("Ender", "beetle", 6, new Distribution.Fixed(1))
                .insect(
                        "beetle",
                        new Distribution.Normal(mean, 5 / mean),
                        new Distribution.Fixed(1),
                        new ScoutingSample(size, 10, 100))
                .program("none", true, plant("Plain"), harvest(2))
                .program("treated", false, plant("Plain"), OneField.spray(2, "Ender", 6), harvest(3))
                .weigh(100_000);
        assertThat(advice.samples().get(0).usdPerAcre()).isCloseTo(worth, within(0.08));
        assertThat(advice.samples().get(0).netUsdField())
                .isCloseTo(advice.samples().get(0).usdPerAcre() * 100 - 100, within(1e-9));
    }
}
