package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OddsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0 of 100",
        "0.001, fewer than 1 of 100",
        "0.03, 3 of 100",
        "0.08, 8 of 100",
        "0.5, 50 of 100",
        "0.74, 74 of 100",
        "0.9949, 99 of 100",
        "0.9951, more than 99 of 100",
        "1, 100 of 100"
    })
    void words(double chance, String words) {
        assertThat(Odds.words(chance)).isEqualTo(words);
    }

    @Test
    void refusesWhatIsNoChance() {
        assertThatThrownBy(() -> Odds.words(1.2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Odds.words(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
