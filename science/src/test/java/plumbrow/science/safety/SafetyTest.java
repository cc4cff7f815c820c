package plumbrow.science.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static plumbrow.science.Printed.assertPrinted;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.FigureInputException;

@DisplayName("Poison, strengths and spills, against values from outside")
class SafetyTest {

    @ParameterizedTest(name = "{0} {1} mg: {2}")
    @CsvSource({
        "oral_ld50_mg_kg, 50, I",
        "oral_ld50_mg_kg, 50.1, II",
        "oral_ld50_mg_kg, 500, II",
        "oral_ld50_mg_kg, 5000, III",
        "oral_ld50_mg_kg, 5001, IV",
        "dermal_ld50_mg_kg, 200, I",
        "dermal_ld50_mg_kg, 2000, II",
        "dermal_ld50_mg_kg, 20000, III",
        "dermal_ld50_mg_kg, 20001, IV",
        "inhalation_lc50_mg_l, .2, I",
        "inhalation_lc50_mg_l, 2, II",
        "inhalation_lc50_mg_l, 20, III",
        "inhalation_lc50_mg_l, 20.1, IV"
    })
    @DisplayName("3.1 the limits of 40 CFR 156.62, each in the more severe category")
    void regulation(String key, String value, String category) {
        assertThat(EpaToxicity.FIGURE.answer(Map.of(key, value)).word("category"))
                .isEqualTo(category);
    }

    @Test
    @DisplayName("3.1 the review manual's limits only when asked, and then it is said")
    void manual() {
        Map<String, String> typed = Map.of("inhalation_lc50_mg_l", "1");
        assertThat(EpaToxicity.FIGURE.answer(typed).word("inhalation")).isEqualTo("II");
        Answer manual = EpaToxicity.FIGURE.answer(Map.of("inhalation_lc50_mg_l", "1", "limits", "manual"));
        assertThat(manual.word("inhalation")).isEqualTo("III");
        assertThat(manual.cautions()).anyMatch(caution -> caution.contains("review manual"));
    }

    @Test
    @DisplayName("T6 a missing route is unknown and said so; nothing known is unknown, never clear")
    void unknownIsNeverClear() {
        Answer some = EpaToxicity.FIGURE.answer(Map.of("oral_ld50_mg_kg", "900", "dermal_ld50_mg_kg", "2001"));
        assertThat(some.cautions())
                .anyMatch(caution -> caution.contains("inhalation unknown") && caution.contains("CAUTION or worse"));
        assertThat(some.word("poison")).isEqualTo("unknown");
        Answer mild = EpaToxicity.FIGURE.answer(Map.of("oral_ld50_mg_kg", "9000"));
        assertThat(mild.word("signal_word")).isEqualTo("unknown");
        Answer nothing = EpaToxicity.FIGURE.answer(Map.of());
        assertThat(nothing.word("category")).isEqualTo("unknown");
        assertThat(nothing.word("signal_word")).isEqualTo("unknown");
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "oral, 5, H300", "oral, 50, H300", "oral, 2000, H302", "dermal, 50, H310", "dermal, 1000, H311",
        "gas, 100, H330", "gas, 2500, H331", "gas, 20000, H332", "vapour, .5, H330", "vapour, 10, H331",
        "vapour, 20, H332", "dust-mist, .05, H330", "dust-mist, 5, H332", "gas, 20001, none", "oral, 2001, none"
    })
    @DisplayName("2.1 the limits of CLP Table 3.1.1, each in the more severe category")
    void ghsLimits(String route, String value, String code) {
        assertThat(GhsAcute.FIGURE
                        .answer(Map.of("route", route, "value", value))
                        .word("hazard_code"))
                .isEqualTo(code);
    }

    @Test
    @DisplayName("2.1 the UN's fifth category is shown apart: no US sheet has it")
    void fifthCategory() {
        Answer answer = GhsAcute.FIGURE.answer(Map.of("route", "oral", "value", "3000"));
        assertThat(answer.word("category")).isEqualTo("not classified");
        assertThat(answer.number("un_category")).isEqualTo(5);
        assertThat(answer.cautions()).anyMatch(caution -> caution.contains("H303"));
    }

    @Test
    @DisplayName("2.2 shares above 100 % are refused")
    void tooMuch() {
        assertThatThrownBy(() -> MixtureAte.FIGURE.answer(Map.of("shares_pct", "60,50", "ates", "100,100")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("110");
    }

    @ParameterizedTest(name = "{0} of {1}: {2}, less one hydrogen {3}")
    @CsvSource({
        "169.07, 228.19, .7409, .7365", "169.07, 207.16, .8161, .8113", "169.07, 186.10, .9085, .9031",
        "169.07, 214.16, .7895, .7848", "221.04, 333.26, .6633, .6602", "221.04, 321.20, .6882, .6850",
        "221.04, 266.12, .8306, .8268", "221.04, 324.20, .6818, .6787", "221.04, 326.18, .6777, .6746",
        "221.04, 243.02, .9095, .9054", "221.04, 364.27, .6068, .6040", "181.13, 198.16, .9141, ",
        "186.26, 257.16, .7243, "
    })
    @DisplayName("10.3 acid per salt, and the variant of some extension sheets (computed)")
    void acidFactors(double acid, double salt, String factor, String lessHydrogen) {
        assertPrinted(AcidEquivalent.factor(salt, acid, 1), factor);
        if (lessHydrogen != null) {
            assertPrinted(AcidEquivalent.factor(salt, acid - 1.008, 1), lessHydrogen);
        }
    }

    @Test
    @DisplayName("1.3 capitals count: MPa is refused, mpa is either of two and refused too, TORR is torr")
    void capitals() {
        assertThatThrownBy(() -> VapourPressure.FIGURE.answer(Map.of("value", "1", "unit", "MPa")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("billion");
        assertThatThrownBy(() -> VapourPressure.FIGURE.answer(Map.of("value", "1", "unit", "MPA")))
                .isInstanceOf(FigureInputException.class);
        assertPrinted(
                VapourPressure.FIGURE
                        .answer(Map.of("value", "1.5e-7", "unit", "TORR"))
                        .number("mpa"),
                ".02000");
    }

    @Test
    @DisplayName("1.5 what has not the shape of a CAS number is refused")
    void casShape() {
        assertThatThrownBy(() -> CasCheck.FIGURE.answer(Map.of("cas", "524-475")))
                .isInstanceOf(FigureInputException.class)
                .hasMessageContaining("524-475");
    }

    @Test
    @DisplayName("4 the caution stands beside every ratio: swallowing only, not a safety rating")
    void ratioCaution() {
        Answer answer = HalfLethalRatio.FIGURE.answer(Map.of("ld50_mg_kg", "3000", "reference_ld50_mg_kg", "200"));
        assertThat(answer.number("ratio")).isEqualTo(15);
        assertThat(answer.cautions())
                .anyMatch(caution ->
                        caution.startsWith("Acute swallowing only") && caution.contains("not a safety rating"));
    }

    @Test
    @DisplayName("7.4 a spill of just the quantity reaches it, whatever the rounding")
    void equalCounts() {
        assertThat(Spill.reaches(.1 + .2, .3)).isTrue();
        assertThat(Spill.reaches(3 * .1, .1 + .2)).isTrue();
        assertThat(Spill.reaches(.2999, .3)).isFalse();
    }
}
