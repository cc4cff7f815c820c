package plumbrow.science.fate;

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

@DisplayName("Air, soil and water, against values from outside")
class FateTest {

    @Test
    @DisplayName("0 one pound per acre in other units")
    void units() {
        assertPrinted(FieldRate.KG_PER_HA, "1.12085116");
        assertPrinted(FieldRate.UG_PER_M2, "112085.116");
        assertPrinted(FieldRate.MG_PER_FT2, "10.41305");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"metolachlor, .00418, 283.8, 530, -2.63", "atrazine, .0000385, 215.68, 33, -3.54"})
    @DisplayName("1.3 Henry constants of USGS Circular 1291 App. 2, within 15 % (verified)")
    void henryOutside(String name, double pressure, double weight, double solubility, double log10) {
        double outside = Math.pow(10, log10);
        assertThat(HenryConstant.pascalM3PerMol(pressure, weight, solubility))
                .as(name)
                .isCloseTo(outside, within(.15 * outside));
    }

    @Test
    @DisplayName("1.3 H' is 40.874 times KH in atm m³/mol; Illinois prints 41 (verified)")
    void henryInAtmospheres() {
        assertPrinted(HenryConstant.dimensionless(101_325), "40.874");
    }

    @Test
    @DisplayName("1.4 a fumigant is printed per second and given per hour; each form asks for what it needs")
    void fluxForms() {
        assertThat(VapourFlux.fumigant(1)).isCloseTo(3600 * Math.exp(3.598), within(1e-6));
        refused(VapourFlux.FIGURE, Map.of("form", "soil", "vapour_pressure_pa", "1"), "koc_ml_g");
        refused(
                VapourFlux.FIGURE,
                Map.of("form", "fumigant", "vapour_pressure_pa", "1", "koc_ml_g", "1", "solubility_mg_l", "1"),
                "depth_cm");
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"5, .241307", "10, .387597", "15, .622573", "25, 1.606238", "30, 2.58"})
    @DisplayName("2 temperature factors at Q10 2.58 (computed)")
    void temperatureFactor(double celsius, String factor) {
        assertPrinted(Dissipation.temperatureFactor(celsius, 20, 2.58), factor);
    }

    @Test
    @DisplayName("2 nothing breaks down in frozen soil; moisture factors of Walker (computed)")
    void frozenAndDry() {
        assertThat(Dissipation.temperatureFactor(0, 20, 2.58)).isZero();
        assertPrinted(Dissipation.moistureFactor(.6), ".699368");
        assertPrinted(Dissipation.moistureFactor(.5), ".615572");
        assertThat(Dissipation.moistureFactor(2)).isEqualTo(1);
    }

    @Test
    @DisplayName("3.1 below one day the score keeps its sign and is said to mean nothing")
    void shortHalfLife() {
        Answer answer = LeachingScore.FIGURE.answer(Map.of("half_life_d", "0.5", "koc_ml_g", "20"));
        assertThat(answer.number("score")).isNegative();
        assertThat(answer.cautions()).anyMatch(caution -> caution.contains("too short for the score"));
    }

    @Test
    @DisplayName("3.2 atrazine at one metre 4.07361e-5 (computed)")
    void atrazineAtOneMetre() {
        assertThat(Attenuation.factor(Attenuation.travelDays(1, 7.0000000, .25, .002), 60))
                .isCloseTo(4.07361e-5, within(1e-9));
    }

    @Test
    @DisplayName("3.2 deeper, slower, drier: less passes; what does not sorb moves with the water")
    void directions() {
        SplittableRandom random = new SplittableRandom(32);
        for (int i = 0; i < 300; i++) {
            double koc = random.nextDouble(1, 1000);
            double carbon = random.nextDouble(.001, .05);
            double factor = Retardation.factor(koc, carbon, 1.4, .25, .2, 0);
            assertThat(Retardation.factor(koc * 2, carbon, 1.4, .25, .2, 0)).isGreaterThan(factor);
            double days = Attenuation.travelDays(1, factor, .25, .002);
            assertThat(Attenuation.factor(days * 1.1, 60)).isLessThan(Attenuation.factor(days, 60));
        }
        assertThat(Retardation.factor(0, .01, 1.5, .25, .2, 0)).isEqualTo(1);
    }

    @Test
    @DisplayName("8 the EPA nomograph's 734 for 6 in, within 0.3 % (memory)")
    void nomograph() {
        assertThat(StandingWater.ugPerLitre(1, 6, 1)).isCloseTo(734, within(.003 * 734));
    }

    private static void refused(Figure figure, Map<String, String> typed, String key) {
        assertThatThrownBy(() -> figure.answer(typed))
                .isInstanceOf(FigureInputException.class)
                .hasMessageStartingWith(key);
    }
}
