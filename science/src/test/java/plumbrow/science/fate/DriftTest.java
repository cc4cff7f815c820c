package plumbrow.science.fate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Spray drift, against values from outside")
class DriftTest {
    private static final DriftCurve FOCUS_ONE = DriftCurve.FOCUS.get(0);
    private static final DriftCurve FOCUS_TWO = DriftCurve.FOCUS.get(1);
    /** 100 g/ha [µg/m²]. */
    private static final double HUNDRED_GRAMS = 10_000;

    @ParameterizedTest(name = "{0} m: table {1}, formula {2}")
    @CsvSource({
        "1, 2.77, 2.7705",
        "3, .95, .945365",
        "5, .57, .573424",
        "10, .29, .290977",
        "15, .20, .195667",
        "20, .15, .147652",
        "30, .10, .099289",
        "40, .07, .074924",
        "50, .06, .060225"
    })
    @DisplayName("4.1 nine printed values of R package pfm, drift_data_JKI (verified), and the formula (computed)")
    void table(double metres, String table, String formula) {
        double pct = DriftCurve.FIELD_CROPS.pointPct(metres);
        assertPrinted(pct, table);
        assertPrinted(pct, formula);
    }

    @ParameterizedTest(name = "{0} m")
    @CsvSource({"1, 2.7593000, 2.4376000", "3, .9424748, .8036556", "5, .5719342, .4797365"})
    @DisplayName("4.1 FOCUS one and two applications, R package pfm (verified)")
    void focusPoint(double metres, String one, String two) {
        assertPrinted(FOCUS_ONE.pointPct(metres), one);
        assertPrinted(FOCUS_TWO.pointPct(metres), two);
    }

    @ParameterizedTest(name = "{0} m")
    @CsvSource({
        "1, .92333, .91976667, .64246407",
        "5, .19000, .19064473, .17414541",
        "10, .096667, .09680051, .09235842",
        "20, .05000, .04915079, .04798749"
    })
    @DisplayName("4.2 100 g/ha into 30 cm: table, FOCUS at a point, FOCUS mean of 1 m; R package pfm (verified)")
    void water(double metres, String table, String point, String mean) {
        double tablePct = Math.round(100 * DriftCurve.FIELD_CROPS.pointPct(metres)) / 100.0;
        assertPrinted(DriftIntoWater.ugPerLitre(HUNDRED_GRAMS, tablePct, .3), table);
        assertPrinted(DriftIntoWater.ugPerLitre(HUNDRED_GRAMS, FOCUS_ONE.pointPct(metres), .3), point);
        assertPrinted(DriftIntoWater.ugPerLitre(HUNDRED_GRAMS, FOCUS_ONE.meanPct(metres, 1), .3), mean);
    }

    @ParameterizedTest(name = "{0} m: {1} %")
    @CsvSource({"1, 1.9273922", "3, .8160023", "5, .5224362"})
    @DisplayName("4.2 mean deposit over 1 m, FOCUS, R package pfm (verified)")
    void mean(double metres, String pct) {
        assertPrinted(FOCUS_ONE.meanPct(metres, 1), pct);
    }

    @ParameterizedTest(name = "{0} m wide, {1} m away: {2} µg/L")
    @CsvSource({"1, 1, .91780582", "1, 5, .24877916", "2, 1, .60169999", "2, 5, .18937304"})
    @DisplayName("4.2 banks at 45°, 100 g/ha into 30 cm, FOCUS, R package pfm (verified)")
    void slopingBanks(double width, double metres, String expected) {
        double upright = DriftIntoWater.ugPerLitre(HUNDRED_GRAMS, FOCUS_ONE.meanPct(metres, width), .3);
        assertPrinted(upright / DriftIntoWater.bankShare(width, .3, 45), expected);
    }

    @Test
    @DisplayName("4.1 from the air the two parts meet at 16.2 m")
    void aerial() {
        assertThat(DriftCurve.aerialPct(16.2)).isCloseTo(DriftCurve.aerialPct(16.2000001), within(.1));
    }

    @Test
    @DisplayName("4.1 nearer than one metre and beyond 100 m is refused; beyond 75 m is flagged")
    void limits() {
        for (String metres : new String[] {"0.5", "100.1"}) {
            assertThatThrownBy(() -> DriftDeposit.FIGURE.answer(Map.of("distance_m", metres)))
                    .isInstanceOf(FigureInputException.class)
                    .hasMessageContaining("1 to 100 m");
        }
        assertThat(DriftDeposit.FIGURE.answer(Map.of("distance_m", "80")).cautions())
                .anyMatch(caution -> caution.startsWith("Beyond 75 m"));
    }

    @Test
    @DisplayName("4.2 banks that meet above the depth are refused; sloping banks make the water stronger")
    void bankAngle() {
        Map<String, String> typed =
                new HashMap<>(DriftIntoWater.FIGURE.examples().get(0).inputs());
        double upright = DriftIntoWater.FIGURE.answer(typed).number("concentration_ug_l");
        typed.put("bank_slope_deg", "45");
        assertThat(DriftIntoWater.FIGURE.answer(typed).number("concentration_ug_l"))
                .isCloseTo(upright / .7, within(1e-9));
        typed.put("bank_slope_deg", "10");
        assertThatThrownBy(() -> DriftIntoWater.FIGURE.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith("bank_slope_deg");
    }
}
