package plumbrow.documents.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Letters become lines as a person sees them, however the file sets them. Layouts are those met on papers in use. */
@DisplayName("From letters to lines")
class GeometryTest {
    private static final PDType1Font FONT = new PDType1Font(FontName.HELVETICA);

    @Test
    @DisplayName("one-point letters on a page scaled tenfold are lines, not a heap of letters")
    void scaledPage() throws IOException {
        List<String> rows = rows(0, content -> {
            content.transform(Matrix.getScaleInstance(10, 10));
            for (int line = 0; line < 20; line++) {
                show(content, 1, 7.2f, 70 - line * 1.1f, "Wash skin with plenty of water, line " + line);
            }
        });
        assertThat(rows).hasSize(20).first().isEqualTo("Wash skin with plenty of water, line 0");
    }

    @Test
    @DisplayName("small print beside other small print whose lines fall between stays two columns of whole words")
    void columnsOffset() throws IOException {
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 12; line++) {
                show(content, 5, 60, 700 - line * 5.2f, "left column of directions " + line);
                show(content, 5, 118, 698 - line * 5.2f, "right column of cautions " + line);
            }
        });
        String all = String.join(" ", rows);
        for (int line = 0; line < 12; line++) {
            assertThat(all).contains("left column of directions " + line).contains("right column of cautions " + line);
        }
    }

    @Test
    @DisplayName("three columns of small print, each at its own pace, are read one after the other")
    void threeColumns() throws IOException {
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 40; line++) {
                show(content, 6, 20, 700 - line * 7.4f, "first column of the directions goes on " + line);
                show(content, 6, 210, 697 - line * 6.9f, "second column tells how to store it all " + line);
                show(content, 6, 400, 702 - line * 7.9f, "third column is what the warranty says " + line);
            }
        });
        assertThat(rows).hasSize(120);
        assertThat(rows.subList(0, 40)).allMatch(row -> row.startsWith("first"));
        assertThat(rows.subList(40, 80)).allMatch(row -> row.startsWith("second"));
        assertThat(rows.subList(80, 120)).allMatch(row -> row.startsWith("third"));
    }

    @Test
    @DisplayName("a gutter no wider than a blank parts columns whose lines the file sets one under the other")
    void narrowGutter() throws IOException {
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 24; line++) {
                show(content, 6, 20, 700 - line * 7, "the first column of directions fills its measure " + (line + 10));
            }
            float left = 20 + FONT.getStringWidth("the first column of directions fills its measure 10 ") / 1000 * 6;
            for (int line = 0; line < 24; line++) {
                show(content, 6, left, 699.4f - line * 6.3f, "the second column of cautions runs beside it " + line);
            }
        });
        assertThat(rows).hasSize(48);
        assertThat(rows.subList(0, 24)).allMatch(row -> row.startsWith("the first"));
        assertThat(rows.subList(24, 48)).allMatch(row -> row.startsWith("the second"));
    }

    @Test
    @DisplayName("three columns of running text on one grid of lines are columns")
    void oneGrid() throws IOException {
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 40; line++) {
                show(content, 6, 20, 700 - line * 7.2f, "first column of the directions that goes on and on " + line);
                show(content, 6, 210, 700 - line * 7.2f, "second column that tells how to store it all away " + line);
                show(content, 6, 400, 700 - line * 7.2f, "third column is what the long warranty says here " + line);
            }
        });
        assertThat(rows.subList(0, 40)).allMatch(row -> row.startsWith("first"));
        assertThat(rows.subList(40, 80)).allMatch(row -> row.startsWith("second"));
        assertThat(rows.subList(80, 120)).allMatch(row -> row.startsWith("third"));
    }

    @Test
    @DisplayName("a front in large type, each line set in the middle, stands beside small print and not among it")
    void frontBesideSmallPrint() throws IOException {
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 40; line++) {
                show(
                        content,
                        6,
                        20,
                        700 - line * 7,
                        "small print on how to use, store and throw away what is left, line " + line);
            }
            show(content, 34, 330, 640, "KESTREL");
            show(content, 30, 345, 600, "GATE");
            show(content, 14, 318, 570, "For control of weeds");
            show(content, 9, 350, 540, "Active Ingredient:");
            show(content, 9, 338, 529, "Atrazine 40.8%");
            show(content, 9, 341, 518, "Other Ingredients 59.2%");
            show(content, 12, 325, 490, "KEEP OUT OF REACH");
            show(content, 12, 360, 476, "OF CHILDREN");
            show(content, 20, 356, 450, "CAUTION");
        });
        assertThat(rows).hasSize(49);
        assertThat(rows.subList(0, 40)).allMatch(row -> row.startsWith("small print"));
        assertThat(rows.get(40)).isEqualTo("KESTREL");
    }

    @Test
    @DisplayName("English and Spanish side by side, line beside line, are two columns")
    void twoLanguages() throws IOException {
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 12; line++) {
                show(content, 8, 40, 700 - line * 11, "Store in a cool dry place " + line);
                show(content, 8, 260, 700 - line * 11, "Guarde en un lugar seco y fresco " + line);
            }
        });
        assertThat(rows.subList(0, 12)).allMatch(row -> row.startsWith("Store"));
        assertThat(rows.subList(12, 24)).allMatch(row -> row.startsWith("Guarde"));
    }

    @Test
    @DisplayName("what lies beside the page, as where artwork is cut into pages, is not read")
    void cutOff() throws IOException {
        List<String> rows = rows(0, content -> {
            show(content, 10, 72, 700, "Shown on this page");
            show(content, 10, 700, 700, "Shown on the next page");
            show(content, 10, -300, 650, "Shown on the page before");
        });
        assertThat(rows).containsExactly("Shown on this page");
    }

    @Test
    @DisplayName("a table of names and values stays row by row")
    void table() throws IOException {
        List<String> names = List.of("Flash point", "pH", "Solubility in water at 20 degrees", "Odor");
        List<String> rows = rows(0, content -> {
            for (int line = 0; line < 30; line++) {
                show(content, 9, 40, 700 - line * 14, names.get(line % names.size()));
                show(content, 9, 260, 700 - line * 14, "as the sheet prints it beside the name".substring(line));
            }
        });
        assertThat(rows).hasSize(30).first().isEqualTo("Flash point  as the sheet prints it beside the name");
    }

    @Test
    @DisplayName("a line printed over another is read as two lines")
    void lineOverLine() throws IOException {
        List<String> rows = rows(0, content -> {
            show(content, 10, 72, 700, "Do not induce vomiting");
            show(content, 10, 75, 700, "This copy is for reference");
        });
        assertThat(rows).contains("Do not induce vomiting").contains("This copy is for reference");
    }

    @Test
    @DisplayName("a blank set over the first letter of a word does not cut that letter off")
    void strayBlank() throws IOException {
        List<String> rows = rows(0, content -> {
            show(content, 10, 72, 700, "CAS-No. 21087-64-9");
            float second = 72 + FONT.getStringWidth("CAS-No. ") / 1000 * 10;
            show(content, 10, second + 1, 700, " ");
            show(content, 10, 73, 700, " ");
        });
        assertThat(rows).containsExactly("CAS-No. 21087-64-9");
    }

    @Test
    @DisplayName("dots that lead from a name to its share without a blank part them")
    void leaders() throws IOException {
        List<String> rows = rows(0, content -> show(content, 8, 72, 700, "OTHER INGREDIENTS.............98.7%"));
        assertThat(rows).containsExactly("OTHER INGREDIENTS  98.7%");
    }

    @Test
    @DisplayName("bold made by printing each line twice is read once")
    void printedTwice() throws IOException {
        List<String> rows = rows(0, content -> {
            show(content, 10, 72, 700, "KEEP OUT OF REACH OF CHILDREN");
            show(content, 10, 72.4f, 699.8f, "KEEP OUT OF REACH OF CHILDREN");
        });
        assertThat(rows).containsExactly("KEEP OUT OF REACH OF CHILDREN");
    }

    @Test
    @DisplayName("a slanting watermark is no text of the page")
    void watermark() throws IOException {
        List<String> rows = rows(0, content -> {
            show(content, 10, 72, 400, "Harmful if swallowed.");
            content.beginText();
            content.setFont(FONT, 60);
            content.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(40), 72, 380));
            content.showText("SPECIMEN");
            content.endText();
        });
        assertThat(rows).containsExactly("Harmful if swallowed.");
    }

    @Test
    @DisplayName("a page that is turned to be read is read, and its boxes lie on its picture")
    void turnedPage() throws IOException {
        for (int turn : new int[] {90, 180, 270}) {
            byte[] pdf = pdf(turn, content -> {
                PDRectangle size = PDRectangle.LETTER;
                content.transform(
                        switch (turn) {
                            case 90 -> new Matrix(0, 1, -1, 0, size.getWidth(), 0);
                            case 180 -> new Matrix(-1, 0, 0, -1, size.getWidth(), size.getHeight());
                            default -> new Matrix(0, -1, 1, 0, 0, size.getHeight());
                        });
                show(content, 24, 100, 500, "REPEAT AFTER FOURTEEN DAYS");
            });
            liesOnItsPicture(pdf);
        }
    }

    @Test
    @DisplayName("a page whose text runs sideways is read, and shown upright")
    void sidewaysText() throws IOException {
        liesOnItsPicture(pdf(0, content -> {
            content.transform(new Matrix(0, 1, -1, 0, PDRectangle.LETTER.getWidth(), 0));
            show(content, 24, 100, 500, "REPEAT AFTER FOURTEEN DAYS");
        }));
    }

    /** Ink is where the box is, and nowhere else. */
    private static void liesOnItsPicture(byte[] pdf) throws IOException {
        Paper paper = PaperReader.read(pdf, "turned.pdf", PaperLimits.USUAL, row -> false);
        Page page = paper.pages().get(0);
        assertThat(page.rows()).extracting(Row::text).containsExactly("REPEAT AFTER FOURTEEN DAYS");
        PagePicture.Drawn drawn = PagePicture.draw(pdf, "turned.pdf", 1, 1200);
        assertThat(drawn.width()).isCloseTo(page.width(), within(.1));
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(drawn.png()));
        double scale = picture.getWidth() / drawn.width();
        Box box = page.rows().get(0).first().box();
        int inside = 0;
        int outside = 0;
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if ((picture.getRGB(x, y) & 0xff) < 128) {
                    boolean on = x >= (box.left() - 2) * scale
                            && x <= (box.right() + 2) * scale
                            && y >= (box.top() - 2) * scale
                            && y <= (box.bottom() + 2) * scale;
                    inside += on ? 1 : 0;
                    outside += on ? 0 : 1;
                }
            }
        }
        assertThat(inside).isGreaterThan(100);
        assertThat(outside).isZero();
    }

    private interface Drawing {
        void on(PDPageContentStream content) throws IOException;
    }

    private static List<String> rows(int turn, Drawing drawing) throws IOException {
        Paper paper = PaperReader.read(pdf(turn, drawing), "geometry.pdf", PaperLimits.USUAL, row -> false);
        return paper.rows().stream().map(Row::text).toList();
    }

    private static byte[] pdf(int turn, Drawing drawing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.LETTER);
            page.setRotation(turn);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                drawing.on(content);
            }
            document.save(out);
        }
        return out.toByteArray();
    }

    private static void show(PDPageContentStream content, float size, float left, float base, String text)
            throws IOException {
        content.beginText();
        content.setFont(FONT, size);
        content.newLineAtOffset(left, base);
        content.showText(text);
        content.endText();
    }
}
