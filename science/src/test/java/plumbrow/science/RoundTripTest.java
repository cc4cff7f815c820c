package plumbrow.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;

@DisplayName("One amount in two units, and there and back by two figures, is one amount")
class RoundTripTest {
    private static final double SAME = 1e-9;

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "133.322368, Pa",
        "0.133322368, kPa",
        "1.33322368, hPa",
        "133322.368, mPa",
        "1.33322368, mbar",
        "1, torr",
        "1, mmHg",
        "0.00131578948, atm"
    })
    @DisplayName("One millimetre of mercury, however it is printed")
    void vapourPressure(String value, String unit) {
        assertThat(number("vapour-pressure", "mmhg", "value", value, "unit", unit))
                .isCloseTo(1, within(1e-5));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"32, fl-oz", "2, pt", "1, qt", "0.25, gal"})
    @DisplayName("A quart an acre in the jar")
    void jarByVolume(String rate, String unit) {
        assertThat(jar(rate, unit)).isCloseTo(jar("1", "qt"), within(1e-6));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"16, oz", "1, lb"})
    @DisplayName("A pound an acre in the jar")
    void jarByWeight(String rate, String unit) {
        assertThat(jar(rate, unit)).isCloseTo(jar("1", "lb"), within(1e-6));
    }

    @Test
    @DisplayName("One weed stand, counted on a square metre, a square foot, an acre, a metre and 100 feet of row")
    void weedDensity() {
        SplittableRandom random = new SplittableRandom(41);
        for (int i = 0; i < 200; i++) {
            double density = random.nextDouble(.01, 500);
            double rowInches = random.nextDouble(7, 40);
            double rowMetres = rowInches * 0.0254;
            String spacing = Double.toString(rowInches);
            assertStand(density, density * 0.3048 * 0.3048, "ft2", spacing);
            assertStand(density, density * 4046.8564224, "acre", spacing);
            assertStand(density, density * rowMetres, "metre-of-row", spacing);
            assertStand(density, density * rowMetres * 30.48, "100-ft-of-row", spacing);
        }
    }

    @Test
    @DisplayName("Density to loss and loss to density")
    void weedLoss() {
        SplittableRandom random = new SplittableRandom(42);
        for (int i = 0; i < 200; i++) {
            String perPlant = Double.toString(random.nextDouble(.1, 140));
            String highest = Double.toString(random.nextDouble(20, 99));
            double density = random.nextDouble(.01, 50);
            double loss = number(
                    "weed-loss",
                    "loss_pct",
                    "density_m2",
                    Double.toString(density),
                    "i_pct",
                    perPlant,
                    "a_pct",
                    highest);
            double back = number(
                    "weed-density-for-loss",
                    "density_m2",
                    "loss_pct",
                    Double.toString(loss),
                    "i_pct",
                    perPlant,
                    "a_pct",
                    highest);
            assertThat(back).isCloseTo(density, within(1e-6 * density));
        }
    }

    @Test
    @DisplayName("Ounces along the row to pounds an acre and back")
    void granules() {
        SplittableRandom random = new SplittableRandom(43);
        for (int i = 0; i < 200; i++) {
            String spacing = Double.toString(random.nextDouble(7, 40));
            double ounces = random.nextDouble(.1, 20);
            double pounds = number(
                    "row-granules", "lb_ac", "oz_per_1000_row_ft", Double.toString(ounces), "row_spacing_in", spacing);
            assertThat(number(
                            "granules-per-row",
                            "oz_per_1000_row_ft",
                            "lb_ac",
                            Double.toString(pounds),
                            "row_spacing_in",
                            spacing))
                    .isCloseTo(ounces, within(SAME * ounces));
        }
    }

    @Test
    @DisplayName("Flow to volume to speed and back to the flow")
    void sprayer() {
        SplittableRandom random = new SplittableRandom(44);
        for (int i = 0; i < 200; i++) {
            String speed = Double.toString(random.nextDouble(3, 18));
            String spacing = Double.toString(random.nextDouble(10, 40));
            double flow = random.nextDouble(.1, 2);
            double volume =
                    number("spray-volume", "gpa", "gpm", Double.toString(flow), "mph", speed, "spacing_in", spacing);
            assertThat(number(
                            "nozzle-flow", "gpm", "gpa", Double.toString(volume), "mph", speed, "spacing_in", spacing))
                    .isCloseTo(flow, within(SAME));
        }
    }

    @Test
    @DisplayName("Koc to Kd and back; humidity to dew point and back")
    void soilAndAir() {
        SplittableRandom random = new SplittableRandom(45);
        for (int i = 0; i < 200; i++) {
            double koc = random.nextDouble(1, 10_000);
            String matter = Double.toString(random.nextDouble(.5, 8));
            double kd = number("koc-to-kd", "kd_ml_g", "koc_ml_g", Double.toString(koc), "organic_matter_pct", matter);
            assertThat(number("kd-to-koc", "koc_ml_g", "kd_ml_g", Double.toString(kd), "organic_matter_pct", matter))
                    .isCloseTo(koc, within(SAME * koc));
            String warmth = Double.toString(random.nextDouble(0, 40));
            double humidity = random.nextDouble(10, 99);
            double dew = number(
                    "dew-point", "dew_point_c", "temperature_c", warmth, "humidity_pct", Double.toString(humidity));
            assertThat(number("humidity", "humidity_pct", "temperature_c", warmth, "dew_point_c", Double.toString(dew)))
                    .isCloseTo(humidity, within(1e-6));
        }
    }

    @Test
    @DisplayName("The dose of an effect has that effect; the half dose gives the control it was taken from")
    void doses() {
        SplittableRandom random = new SplittableRandom(46);
        for (int i = 0; i < 200; i++) {
            String half = Double.toString(random.nextDouble(1, 900));
            String slope = Double.toString(random.nextDouble(.8, 5));
            double effect = random.nextDouble(5, 95);
            double dose = number(
                    "effective-dose", "dose", "ed50_e", half, "slope_b", slope, "effect_pct", Double.toString(effect));
            assertThat(number(
                            "herbicide-dose",
                            "control_pct",
                            "rate",
                            Double.toString(dose),
                            "ed50",
                            half,
                            "slope",
                            slope))
                    .isCloseTo(effect, within(1e-7));
            assertThat(number(
                            "half-dose",
                            "ed50",
                            "rate",
                            Double.toString(dose),
                            "control_pct",
                            Double.toString(effect),
                            "slope",
                            slope))
                    .isCloseTo(Double.parseDouble(half), within(1e-6 * Double.parseDouble(half)));
        }
    }

    private static void assertStand(double density, double count, String per, String spacing) {
        assertThat(number(
                        "weed-density",
                        "density_m2",
                        "count",
                        Double.toString(count),
                        "per",
                        per,
                        "row_spacing_in",
                        spacing))
                .isCloseTo(density, within(SAME * density));
    }

    private static double jar(String rate, String unit) {
        Answer answer = Figures.find("jar-test").orElseThrow().answer(Map.of("rate", rate, "unit", unit, "gpa", "15"));
        return answer.outputs().values().stream()
                .filter(Double.class::isInstance)
                .mapToDouble(value -> (Double) value)
                .findFirst()
                .orElseThrow();
    }

    private static double number(String id, String output, String... keysAndValues) {
        Map<String, String> typed = new HashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            typed.put(keysAndValues[i], keysAndValues[i + 1]);
        }
        return Figures.find(id).orElseThrow().answer(typed).number(output);
    }
}
