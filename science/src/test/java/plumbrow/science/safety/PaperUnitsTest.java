package plumbrow.science.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Units by their definitions, limits of 40 CFR 156.62 and UN GHS, caffeine (Adamson 2016: 367 mg/kg, shown as 400), density by hand. */
class PaperUnitsTest {
    @Test
    void unitsOfSheets() {
        assertThat(PaperUnits.mgPerKg("g/kg")).hasValue(1000);
        assertThat(PaperUnits.mgPerLitreOfAir("mg/m³")).hasValue(.001);
        assertThat(PaperUnits.mgPerLitreOfWater("ppm")).hasValue(1);
        assertThat(PaperUnits.poundsPerGallon(1.14, "").orElseThrow()).isCloseTo(9.514, within(5e-4));
        assertThat(PaperUnits.poundsPerGallon(1140, "kg/m³").orElseThrow()).isCloseTo(9.514, within(5e-4));
        assertThat(PaperUnits.pounds("kg").orElseThrow()).isCloseTo(2.2046226, within(5e-8));
    }

    @Test
    void whatCantBeTurnedIsUnknown() {
        assertThat(PaperUnits.mgPerKg("ppm")).isEmpty();
        assertThat(PaperUnits.mgPerLitreOfAir("ppm")).isEmpty();
        assertThat(PaperUnits.poundsPerGallon(40, "lb/ft³")).isEmpty();
        assertThat(PaperUnits.pounds("gal")).isEmpty();
    }

    @Test
    void callsAtTheLimits() {
        assertThat(GhsAcute.call("oral", 300)).isEqualTo(new GhsAcute.Call(3, "H301", "Danger"));
        assertThat(GhsAcute.call("oral", 300.1)).isEqualTo(new GhsAcute.Call(4, "H302", "Warning"));
        assertThat(GhsAcute.call("oral", Double.POSITIVE_INFINITY)).isEqualTo(new GhsAcute.Call(0, "", ""));
        assertThat(EpaToxicity.category(EpaToxicity.Route.DERMAL, 2000)).isEqualTo("II");
        assertThat(EpaToxicity.signalWord("III")).isEqualTo("CAUTION");
    }

    @Test
    void caffeineIsAFactorOfSevenAndAHalf() {
        EverydayDose caffeine = EverydayDose.ALL.stream()
                .filter(each -> each.name().equals("caffeine"))
                .findFirst()
                .orElseThrow();
        assertThat(HalfLethalRatio.FIGURE
                        .answer(Map.of("ld50_mg_kg", "3000", "reference_ld50_mg_kg", caffeine.ld50MgPerKg() + ""))
                        .number("ratio"))
                .isEqualTo(7.5);
    }
}
