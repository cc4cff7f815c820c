package plumbrow.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.junit.jupiter.api.Test;
import plumbrow.documents.reading.SheetReader;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.sheet.ValueKind;

/** Words are marked where they were printed. */
class PlacesTest {
    private static final float SIZE = 10;

    /** The widths of Helvetica come from its published metrics, through the PDF library. */
    @Test
    void theBoxLiesOnTheWords() throws IOException {
        PDType1Font font = new PDType1Font(FontName.HELVETICA);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage(PDRectangle.LETTER));
            PDPage second = new PDPage(PDRectangle.LETTER);
            document.addPage(second);
            try (PDPageContentStream content = new PDPageContentStream(document, second)) {
                show(content, font, 72, 700, "SECTION 9: Physical and chemical properties");
                show(content, font, 72, 680, "Flash point");
                show(content, font, 250, 680, "> 93 °C");
            }
            document.save(out);
        }
        Reading.Stated flash = (Reading.Stated)
                SheetReader.read(out.toByteArray(), "places.pdf").of(ValueKind.FLASH_POINT);
        assertThat(flash.quote().words()).isEqualTo("> 93 °C");
        assertThat(flash.quote().marks()).hasSize(1);
        Mark mark = flash.quote().marks().get(0);
        assertThat(mark.page()).isEqualTo(2);
        double top = PDRectangle.LETTER.getHeight() - 680;
        assertThat(mark.box().left()).isCloseTo(250, within(.5));
        assertThat(mark.box().right()).isCloseTo(250 + font.getStringWidth("> 93 °C") / 1000 * SIZE, within(.5));
        assertThat(mark.box().top()).isBetween(top - SIZE, top - SIZE / 2);
        assertThat(mark.box().bottom()).isBetween(top, top + SIZE / 2);
    }

    private static void show(PDPageContentStream content, PDType1Font font, float left, float base, String text)
            throws IOException {
        content.beginText();
        content.setFont(font, SIZE);
        content.newLineAtOffset(left, base);
        content.showText(text);
        content.endText();
    }
}
