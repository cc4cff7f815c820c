package plumbrow.science.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Distributions of chance, against values from outside")
class DistributionTest {

    @ParameterizedTest(name = "price {0}, volatility {1}, {2} years")
    @CsvSource({
        "4.50, .25, .5, .17678, 3.5321, 4.4302, 5.5567, .8018",
        "11.00, .18, .8, .16100, 8.8340, 10.8584, 13.3466, 1.7825",
        "6.00, .32, .25, .16000, 4.8255, 5.9237, 7.2718, .9662"
    })
    @DisplayName("2.1 futures price at harvest")
    void price(
            double futures,
            double volatility,
            double years,
            String logSd,
            String tenth,
            String median,
            String ninetieth,
            String sd) {
        LognormalDistribution distribution = LognormalDistribution.ofPrice(futures, volatility, years);
        assertPrinted(distribution.logSd(), logSd);
        assertPrinted(distribution.quantile(.1), tenth);
        assertPrinted(distribution.quantile(.5), median);
        assertPrinted(distribution.quantile(.9), ninetieth);
        assertPrinted(distribution.sd(), sd);
        assertThat(distribution.mean()).isEqualTo(futures);
    }

    @Test
    @DisplayName("2.1 price 4.50, .25, half a year: chance above 4.20, shortfall, mean below, 5 % quantile")
    void priceBelowStrike() {
        LognormalDistribution distribution = LognormalDistribution.ofPrice(4.50, .25, .5);
        assertPrinted(distribution.chanceAbove(4.20), ".61863");
        assertPrinted(distribution.shortfallBelow(4.20), ".17935");
        assertPrinted(distribution.meanBelow(4.20), "3.7297");
        assertPrinted(distribution.quantile(.05), "3.3124");
    }

    @Test
    @DisplayName("2.1 limit: without volatility or time the price is the futures price")
    void priceWithoutTime() {
        LognormalDistribution distribution = LognormalDistribution.ofPrice(4.50, .25, 0);
        assertThat(distribution.quantile(.01)).isEqualTo(4.50);
        assertThat(distribution.chanceAbove(4.49)).isEqualTo(1);
        assertThat(distribution.chanceAbove(4.51)).isZero();
        assertThat(distribution.shortfallBelow(4.60)).isCloseTo(.10, within(1e-12));
    }

    @ParameterizedTest(name = "beta, mean {0}, CV {1}, {2} to {3}")
    @CsvSource({
        "180, .20, 0, 250, 6.2800, 2.4422, 129.96, 184.35, 223.76, -.570",
        "50, .18, 0, 75, 9.6214, 4.8107, 37.870, 50.592, 61.314, -.338",
        "55, .30, 0, 110, 5.0556, 5.0556, 33.222, 55.000, 76.778, 0.000"
    })
    @DisplayName("2.2 beta yield")
    void beta(
            double mean,
            double cv,
            double low,
            double high,
            String alpha,
            String beta,
            String tenth,
            String median,
            String ninetieth,
            String skew) {
        FourParameterBeta distribution = FourParameterBeta.ofMeanAndCv(mean, cv, low, high);
        assertPrinted(distribution.alpha(), alpha);
        assertPrinted(distribution.beta(), beta);
        assertPrinted(distribution.quantile(.1), tenth);
        assertPrinted(distribution.quantile(.5), median);
        assertPrinted(distribution.quantile(.9), ninetieth);
        assertPrinted(distribution.skew(), skew);
        assertThat(distribution.mean()).isCloseTo(mean, within(1e-9));
        assertThat(distribution.sd()).isCloseTo(cv * mean, within(1e-9));
    }

    @ParameterizedTest(name = "Weibull, mean {0}, CV {1}")
    @CsvSource({
        "180, .20, 5.7974, 194.396, 131.858, 182.486, 224.474, -.352",
        "50, .25, 4.5422, 54.760, 33.366, 50.515, 65.798, -.185",
        "55, .35, 3.1288, 61.474, 29.945, 54.678, 80.252, .128"
    })
    @DisplayName("2.2 Weibull yield")
    void weibull(
            double mean,
            double cv,
            String shape,
            String scale,
            String tenth,
            String median,
            String ninetieth,
            String skew) {
        WeibullDistribution distribution = WeibullDistribution.ofMeanAndCv(mean, cv);
        assertPrinted(distribution.shape(), shape);
        assertPrinted(distribution.scale(), scale);
        assertPrinted(distribution.quantile(.1), tenth);
        assertPrinted(distribution.quantile(.5), median);
        assertPrinted(distribution.quantile(.9), ninetieth);
        assertPrinted(distribution.skew(), skew);
        assertThat(distribution.mean()).isCloseTo(mean, within(1e-8));
        assertThat(distribution.sd()).isCloseTo(cv * mean, within(1e-6));
    }

    @ParameterizedTest(name = "PERT {0}, {1}, {2}")
    @CsvSource({
        "90, 160, 200, 155, 20.442, 126.80, 156.18, 181.42, 3.5455, 2.4545",
        "10, 15, 35, 17.5, 4.3301, 12.248, 16.917, 23.633, 1.8, 4.2",
        "0, 15, 30, 15, 5.6695, 7.399, 15, 22.601, 3, 3"
    })
    @DisplayName("2.3 PERT")
    void pert(
            double low,
            double likely,
            double high,
            double mean,
            String sd,
            String tenth,
            String median,
            String ninetieth,
            String alpha,
            String beta) {
        PertDistribution distribution = new PertDistribution(low, likely, high);
        assertThat(distribution.mean()).isCloseTo(mean, within(1e-12));
        assertPrinted(distribution.sd(), sd);
        assertPrinted(distribution.quantile(.1), tenth);
        assertPrinted(distribution.quantile(.5), median);
        assertPrinted(distribution.quantile(.9), ninetieth);
        assertPrinted(distribution.alpha(), alpha);
        assertPrinted(distribution.beta(), beta);
    }

    @ParameterizedTest(name = "triangle {0}, {1}, {2}")
    @CsvSource({
        "90, 160, 200, 150, 22.730, 117.75, 152.05, 179.02",
        "10, 15, 35, 20, 5.4006, 13.536, 19.189, 27.928",
        "0, 15, 30, 15, 6.1237, 6.708, 15, 23.292"
    })
    @DisplayName("2.3 triangular")
    void triangular(
            double low,
            double likely,
            double high,
            double mean,
            String sd,
            String tenth,
            String median,
            String ninetieth) {
        TriangularDistribution distribution = new TriangularDistribution(low, likely, high);
        assertThat(distribution.mean()).isCloseTo(mean, within(1e-12));
        assertPrinted(distribution.sd(), sd);
        assertPrinted(distribution.quantile(.1), tenth);
        assertPrinted(distribution.quantile(.5), median);
        assertPrinted(distribution.quantile(.9), ninetieth);
    }

    @Test
    @DisplayName("The fast beta quantile is the library's own to 1e-9, over many shapes and chances")
    void fastBetaQuantile() {
        SplittableRandom random = new SplittableRandom(20260301);
        for (int shape = 0; shape < 60; shape++) {
            double alpha = Math.exp(random.nextDouble(-2, 5));
            double beta = Math.exp(random.nextDouble(-2, 5));
            BetaDistribution exact = BetaDistribution.of(alpha, beta);
            FourParameterBeta fast = new FourParameterBeta(0, 1, alpha, beta);
            for (int i = 0; i < 50; i++) {
                double chance = random.nextDouble();
                assertThat(fast.quantile(chance))
                        .as("beta(%s, %s) at %s", alpha, beta, chance)
                        .isCloseTo(exact.inverseCumulativeProbability(chance), within(1e-9));
            }
        }
    }

    static Stream<Distribution> distributions() {
        return Stream.of(
                new NormalDistribution(10, 3),
                new LognormalDistribution(4.5, .2),
                new TriangularDistribution(90, 160, 200),
                new TriangularDistribution(0, 0, 5),
                new TriangularDistribution(0, 5, 5),
                new PertDistribution(90, 160, 200),
                new PertDistribution(0, 0, 3),
                new PertDistribution(0, 3, 3),
                FourParameterBeta.ofMeanAndCv(180, .2, 0, 250),
                new FourParameterBeta(0, 1, .5, .5),
                WeibullDistribution.ofMeanAndCv(180, .2),
                new EmpiricalDistribution(3, 1, 2, 8, 5));
    }

    @ParameterizedTest
    @MethodSource("distributions")
    @DisplayName("A quantile never falls as the chance rises, and is a number")
    void quantileRises(Distribution distribution) {
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < 2000; i++) {
            double value = distribution.quantile(i / 2000.0);
            assertThat(value).isFinite().isGreaterThanOrEqualTo(before - 1e-12);
            before = value;
        }
    }

    @ParameterizedTest
    @MethodSource("distributions")
    @DisplayName("The mean and spread of evenly spaced quantiles are those of the distribution")
    void quantilesCarryMeanAndSpread(Distribution distribution) {
        if (distribution instanceof EmpiricalDistribution) {
            return; // straight lines between few values have a spread of their own
        }
        int n = 20_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double value = distribution.quantile((i + .5) / n);
            sum += value;
            squares += value * value;
        }
        double mean = sum / n;
        assertThat(mean).isCloseTo(distribution.mean(), within(1e-3 * distribution.sd()));
        assertThat(Math.sqrt(squares / n - mean * mean)).isCloseTo(distribution.sd(), within(2e-3 * distribution.sd()));
    }

    @Test
    @DisplayName("Numbers that make no distribution are refused")
    void refused() {
        assertThatThrownBy(() -> new PertDistribution(5, 4, 6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new TriangularDistribution(5, 5, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LognormalDistribution(0, .2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FourParameterBeta.ofMeanAndCv(50, 3, 0, 100))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WeibullDistribution.ofMeanAndCv(50, 9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(EmpiricalDistribution::new).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new NormalDistribution(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
