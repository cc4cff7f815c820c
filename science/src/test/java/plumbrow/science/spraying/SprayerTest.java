package plumbrow.science.spraying;

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
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Sprayer, tank and rows, against values from outside")
class SprayerTest {

    @Test
    @DisplayName("1.1 volume, flow and speed undo each other; twice the speed is half the volume")
    void boomFlow() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 300; i++) {
            double flow = random.nextDouble(.05, 2);
            double speed = random.nextDouble(2, 20);
            double width = random.nextDouble(10, 40);
            double volume = BoomFlow.gpa(flow, speed, width);
            assertThat(BoomFlow.gpm(volume, speed, width)).isCloseTo(flow, within(1e-12));
            assertThat(BoomFlow.mph(flow, volume, width)).isCloseTo(speed, within(1e-12));
            assertThat(BoomFlow.gpa(flow, 2 * speed, width)).isCloseTo(volume / 2, within(1e-12));
        }
    }

    @Test
    @DisplayName("1.1 the 88 gal/ac that Oklahoma State prints for 0.79 gal/min, 3 mph, 18 in is a misprint: 86.9")
    void printedMistake() {
        assertPrinted(BoomFlow.gpa(.79, 3, 18), "86.9");
    }

    @ParameterizedTest(name = "{0} lb/gal: {1}")
    @CsvSource({
        "6.6, .89",
        "7.0, .92",
        "8.0, .98",
        "8.34, 1.00",
        "9.0, 1.04",
        "10.0, 1.10",
        "10.65, 1.13",
        "11.0, 1.15",
        "11.06, 1.15",
        "11.4, 1.17",
        "11.6, 1.18",
        "12.0, 1.20",
        "14.0, 1.30",
        "16.0, 1.39"
    })
    @DisplayName("1.4 conversion factors, University of Nebraska 2016 Table 1; 14 and 16 Sumner, Georgia (verified)")
    void carrierFactor(double density, String factor) {
        assertPrinted(NozzlePressure.carrierFactor(density), factor);
    }

    @Test
    @DisplayName("2.2 four times the pressure doubles the flow")
    void orifice() {
        assertThat(NozzlePressure.waterGpm(160, .4, 40)).isCloseTo(.8, within(1e-12));
        assertThat(NozzlePressure.psi(.8, .4, 40)).isCloseTo(160, within(1e-9));
    }

    @Test
    @DisplayName("2.3 the speed ratio is the root of the pressure ratio; a window upside down is refused")
    void speedWindow() {
        Answer answer = answer(
                SpeedRange.FIGURE,
                Map.of("gpa", "12", "spacing_in", "15", "rated_gpm", ".3", "low_psi", "20", "high_psi", "80"));
        assertThat(answer.number("high_mph") / answer.number("low_mph")).isCloseTo(2, within(1e-12));
        refused(
                SpeedRange.FIGURE,
                Map.of("gpa", "12", "spacing_in", "15", "rated_gpm", ".3", "low_psi", "80", "high_psi", "20"),
                "low_psi");
    }

    @ParameterizedTest(name = "{0} at {1} {2}: {3} and {4}")
    @CsvSource({
        "liquid, 32, acre, 2133.3, 117.3",
        "liquid, 1.33, acre, 88.67, 4.877",
        "dry, 3, acre, 200.0, 11.0",
        "surfactant, .25, percent, 2.50, .1375",
        "ammonium sulfate, 8.5, 100-gal, 85.0, 4.68"
    })
    @DisplayName("3.1 products of 137 ac at 15 gal/ac in 1000 gal: full load and last load, in the unit of the rate")
    void products(String product, String rate, String basis, String full, String last) {
        String acres = Double.toString(1000.0 / 15);
        String lastAcres = Double.toString(137 - 2 * 1000.0 / 15);
        assertPrinted(load(rate, basis, acres, "1000"), full);
        assertPrinted(load(rate, basis, lastAcres, "55"), last);
    }

    @Test
    @DisplayName("3.1 full loads and the last one cover the field, whatever the division rounds")
    void loadsCoverTheField() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 1000; i++) {
            double perLoad = random.nextInt(1, 200) / 3.0;
            double loads = random.nextInt(1, 40);
            assertThat(Loads.fullLoads(loads * perLoad, perLoad)).isEqualTo(loads);
            assertThat(Loads.lastLoadAcres(loads * perLoad, perLoad)).isZero();
            double acres = random.nextDouble(1, 3000);
            double last = Loads.lastLoadAcres(acres, perLoad);
            assertThat(last).isBetween(0.0, perLoad);
            assertThat(Loads.fullLoads(acres, perLoad) * perLoad + last).isCloseTo(acres, within(1e-6));
        }
    }

    @Test
    @DisplayName("3.1 a rate of the spray volume needs the gallons of the load")
    void volumeRate() {
        refused(ProductPerLoad.FIGURE, Map.of("rate", "1", "acres_per_load", "10", "basis", "percent"), "tank_gal");
    }

    @Test
    @DisplayName("3.2 an unknown formulation is refused, and the order does not depend on how it is typed")
    void mixing() {
        refused(MixingOrder.FIGURE, Map.of("formulations", "EC,XYZ"), "formulations");
        assertThat(answer(MixingOrder.FIGURE, Map.of("formulations", "nis, ec ,wp"))
                        .outputs()
                        .get("order"))
                .hasToString("[WP, EC, NIS]");
    }

    @Test
    @DisplayName(
            "1.2 ounces caught over the course are gallons an acre, at any speed (LSU: 40 in, 14 oz, 14 gal/ac; verified)")
    void ouncesAreGallons() {
        for (double speed : new double[] {3, 6, 12}) {
            double minutes = CatchCourse.courseFeet(40) / (speed * 88);
            assertThat(BoomFlow.gpa(14 / NozzleFlow.OUNCES_PER_GALLON / minutes, speed, 40))
                    .isCloseTo(14, within(1e-9));
        }
        assertThat(16 / NozzleFlow.OUNCES_PER_GALLON).isEqualTo(.125);
    }

    @Test
    @DisplayName("1.6 granules per row and per acre undo each other")
    void granules() {
        for (double spacing : new double[] {15, 20, 22, 30, 36, 38, 40}) {
            assertThat(RowGranules.ozPer1000Feet(RowGranules.lbPerAcre(8, spacing), spacing))
                    .isCloseTo(8, within(1e-12));
        }
        assertPrinted(RowGranules.ozPer1000Feet(6, 20), "3.67");
    }

    @Test
    @DisplayName("7.1 the table at its corners, and a date outside it refused")
    void cornTable() {
        assertThat(CornStand.yieldPct(0, 10_000)).isEqualTo(62);
        assertThat(CornStand.yieldPct(60, 36_000)).isEqualTo(65);
        refused(CornStand.FIGURE, Map.of("planted", "2024-06-10", "plants_ac", "20000"), "planted");
        refused(CornStand.FIGURE, Map.of("planted", "May 5", "plants_ac", "20000"), "planted");
    }

    private static double load(String rate, String basis, String acres, String gallons) {
        return answer(
                        ProductPerLoad.FIGURE,
                        Map.of("rate", rate, "basis", basis, "acres_per_load", acres, "tank_gal", gallons))
                .number("amount");
    }

    private static Answer answer(Figure figure, Map<String, String> typed) {
        return figure.answer(typed);
    }

    private static void refused(Figure figure, Map<String, String> typed, String key) {
        assertThatThrownBy(() -> figure.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith(key);
    }
}
