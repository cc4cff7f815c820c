package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Typical values by state, held against published figures and arithmetic by hand. */
class TypicalValuesTest {
    private static TypicalValue value(String crop, String state, String quantity) {
        return TypicalValues.find(crop, state, quantity).orElseThrow();
    }

    /** Mean of 2017 to 2021 and seven years of trend: 197.0 + 7 · 2.18 = 212.26. NASS county yields; trend of the NASS state series. */
    @Test
    void levelOfAState() {
        TypicalValue level = value("corn", "IL", "planning yield level, crop 2026");
        assertThat(level.likely())
                .isCloseTo(
                        value("corn", "IL", "state mean yield").likely()
                                + 7 * value("corn", "IL", "yield trend").likely(),
                        within(0.05));
        assertThat(level.words()).startsWith(TypicalValue.MARK).contains("IL");
    }

    /** Layers add in squares: Kansas √(.108² + .180² + .12²) = .2418. */
    @Test
    void spreadOfAField() {
        assertThat(value("corn", "KS", "field yield CV").likely())
                .isCloseTo(Math.sqrt(.108 * .108 + .180 * .180 + .12 * .12), within(5e-4));
    }

    /** A field's spread is never below that of its state, for any state that is kept. */
    @Test
    void fieldsDifferMoreThanStates() {
        assertThat(TypicalValues.states())
                .hasSize(13)
                .allSatisfy(state -> assertThat(
                                value("corn", state, "field yield CV").likely())
                        .isGreaterThan(value("corn", state, "state yield CV about trend")
                                .likely()));
    }

    /** A state that is not kept gets no other state's figure without saying so, and a wider one. */
    @Test
    void missingStateIsSaid() {
        TypicalValue texas = value("corn", "TX", "field yield CV");
        assertThat(texas.words()).contains("the middle of 13 states, as this one is not kept");
        assertThat(texas.low().orElseThrow())
                .isLessThan(value("corn", "KS", "field yield CV").low().orElseThrow());
        assertThat(texas.high().orElseThrow())
                .isGreaterThan(value("corn", "IA", "field yield CV").high().orElseThrow());
    }

    @Test
    void ofSeveralYearsTheLatest() {
        assertThat(value("corn", "IA", "projected price").likely()).isEqualTo(4.70);
        assertThat(value("soybean", "MN", "projected price").likely()).isEqualTo(10.54);
    }

    @Test
    void whatNobodyKeepsIsEmpty() {
        assertThat(TypicalValues.find("corn", "IA", "no such quantity")).isEmpty();
    }

    /** Urbana's plain means of 1991 to 2020 lie within 3 °F of the state's in July (statewide files run 1990 to 2019). */
    @Test
    void climateOfAState() {
        assertThat(value("corn", "IL", "climate mean Jul").likely()).isCloseTo(75.1, within(3.0));
        assertThat(value("corn", "IL", "climate rain May").likely()).isCloseTo(4.78, within(0.6));
    }
}
