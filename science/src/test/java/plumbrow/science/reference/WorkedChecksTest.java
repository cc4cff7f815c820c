package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbrow.science.Printed.assertPrinted;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import plumbrow.science.fate.HenryConstant;
import plumbrow.science.fate.LeachingScore;
import plumbrow.science.safety.CasCheck;

@DisplayName("Worked checks of the ingredients, computed by independent arithmetic unless said otherwise")
class WorkedChecksTest {
    private static final double PA_PER_MMHG = 133.322;

    private static Substance substance(String name) {
        return Substances.find(name).orElseThrow();
    }

    /** The value of a substance that is printed so, in the first unit. */
    private static double value(String name, Property property, String printed) {
        return substance(name).values(property).stream()
                .filter(fact -> fact.value().printed().equals(printed))
                .findFirst()
                .flatMap(Fact::number)
                .orElseThrow()
                .number();
    }

    @Test
    void casDigit() {
        assertThat(CasCheck.fits("1912-24-9")).isTrue();
        assertThat(CasCheck.fits("1912-24-8")).isFalse();
        assertThat(Substances.find("1912-24-9")).map(Substance::name).contains("atrazine");
    }

    @Test
    void vapourPressureUnits() {
        assertPrinted(value("trifluralin", Property.VAPOUR_PRESSURE, "4.58e-5"), "6.106");
        double milli = value("glyphosate", Property.VAPOUR_PRESSURE, "2.1e-3");
        assertThat(milli / 1000 / PA_PER_MMHG)
                .as("NPIC glyphosate sheet prints 1.58e-8 mmHg for the isopropylamine salt")
                .isCloseTo(1.575e-8, within(.001e-8));
    }

    @Test
    @DisplayName("log Koc 3.70 to Koc 5010, SRC PHYSPROP soil adsorption set")
    void logKoc() {
        assertThat(value("pendimethalin", Property.KOC, "5010")).isCloseTo(Math.pow(10, 3.70), within(5.));
    }

    @Test
    @DisplayName("Henry constants from PHYSPROP vapour pressures and solubilities")
    void henry() {
        double trifluralin = HenryConstant.pascalM3PerMol(
                value("trifluralin", Property.VAPOUR_PRESSURE, "4.58e-5") / 1000,
                value("trifluralin", Property.MOLECULAR_WEIGHT, "335.29"),
                value("trifluralin", Property.WATER_SOLUBILITY, "0.184"));
        assertPrinted(trifluralin, "11.13");
        assertThat(HenryConstant.dimensionless(trifluralin)).isCloseTo(4.49e-3, within(.005e-3));
        double atrazine = HenryConstant.pascalM3PerMol(
                value("atrazine", Property.VAPOUR_PRESSURE, "2.89e-7") / 1000,
                value("atrazine", Property.MOLECULAR_WEIGHT, "215.69"),
                value("atrazine", Property.WATER_SOLUBILITY, "34.7"));
        assertThat(atrazine).isCloseTo(2.395e-4, within(.0005e-4));
    }

    @Test
    @DisplayName("Leaching scores after Gustafson 1989, with the laboratory half-life as the other end")
    void leaching() {
        double koc = value("atrazine", Property.KOC, "100");
        assertPrinted(LeachingScore.of(value("atrazine", Property.FIELD_HALF_LIFE, "60"), koc), "3.56");
        assertPrinted(LeachingScore.of(value("atrazine", Property.SOIL_HALF_LIFE, "146"), koc), "4.33");
        assertPrinted(
                LeachingScore.of(
                        value("lambda-cyhalothrin", Property.FIELD_HALF_LIFE, "30"),
                        value("lambda-cyhalothrin", Property.KOC, "180000")),
                "-1.85");
    }

    @Test
    @DisplayName("Categories: bifenthrin by mouth II (NPIC bifenthrin sheet), phorate to trout very highly toxic")
    void categories() {
        Fact oral =
                substance("bifenthrin").choose(Property.RAT_ORAL).orElseThrow().fact();
        assertThat(oral.value().printed()).isEqualTo("53.8");
        assertThat(HazardWords.of(Property.RAT_ORAL, oral.number().orElseThrow()))
                .contains("II");
        Fact trout = substance("phorate").choose(Property.TROUT).orElseThrow().fact();
        assertThat(trout.value().printed()).isEqualTo("0.0254");
        assertThat(HazardWords.of(Property.TROUT, trout.number().orElseThrow())).contains("very highly toxic");
    }

    @Test
    void aMissingPairIsUnknown() {
        assertThat(substance("pyroxasulfone").values(Property.KOC)).isEmpty();
        assertThat(substance("pyroxasulfone").choose(Property.KOC)).isEmpty();
        assertThat(Substances.find("mescaline")).isEmpty();
    }
}
