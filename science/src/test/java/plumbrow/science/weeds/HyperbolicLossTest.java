package plumbrow.science.weeds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Yield lost to weeds, against values from outside")
class HyperbolicLossTest {

    @ParameterizedTest(name = "I {0}, A {1}, D {2}")
    @CsvSource({
        "3.2, 56, 1, 3.0270",
        "3.2, 56, 10, 20.3636",
        "3.2, 56, 50, 41.4815",
        "136, 90, .17, 18.3946",
        "136, 90, .69, 45.9399",
        "136, 90, 1.38, 60.8297"
    })
    @DisplayName("1a volunteer soybean in corn (Alms 2016), 1c giant ragweed in corn (Harrison 2001), computed")
    void oneSpecies(double perPlant, double highest, double plants, String loss) {
        assertPrinted(HyperbolicLoss.lossPct(plants, perPlant, highest), loss);
    }

    @Test
    @DisplayName("1b ten percent loss at 3.8043 volunteer soybeans/m²; the paper says 3 to 4")
    void inverse() {
        double plants = HyperbolicLoss.densityForLossPct(10, 3.2, 56);
        assertPrinted(plants, "3.8043");
        assertThat(plants).isBetween(3.0, 4.0);
        assertThat(HyperbolicLoss.densityForLossPct(56, 3.2, 56)).isInfinite();
    }

    @ParameterizedTest(name = "D {2}, c {3}, T {4}")
    @CsvSource({
        "4, 60, 5, .03, 0, 15.0000",
        "4, 60, 5, .03, 10, 11.8822",
        "4, 60, 5, .03, -5, 16.7498",
        "136, 90, .1, .0932168, 28, .9890",
        "136, 90, .69, .0932168, 0, 45.9399",
        "136, 90, .69, .0932168, 14, 19.8373",
        "136, 90, .69, .0932168, 28, 6.4087"
    })
    @DisplayName("1d to 1f weeds that come later than the crop, computed")
    void late(double perPlant, double highest, double plants, double perDay, double days, String loss) {
        assertPrinted(HyperbolicLoss.ofLoad(HyperbolicLoss.load(plants, perPlant, perDay, days), highest), loss);
    }

    @Test
    @DisplayName("1g three species together, computed")
    void mixed() {
        double[] plants = {1, 2, 10};
        double[] perPlant = {6, 3.2, .5};
        assertPrinted(HyperbolicLoss.mixedLossPct(plants, perPlant, 65), "13.7257");
    }

    @Test
    @DisplayName("1.1 nothing at no weeds, slope I at the first, A/2 at A/I, never A")
    void properties() {
        assertThat(HyperbolicLoss.lossPct(0, 3.2, 56)).isZero();
        assertThat(HyperbolicLoss.lossPct(1e-9, 3.2, 56) / 1e-9).isCloseTo(3.2, within(1e-6));
        assertThat(HyperbolicLoss.lossPct(56 / 3.2, 3.2, 56)).isCloseTo(28, within(1e-12));
        assertThat(HyperbolicLoss.lossPct(1e300, 150, 56)).isFinite().isLessThanOrEqualTo(56);
    }
}
