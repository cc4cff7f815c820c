package plumbrow.advice.names;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbrow.advice.field.CropName;
import plumbrow.advice.shelf.ActiveName;

/** Names as people and labels write them. Expected answers from how labels print salts, and from everyday words. */
class UnknownNamesTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            glyphosate, potassium salt | glyphosate
            Glyphosate | glyphosate
            GLYPHOSATE (isopropylamine salt) | glyphosate
            glyphosate, dimethylammonium | glyphosate
            2,4-D choline | 2,4-D
            dicamba, diglycolamine salt | dicamba
            glufosinate | glufosinate-ammonium
            paraquat | paraquat dichloride
            """)
    void aSaltIsItsAcid(String written, String plain) {
        assertThat(ActiveName.plain(written)).isEqualTo(plain);
    }

    @ParameterizedTest
    @CsvSource({"S-metolachlor, metolachlor", "bifenthrin, bifenazate", "imazamox, imazethapyr", "2;4-D, MCPA"})
    void anotherIngredientIsAnother(String one, String other) {
        assertThat(ActiveName.same(one, other)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"Soybeans, soybean", "oats, Oat", "potatoes, potato", "field corn, corn", "cereal rye, rye"})
    void onePlantByTwoNames(String one, String other) {
        assertThat(CropName.same(one, other)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "winter wheat, wheat, true",
        "hard red spring wheat, wheat, true",
        "wheat, winter wheat, false",
        "sweet corn, corn, false",
        "popcorn, corn, false",
        "wheat, wheat, false"
    })
    void kindsOfACrop(String kind, String crop, boolean is) {
        assertThat(CropName.kindOf(kind, crop)).isEqualTo(is);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rootworm | western corn rootworm; soybean aphid | western corn rootworm
            soybeen aphid | western corn rootworm; soybean aphid | soybean aphid
            foxtail | giant foxtail; waterhemp | giant foxtail
            Lot 1 | Lot 2; Lot 11 | ~
            green thing | waterhemp | ~
            """, nullValues = "~")
    void theNearestName(String written, String known, String nearest) {
        assertThat(Near.best(written, List.of(known.split("; "))).orElse(null)).isEqualTo(nearest);
    }
}
