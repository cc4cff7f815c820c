package plumbrow.advice.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OddsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0 of 10",
        "0.001, fewer than 1 of 100",
        "0.03, 3 of 100",
        "0.08, 1 of 10",
        "0.5, 5 of 10",
        "0.74, 7 of 10",
        "0.92, 9 of 10",
        "0.97, 97 of 100",
        "0.9951, more than 99 of 100",
        "1, 10 of 10"
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
