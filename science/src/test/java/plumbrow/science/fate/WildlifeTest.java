package plumbrow.science.fate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plumbrow.science.Printed.assertPrinted;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Food, birds, mammals and bees, against values from outside")
class WildlifeTest {

    @ParameterizedTest(name = "{0} × {1} d at {2} d: {3}")
    @CsvSource({"2, 14, 35, 1.757858", "3, 7, 35, 2.628409", "1, 7, 35, 1"})
    @DisplayName("5.1 residue piles up over applications (computed)")
    void pileUp(double applications, double interval, double halfLife, String factor) {
        assertPrinted(FoodResidue.pileUp(applications, interval, halfLife), factor);
    }

    @Test
    @DisplayName("5.1 more than one application needs the interval")
    void interval() {
        assertThatThrownBy(() -> FoodResidue.FIGURE.answer(Map.of("rate_lb_ac", "1", "applications", "2")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith("interval_d");
        assertThatThrownBy(() -> FoodResidue.FIGURE.answer(Map.of("rate_lb_ac", "1", "applications", "1.5")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("whole number");
    }

    @Test
    @DisplayName("5.3 water has other levels than land; a level is reached at its value")
    void levels() {
        assertThat(LevelOfConcern.reached(.2, "bird", "acute")).containsExactly("restricted-use", "listed-species");
        assertThat(LevelOfConcern.reached(.2, "fish", "acute")).containsExactly("restricted-use", "listed-species");
        assertThat(LevelOfConcern.reached(.15, "bird", "acute")).containsExactly("listed-species");
        assertThat(LevelOfConcern.reached(.15, "invertebrate", "acute"))
                .containsExactly("restricted-use", "listed-species");
        assertThat(LevelOfConcern.reached(.3 / 3, "mammal", "acute")).containsExactly("listed-species");
        assertThat(LevelOfConcern.reached(.99, "bird", "chronic")).isEmpty();
        assertThat(LevelOfConcern.reached(1, "bee", "chronic")).containsExactly("chronic");
    }

    @Test
    @DisplayName("5.3 a toxicity known only as more than a value gives an upper bound, said in words")
    void upperBound() {
        assertThat(RiskQuotient.FIGURE
                        .answer(Map.of("exposure", "1", "toxicity", "5", "group", "bird", "toxicity_is", "more-than"))
                        .cautions())
                .anyMatch(caution -> caution.contains("at most this"));
    }

    @Test
    @DisplayName("6 110 ppm at 0.292 and 0.124 g a day stand behind the printed 32 and 13.6")
    void beeChain() {
        assertThat(Food.TALL_GRASS.upperPpm() * .292).isBetween(32.0, 32.2);
        assertThat(Food.TALL_GRASS.upperPpm() * .124).isBetween(13.6, 13.7);
    }
}
