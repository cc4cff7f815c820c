package plumbrow.documents.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What the card says where the sheet gives no value of the product itself, and of eyes and skin. */
class MixtureAndIrritationTest {
    private static final String TWO_INGREDIENTS = """
            Composition/information on ingredients
            Ingredient    CAS No.    % by weight
            Chlorpyrifos    2921-88-2    10
            Kaolin    1332-58-7    70
            Other ingredients        20
            """;
    private static final String THEIR_DOSES = """
            Toxicological information
            Chlorpyrifos
            Oral LD50 (rat): 50 mg/kg
            Kaolin
            Oral LD50 (rat): > 5000 mg/kg
            """;

    private static List<CardLine> acute(TypedSheet sheet) {
        return CardMaker.make(CardInput.of(sheet.read(), LocalDate.of(2026, 11, 25)))
                .lines(CardPart.ACUTE);
    }

    private static CardLine line(TypedSheet sheet, String about) {
        return acute(sheet).stream()
                .filter(line -> line.about().startsWith(about))
                .findFirst()
                .orElseThrow(() -> new AssertionError(about + " is not among " + acute(sheet)));
    }

    /** Worked apart from this code: 10 % at 50 mg/kg and 20 % unknown make 400 mg/kg. */
    @Test
    void aMixtureIsReckonedFromItsIngredients() {
        TypedSheet sheet = TypedSheet.furrowgate().set(3, TWO_INGREDIENTS).set(11, THEIR_DOSES);
        CardLine reckoned = line(sheet, "Swallowed, calculated");
        assertThat(reckoned.known()).isEqualTo(Known.WORKED);
        assertThat(reckoned.says())
                .contains("about 400 mg/kg", "category 4, H302", "no value of the product itself", "20 %");
        assertThat(Objects.requireNonNull(reckoned.working()).number("ate")).isEqualTo(400);
        assertThat(reckoned.origins()).hasSize(1);
    }

    @Test
    void theProductsOwnValueOutranksTheReckoning() {
        assertThat(acute(TypedSheet.furrowgate().set(3, TWO_INGREDIENTS)))
                .noneMatch(line -> line.about().contains("calculated"));
    }

    @Test
    void withoutAShareNothingIsReckoned() {
        TypedSheet sheet = TypedSheet.furrowgate()
                .set(3, TWO_INGREDIENTS.replace("    10\n", "\n"))
                .set(11, THEIR_DOSES);
        assertThat(acute(sheet)).noneMatch(line -> line.about().contains("calculated"));
    }

    /** UN GHS 3.2 and 3.3: H315 is category 2 of skin, H319 category 2A of eyes; H314 burns skin and so damages eyes. */
    @Test
    void eyesAndSkinStandByTheirCodes() {
        TypedSheet mild = TypedSheet.furrowgate()
                .change(2, "H302", "H315 Causes skin irritation.\nH319 Causes serious eye irritation.\nH302");
        assertThat(line(mild, "Skin, irritation").says()).isEqualTo("category 2, irritates skin, H315, Warning");
        assertThat(line(mild, "Eyes").says()).isEqualTo("category 2A, irritates eyes, H319, Warning");
        TypedSheet burning =
                TypedSheet.furrowgate().change(2, "H302", "H314 Causes severe skin burns and eye damage.\nH302");
        assertThat(line(burning, "Eyes").says()).startsWith("category 1, since it burns skin");
        assertThat(line(burning, "Skin, irritation"))
                .returns(Known.DIFFERS, CardLine::known)
                .extracting(CardLine::says)
                .asString()
                .contains("Danger, but the sheet’s signal word is Warning");
    }

    @Test
    void noCodeIsUnknownAndNotHarmless() {
        assertThat(line(TypedSheet.furrowgate(), "Eyes"))
                .returns(Known.UNKNOWN, CardLine::known)
                .extracting(CardLine::says)
                .asString()
                .contains("look up", "prints no code");
    }
}
