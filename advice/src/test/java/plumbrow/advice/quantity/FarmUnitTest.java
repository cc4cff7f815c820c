package plumbrow.advice.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Source of the factors: NIST Handbook 44, appendix C (US gallon 231 in³ = 3.785411784 L; pound 453.59237 g). */
class FarmUnitTest {
    @ParameterizedTest(name = "1 {0} = {1} of the base unit")
    @CsvSource({
        "fl oz, 0.0078125", "pt, 0.125", "qt, 0.25", "gal, 1", "L, 0.26417205235814845", "mL, 0.00026417205235814845",
        "oz, 0.0625", "lb, 1", "g, 0.0022046226218487757", "kg, 2.2046226218487757", "bag, 1", "1000 seeds, 1000"
    })
    @DisplayName("factors to gallons and pounds")
    void factors(String written, double factor) {
        assertThat(FarmUnit.parse(written).orElseThrow().inBase()).isCloseTo(factor, within(factor * 1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Fl Oz", " fl  oz ", "FLOZ", "Quarts", "lbs", "Bags", "KERNELS"})
    void readAsWritten(String written) {
        assertThat(FarmUnit.parse(written)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ounce fluid", "acre", "ppm", "fl"})
    void refusesOthers(String written) {
        assertThat(FarmUnit.parse(written)).isEmpty();
    }

    @Test
    void ounceIsNotFluidOunce() {
        assertThatThrownBy(() -> new Amount(12, FarmUnit.OZ).in(FarmUnit.FL_OZ))
                .hasMessage("oz is a weight, fl oz is a liquid volume");
    }

    @Test
    @DisplayName("1 ha = 2.4710538 ac (NIST Handbook 44)")
    void hectare() {
        assertThat(Amount.ACRES_PER_HECTARE).isCloseTo(2.4710538, within(5e-8));
    }
}
