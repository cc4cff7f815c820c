package plumbrow.documents.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.junit.jupiter.api.Test;

class LetteringTest {
    /** Checked against Adobe's Core 14 metrics of Helvetica as PDFBox ships them. */
    @Test
    void widthsAreThoseOfHelvetica() throws IOException {
        PDType1Font helvetica = new PDType1Font(FontName.HELVETICA);
        for (int point = ' '; point <= '~'; point++) {
            assertThat((double) Lettering.thousandths(point))
                    .as(Character.toString(point))
                    .isEqualTo(helvetica.getStringWidth(Character.toString(point)));
        }
    }

    @Test
    void wrappedLinesFitAndLoseNoWord() {
        String text = "Residual before planting, then a second pass on vines when they run";
        var lines = Lettering.wrap(text, 14, true, 160, 9);
        assertThat(lines)
                .hasSizeGreaterThan(2)
                .allSatisfy(line -> assertThat(Lettering.width(line, 14, true)).isLessThanOrEqualTo(160));
        assertThat(String.join(" ", lines)).isEqualTo(text);
    }

    @Test
    void whatDoesNotFitEndsInAnEllipsis() {
        var lines = Lettering.wrap("one word after another until there is no room", 14, false, 90, 2);
        assertThat(lines).hasSize(2);
        assertThat(lines.get(1)).endsWith("…");
        assertThat(Lettering.width(lines.get(1), 14, false)).isLessThanOrEqualTo(90);
    }

    @Test
    void anEndlessWordAndAnEmojiAreCutBetweenCharacters() {
        var lines = Lettering.wrap("🌽".repeat(40), 14, false, 80, 3);
        assertThat(lines).hasSize(3);
        assertThat(String.join("", lines)).matches("(🌽)+…");
    }
}
