package plumbrow.advice.ratemap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/** Steps of the data dictionary of ISO 11783-11, computed apart from this code. */
class MeteringTest {
    @ParameterizedTest
    @CsvSource({
        "VOLUME, 15, GAL, 1403093",
        "VOLUME, 32, FL_OZ, 23385",
        "VOLUME, 40.468564224, L, 1000000",
        "MASS, 6.5, LB, 729",
        "COUNT, 32000, SEEDS, 7907"
    })
    void steps(Metering metering, double value, FarmUnit unit, long steps) {
        Amount rate = new Amount(value, unit);
        assertThat(Math.round(metering.steps(rate))).isEqualTo(steps);
        assertThat(metering.perAcre(metering.steps(rate)).in(unit).value()).isCloseTo(value, within(value * 1e-12));
    }
}
