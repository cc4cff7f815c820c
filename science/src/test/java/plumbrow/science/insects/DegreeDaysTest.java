package plumbrow.science.insects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Degree days, against values from outside")
class DegreeDaysTest {

    @ParameterizedTest(name = "{0} to {1} °F")
    @CsvSource({
        "48, 90, 19.0, 18.0, 18.86, 18.66",
        "45, 70, 7.5, 10.0, 8.00, 8.47",
        "40, 60, 0.0, 5.0, 2.50, 3.18",
        "60, 95, 27.5, 23.0, 26.34, 25.51",
        "55, 80, 17.5, 17.5, 17.50, 17.50",
        "38, 55, 0.0, 2.5, 0.74, 1.19",
        "30, 48, 0.0, 0.0, 0.00, 0.00"
    })
    @DisplayName("8.1 simple 50, modified, triangle and sine 50/86 (computed)")
    void fahrenheit(double min, double max, String simple, String modified, String triangle, String sine) {
        assertPrinted(DegreeDays.average(min, max, 50), simple);
        assertPrinted(DegreeDays.of("average", min, max, 50, 86), simple);
        assertPrinted(DegreeDays.modified(min, max, 50, 86), modified);
        assertPrinted(DegreeDays.of("triangle", min, max, 50, 86), triangle);
        assertPrinted(DegreeDays.of("sine", min, max, 50, 86), sine);
    }

    @ParameterizedTest(name = "{0} to {1} °C → {2}")
    @CsvSource({"7, 14, .47", "7, 10, .00", "13, 14, 1.5", "13, 40, 12.94", "7, 40, 10.94", "7, 20, 2.87"})
    @DisplayName("8.1 single sine 12/33 °C, CRAN package TrenchR test file (verified)")
    void trenchSine(double min, double max, String expected) {
        assertPrinted(DegreeDays.of("sine", min, max, 12, 33), expected);
    }

    @Test
    @DisplayName("8.1 single triangle 12/33 °C for 7 to 14 is .29, TrenchR (verified)")
    void trenchTriangle() {
        assertPrinted(DegreeDays.of("triangle", 7, 14, 12, 33), ".29");
    }

    @Test
    @DisplayName(
            "8.1 a day of 35 to 40 °C under a horizontal cutoff is 21; TrenchR's own single-sine test says 5, its double sine 21")
    void hotDay() {
        assertThat(DegreeDays.of("sine", 35, 40, 12, 33)).isCloseTo(21, within(1e-9));
    }

    @Test
    @DisplayName("8.1 90/55 °F by the corn rule is 20.5, not the 17.5 that farmprogress.com prints")
    void printedMistake() {
        assertThat(DegreeDays.modified(55, 90, 50, 86)).isEqualTo(20.5);
    }

    @Test
    @DisplayName("8.1 six days: totals by triangle from .74 to 80.2, by sine from 1.19 to 80.9 (computed)")
    void sixDays() {
        double[] mins = {38, 41, 45, 52, 60, 66};
        double[] maxs = {55, 62, 70, 78, 88, 95};
        double triangle = 0;
        double sine = 0;
        for (int i = 0; i < mins.length; i++) {
            triangle += DegreeDays.of("triangle", mins[i], maxs[i], 50, 86);
            sine += DegreeDays.of("sine", mins[i], maxs[i], 50, 86);
            if (i == 0) {
                assertPrinted(triangle, ".74");
                assertPrinted(sine, "1.19");
            }
        }
        assertPrinted(triangle, "80.2");
        assertPrinted(sine, "80.9");
    }

    @Test
    @DisplayName(
            "Never below 0, never above the span of base and cutoff, warmer is never less; a flat day is a rectangle")
    void properties() {
        SplittableRandom random = new SplittableRandom(81);
        for (String method : new String[] {"average", "modified", "triangle", "sine"}) {
            for (int i = 0; i < 2000; i++) {
                double min = random.nextDouble(-10, 100);
                double max = min + random.nextDouble(0, 45);
                double value = DegreeDays.of(method, min, max, 50, 86);
                assertThat(value).isBetween(-1e-9, 36 + 1e-9);
                assertThat(DegreeDays.of(method, min + 1, max + 1, 50, 86)).isGreaterThanOrEqualTo(value - 1e-9);
                double flat = DegreeDays.of(method, min, min, 50, 86);
                assertThat(flat).isCloseTo(Math.min(Math.max(min - 50, 0), 36), within(1e-9));
            }
        }
    }

    @Test
    @DisplayName("Degrees don't matter: °C times 9/5 is °F")
    void unitInvariance() {
        SplittableRandom random = new SplittableRandom(82);
        for (int i = 0; i < 500; i++) {
            double min = random.nextDouble(-5, 30);
            double max = min + random.nextDouble(0, 20);
            for (String method : new String[] {"average", "modified", "triangle", "sine"}) {
                double celsius = DegreeDays.of(method, min, max, 10, 30);
                double fahrenheit = DegreeDays.of(method, min * 1.8 + 32, max * 1.8 + 32, 50, 86);
                assertThat(fahrenheit).isCloseTo(celsius * 1.8, within(1e-9));
            }
        }
    }

    @Test
    @DisplayName("A lowest above the highest, and a cutoff below the base, are refused")
    void refused() {
        refused(Map.of("method", "sine", "tmin_f", "90", "tmax_f", "60", "lower_f", "50"), "tmin_f");
        refused(Map.of("method", "sine", "tmin_f", "50", "tmax_f", "60", "lower_f", "50", "upper_f", "40"), "upper_f");
    }

    private static void refused(Map<String, String> typed, String key) {
        assertThatThrownBy(() -> DegreeDays.FIGURE.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith(key);
    }
}
