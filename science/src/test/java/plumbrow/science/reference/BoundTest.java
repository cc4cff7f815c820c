package plumbrow.science.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoundTest {
    @ParameterizedTest
    @CsvSource({
        "60, DEFINITE, 60, 60",
        "1.5e-4, DEFINITE, 1.5e-4, 1.5e-4",
        ".05, DEFINITE, .05, .05",
        "300-20100, RANGE, 300, 20100",
        "1e-3-2e-3, RANGE, 1e-3, 2e-3",
        ">2000, ABOVE, 2000, Infinity",
        ">=362, AT_LEAST, 362, Infinity",
        "<0.001, BELOW, 0, .001",
        "<=0.25, AT_MOST, 0, .25"
    })
    void readsWhatTestsReport(String text, Bound.Kind kind, double low, double high) {
        assertThat(Bound.read(text)).contains(new Bound(kind, low, high, text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-3", "10-2", "5-5", ">", "about 60", "1,000", "60 d", ">2-3", "1e999", "NaN", "≥5"})
    void refusesTheRest(String text) {
        assertThat(Bound.read(text)).isEmpty();
    }

    @Test
    void endsInOrder() {
        assertThatThrownBy(() -> new Bound(Bound.Kind.RANGE, 3, 2, "3-2")).hasMessageContaining("the low end first");
    }

    /** 40 CFR 156.62 as in the reference: a limit has a category only where its whole interval lies in it. */
    @ParameterizedTest
    @CsvSource({
        "50, I",
        "50.1, II",
        "53.8, II",
        ">50, II or III or IV",
        ">2000, III or IV",
        ">5000, IV",
        ">=5000, III or IV",
        "<50, I",
        "<=500, I or II",
        "60-700, II or III"
    })
    void categoriesByMouth(String text, String words) {
        assertThat(HazardWords.of(Property.RAT_ORAL, Bound.read(text).orElseThrow()))
                .contains(words);
    }

    /** EPA's words, from memory: bees below 2, below 11, above; water 0.1, 1, 10, 100; birds to 2000. */
    @Test
    void wordsForWildlife() {
        assertThat(HazardWords.of(Property.BEE_CONTACT, Bound.read(">96.69").orElseThrow()))
                .contains("practically nontoxic");
        assertThat(HazardWords.of(Property.BEE_ORAL, Bound.read(">0.002").orElseThrow()))
                .contains("highly toxic or moderately toxic or practically nontoxic");
        assertThat(HazardWords.of(Property.TROUT, Bound.read("0.0254").orElseThrow()))
                .contains("very highly toxic");
        assertThat(HazardWords.of(Property.DAPHNIA, Bound.read(">100").orElseThrow()))
                .contains("practically nontoxic");
        assertThat(HazardWords.of(Property.MALLARD_ORAL, Bound.read(">2000").orElseThrow()))
                .contains("practically nontoxic");
        assertThat(HazardWords.of(Property.KOC, Bound.read("5").orElseThrow())).isEmpty();
    }
}
