package plumbrow.science.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Many draws at once, against the reference library's own quantile search")
class StrataTest {
    @ParameterizedTest(name = "beta {0}, {1}")
    @CsvSource({"1.8, 4.2", "3, 3", "1, 5", "5, 1", "1, 1", "6.28, 2.4422", "0.6, 0.7", "120, 40", "2, 900"})
    void beta(double alpha, double beta) {
        int count = 1_000;
        FourParameterBeta distribution = new FourParameterBeta(0, 1, alpha, beta);
        double[] strata = distribution.strata(count);
        for (int i = 0; i < count; i++) {
            assertThat(strata[i]).isCloseTo(distribution.quantile((i + 0.5) / count), within(1e-6));
            assertThat(i == 0 || strata[i] >= strata[i - 1]).isTrue();
        }
    }

    @ParameterizedTest(name = "pert {0}, {1}, {2}")
    @CsvSource({"90, 160, 200", "10, 15, 35", "0, 0, 30", "0, 30, 30", "0.999, 0.9995, 1"})
    void pert(double low, double likely, double high) {
        PertDistribution distribution = new PertDistribution(low, likely, high);
        double[] strata = distribution.strata(10_000);
        double sum = 0;
        for (double value : strata) {
            assertThat(value).isBetween(low, high);
            sum += value;
        }
        assertThat(sum / strata.length).isCloseTo(distribution.mean(), within(distribution.sd() * 1e-3));
    }
}
