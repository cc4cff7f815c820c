package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.demo.DemoPapers;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.ocr.Tesseract;

/** What a person puts right on a paper that was read, at the desk: on the card at once, the reading kept, in the record for good. */
@SuppressWarnings("NullAway.Init")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class MendingTest {
    private OpenDesk desk;
    private Visitor visitor;
    private List<Path> papers;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
        visitor = new Visitor(desk);
        papers = DemoPapers.writeTo(folder.resolve("papers"));
        visitor.upload("sheet.pdf", Files.readAllBytes(papers.get(0)));
        visitor.upload("label.pdf", Files.readAllBytes(papers.get(1)));
    }

    @AfterAll
    void close() {
        desk.close();
    }

    /** The pages of a PDF as pictures, as a scanner makes them. */
    static byte[] scanned(byte[] pdf) throws IOException {
        try (PDDocument from = Loader.loadPDF(pdf);
                PDDocument to = new PDDocument()) {
            PDRectangle size = from.getPage(0).getCropBox();
            BufferedImage drawn = new PDFRenderer(from).renderImageWithDPI(0, 250, ImageType.GRAY);
            PDPage page = new PDPage(new PDRectangle(size.getWidth(), size.getHeight()));
            to.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(to, page)) {
                content.drawImage(LosslessFactory.createFromImage(to, drawn), 0, 0, size.getWidth(), size.getHeight());
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            to.save(out);
            return out.toByteArray();
        }
    }

    private int at(int paper, String title) {
        Matcher line = Pattern.compile(
                        "\\?at=(\\d+)&amp;who=[^\"]*#picture\"[^>]*><span class=\"about\">" + Pattern.quote(title))
                .matcher(visitor.get("/shelf/papers/" + paper).body());
        assertThat(line.find()).as(title).isTrue();
        return Integer.parseInt(line.group(1));
    }

    private Visitor.Page say(int paper, String does, int at, String value, String who) {
        Map<String, String> typed = new HashMap<>(Map.of("does", does, "value", value, "who", who));
        typed.put("at", String.valueOf(at));
        String page = "/shelf/papers/" + paper + "?at=" + at;
        return visitor.post(page, "/shelf/papers/" + paper + "/mends", typed);
    }

    @Test
    void aValueTypedOverIsOnTheCardWithItsReadingKept() {
        int at = at(1, "Flash point");
        Visitor.Page page = visitor.get("/shelf/papers/1?at=" + at);
        assertThat(page.text()).contains("What the page says", "It says what I typed", "It doesn’t say it");
        assertThat(say(1, "correct", at, "71 °C", "R. Voss").status()).isEqualTo(302);
        assertThat(visitor.get("/shelf/papers/1?at=" + at).text())
                .contains("71 °C", "typed over by R. Voss on", "read: ");
        assertThat(visitor.get("/api/papers/1").body()).contains("typed over");
        Mend last = desk.book().mends(desk.book().papers().get(0).sha256()).get(0);
        assertThat(last.value()).isEqualTo("71 °C");
        assertThat(last.was()).isNotBlank().isNotEqualTo("71 °C");
        assertThat(last.words()).isNotBlank();
        assertThat(say(1, "take-back", at, "", "R. Voss").status()).isEqualTo(302);
        assertThat(visitor.get("/shelf/papers/1?at=" + at).text()).doesNotContain("typed over by");
    }

    @Test
    void firstAidTypedOverIsOnTheCardByWhom() {
        int at = at(1, "First aid");
        String typed = "eyes: Rinse with clean water for twenty minutes.";
        assertThat(say(1, "correct", at, typed, "R. Voss").status()).isEqualTo(302);
        assertThat(visitor.get("/shelf/papers/1/card").text())
                .contains("Rinse with clean water for twenty minutes.", "typed over by R. Voss");
        say(1, "take-back", at, "", "R. Voss");
    }

    @Test
    void whatCantBeSoIsSaidAndWhatWasTypedStays() {
        int at = at(1, "Flash point");
        Visitor.Page vague = say(1, "correct", at, "rather warm", "R. Voss");
        assertThat(vague.status()).isEqualTo(422);
        assertThat(vague.text())
                .contains("Nothing was written down.", "can't be read as Flash point; expected something like: 62 °C");
        assertThat(vague.body()).contains(">rather warm</textarea>", "value=\"R. Voss\"");
        assertThat(say(1, "correct", at, "71 °C", " ").text()).contains("Who says so?");
        assertThat(say(1, "correct", at, "", "R. Voss").text()).contains("Nothing was typed for Flash point");
        assertThat(say(1, "shrug", at, "", "R. Voss").text()).contains("expected one of confirm, correct, strike");
        assertThat(say(1, "correct", 9999, "x", "R. Voss").text()).contains("no value number 9999");
        assertThat(say(1, "belongs", at, "Nothing 9", "R. Voss").text()).contains("has no product “Nothing 9”");
        assertThat(say(1, "add", at, "x", "R. Voss").text()).contains("Choose what is added");
        assertThat(say(1, "take-back", at(1, "Product name"), "", "R. Voss").text())
                .contains("Nothing was said of Product name");
    }

    /** A word about a value that somebody else changed meanwhile is not taken. */
    @Test
    void aPageThatIsNoLongerSoIsRefused() {
        int at = at(1, "Product name");
        Map<String, String> stale =
                Map.of("does", "confirm", "at", String.valueOf(at), "who", "R. Voss", "saw", "Product name|other|");
        assertThat(visitor.post("/shelf/papers/1?at=" + at, "/shelf/papers/1/mends", stale)
                        .text())
                .contains("has changed since the page was shown");
    }

    @Test
    void aNameANumberAndAProductLinkFileThePaper() {
        int at = at(2, "EPA registration number");
        say(2, "correct", at, "99990-77", "R. Voss");
        assertThat(desk.book().papers().get(1).paper().registration()).isEqualTo("99990-77");
        assertThat(visitor.get("/shelf").text()).contains("99990-77");
        say(2, "take-back", at, "", "R. Voss");
        String product = desk.book().season().orElseThrow().shelf().products().stream()
                .filter(each -> each.kind() != plumbrow.advice.shelf.ProductKind.SEED)
                .findFirst()
                .orElseThrow()
                .name();
        say(2, "belongs", 0, product, "R. Voss");
        assertThat(desk.book().papers().get(1).paper().product()).isEqualTo(product);
        assertThat(visitor.get("/shelf/papers/2/confirm").text())
                .contains(product)
                .doesNotContain("has no product of this name");
        say(2, "belongs", 0, "", "R. Voss");
        assertThat(desk.book().papers().get(1).paper().product()).isNotEqualTo(product);
    }

    /** A scanned sheet: nothing of it counts, files it or stands on the card until somebody has held it against the page. */
    @Test
    void aScanCountsValueByValue() throws IOException {
        assumeTrue(new Tesseract().ready(), Tesseract.INSTALL);
        assertThat(visitor.upload("scan.pdf", scanned(Files.readAllBytes(papers.get(0))))
                        .text())
                .contains("taken in as a safety sheet");
        int scan = desk.book().papers().size();
        assertThat(desk.book().papers().get(scan - 1).paper().product()).isEmpty();
        Visitor.Page page = visitor.get("/shelf/papers/" + scan);
        assertThat(page.text())
                .contains(
                        "read by OCR, not yet confirmed",
                        "were read by OCR and count once",
                        "held it against the page");
        assertThat(visitor.get("/shelf/papers/" + scan + "/card").text()).contains("read by OCR as “");
        int name = at(scan, "Product name");
        Visitor.Page next = say(scan, "confirm", name, "", "R. Voss");
        assertThat(next.header("Location"))
                .as("goes on to the next that waits")
                .contains("at=")
                .doesNotContain("at=" + name + "&");
        assertThat(desk.book().papers().get(scan - 1).paper().product()).isNotEmpty();
        assertThat(visitor.get("/shelf/papers/" + scan).text()).contains("confirmed by R. Voss");
    }
}
