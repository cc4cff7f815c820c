package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.demo.DemoPapers;

/** The shelf's pages as a browser without scripts gets them. */
@SuppressWarnings("NullAway.Init")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShelfTest {
    private OpenDesk desk;
    private Visitor visitor;
    private List<Path> papers;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
        visitor = new Visitor(desk);
        papers = DemoPapers.writeTo(folder.resolve("papers"));
        for (Path paper : papers) {
            assertThat(visitor.upload(paper.getFileName().toString(), Files.readAllBytes(paper))
                            .text())
                    .contains("taken in as a");
        }
        visitor.upload("scan.pdf", blank());
    }

    @AfterAll
    void close() {
        desk.close();
    }

    static byte[] blank() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.save(out);
        }
        return out.toByteArray();
    }

    @Test
    void theShelfSaysFirstWhatIsMissing() {
        String text = visitor.get("/shelf").text();
        assertThat(text)
                .contains("3 products; something is missing or old for 2")
                .contains("Ironweir 4L EPA Reg. No. 99990-22")
                .contains("No label; 2 safety sheets: the newest counts")
                .contains("needs typing");
    }

    @Test
    void theSameFileTwiceAndOneThatIsNoPaperAreSaid() throws IOException {
        assertThat(visitor.upload("again.pdf", Files.readAllBytes(papers.get(0)))
                        .text())
                .contains("was in the book already, nothing was changed");
        Visitor.Page refused = visitor.upload("letter.txt", "Dear neighbour".getBytes(StandardCharsets.UTF_8));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Not taken in.", "neither as a safety sheet");
        assertThat(visitor.upload("../../etc/x\"<b>.pdf", "%PDF-1.7".getBytes(StandardCharsets.UTF_8))
                        .body())
                .doesNotContain("<b>")
                .contains("broken or cut off");
    }

    @Test
    void everyValueOfTheCardLeadsToThePageWithItsWordsMarked() {
        Visitor.Page card = visitor.get("/shelf/papers/1/card?container=2.5%20gal");
        assertThat(card.text())
                .contains("Atrazine in a container of 2.5 gal9.99 lb", "about 7.5 times the dose", "1-800-222-1222");
        Matcher links = Pattern.compile("href=\"(/shelf/papers/\\d+\\?at=\\d+)#picture\"")
                .matcher(card.body());
        int seen = 0;
        while (links.find()) {
            Visitor.Page page = visitor.get(links.group(1));
            assertThat(page.status()).as(links.group(1)).isEqualTo(200);
            assertThat(page.body()).as(links.group(1)).contains("<rect x=", "; marked: ", ".png");
            seen++;
        }
        assertThat(seen).isGreaterThan(30);
    }

    @Test
    void aWrongContainerIsSaidBesideItsBoxAndKept() {
        Visitor.Page page = visitor.get("/shelf/papers/1/card?container=two%20jugs");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.text()).contains("expected a volume or a weight more than 0");
        assertThat(page.body()).contains("value=\"two jugs\"");
    }

    @Test
    void picturesAndFilesAndCardsAreHandedOut() throws IOException {
        Visitor.Page picture = visitor.get("/shelf/papers/1/pages/1.png");
        assertThat(picture.response().getContentType()).isEqualTo("image/png");
        assertThat(picture.response().getContentAsByteArray()).startsWith(0x89, 'P', 'N', 'G');
        assertThat(visitor.get("/shelf/papers/1/pages/99.png").status()).isEqualTo(404);
        Visitor.Page file = visitor.get("/shelf/papers/1/file");
        assertThat(file.response().getContentAsByteArray()).isEqualTo(Files.readAllBytes(papers.get(0)));
        assertThat(file.header("Content-Disposition")).startsWith("attachment");
        assertThat(visitor.get("/shelf/papers/1/card.pdf").body()).startsWith("%PDF-");
    }

    @Test
    void twoRevisionsStandSideBySide() {
        Visitor.Page page = visitor.get("/shelf/compare?before=3&after=4");
        assertThat(page.text()).contains("kinds of value changed", "7.8 mg/kg", "4.5 mg/kg");
        assertThat(page.body()).contains("/shelf/papers/3?at=", "/shelf/papers/4?at=");
    }

    @Test
    void aScanNeedsTypingAndWhatIsTypedIsWrittenDownForGood() {
        Visitor.Page empty = visitor.get("/shelf/papers/5");
        assertThat(empty.text()).contains("it needs typing", "Who types?");
        assertThat(desk.book().papers().get(4).paper().pages()).isEqualTo(1);
        assertThat(empty.body()).contains("/shelf/papers/5/pages/1.png");
        Visitor.Page refused = visitor.post("/shelf/papers/5/typed", Map.of("v0", "Tansyrun 2"));
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("Who typed it?");
        assertThat(refused.body()).contains("value=\"Tansyrun 2\"");
        assertThat(visitor.post("/shelf/papers/5/typed", Map.of("v0", "Tansyrun 2", "who", "M. Hale"))
                        .status())
                .isEqualTo(302);
        assertThat(visitor.get("/shelf/papers/5").text()).contains("Tansyrun 2 typed by hand by M. Hale");
    }

    @Test
    void aFileThatIsTooLargeIsRefusedInASentence() throws Exception {
        int before = desk.book().papers().size();
        HttpClient client = HttpClient.newHttpClient();
        HttpResponse<String> form = client.send(
                HttpRequest.newBuilder(URI.create(desk.address() + "/shelf")).build(),
                HttpResponse.BodyHandlers.ofString());
        Matcher token = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"").matcher(form.body());
        assertThat(token.find()).isTrue();
        String cookie = form.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
        String edge = "----edge";
        byte[] head = ("--" + edge + "\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token.group(1)
                        + "\r\n--" + edge
                        + "\r\nContent-Disposition: form-data; name=\"papers\"; filename=\"big.pdf\"\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8);
        byte[] tail = ("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(desk.address() + "/shelf/papers"))
                        .header("Content-Type", "multipart/form-data; boundary=" + edge)
                        .header("Cookie", cookie)
                        .POST(HttpRequest.BodyPublishers.concat(
                                HttpRequest.BodyPublishers.ofByteArray(head),
                                HttpRequest.BodyPublishers.ofByteArray(new byte[33 << 20]),
                                HttpRequest.BodyPublishers.ofByteArray(tail)))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("None of them was taken in", "papers add FOLDER");
        assertThat(desk.book().papers()).hasSize(before);
    }

    @Test
    void programsGetTheSame() {
        assertThat(visitor.get("/api/papers").body()).contains("\"file_name\" : \"ironweir-4l-sheet.pdf\"");
        assertThat(visitor.get("/api/papers/1").body()).contains("\"marks\"", "\"registration\" : \"99990-22\"");
        assertThat(visitor.get("/api/papers/1/card?container=2.5%20gal").body())
                .contains("\"figure\" : \"container-content\"");
        assertThat(visitor.get("/api/papers/2/card").body()).contains("is not a safety sheet");
        assertThat(visitor.get("/api/papers/99").status()).isEqualTo(404);
        assertThat(visitor.get("/api/papers/1/card?container=x").status()).isEqualTo(400);
    }

    @Test
    void aPostWithoutItsTokenTakesNothingIn() throws Exception {
        int before = desk.book().papers().size();
        assertThat(visitor.uploadWithoutToken("x.pdf", Files.readAllBytes(papers.get(0)))
                        .status())
                .isEqualTo(403);
        assertThat(desk.book().papers()).hasSize(before);
        assertThat(visitor.get("/shelf/papers/77").status()).isEqualTo(404);
        assertThat(visitor.get("/shelf/papers/2/card").status()).isEqualTo(404);
    }

    /** The label's values wait; what is confirmed is on the shelf of the season at once, with its source. */
    @Test
    void labelValuesAreDecidedBesideTheirPage() {
        Visitor.Page page = visitor.get("/shelf/papers/2/confirm?at=terms.corn.rei-hours");
        assertThat(page.text())
                .contains(
                        "values wait for a look at their page",
                        "Restricted-entry interval",
                        "The checks see",
                        "unknown");
        assertThat(page.body()).contains("<rect x=", "/shelf/papers/2/pages/1.png", "The page says so");
        Map<String, String> yes = Map.of("at", "terms.corn.rei-hours", "does", "confirm", "who", "R. Voss");
        assertThat(visitor.post("/shelf/papers/2/confirm", Map.of("at", "terms.corn.rei-hours", "does", "confirm"))
                        .text())
                .contains("Nothing was written down.", "Who says so?");
        Visitor.Page wrong = visitor.post(
                "/shelf/papers/2/confirm",
                Map.of("at", "terms.corn.rei-hours", "does", "correct", "value", "a day", "who", "R. Voss"));
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.text()).contains("'a day' is not a whole number");
        assertThat(wrong.body()).contains("value=\"a day\"", "value=\"R. Voss\"");
        assertThat(visitor.post(
                                "/shelf/papers/2/confirm",
                                Map.of("at", "terms.corn.rei-hours", "does", "confirm", "who", "R. Voss", "saw", "24|"))
                        .text())
                .contains("has changed since the page was shown");
        assertThat(desk.book().decisions()).isEmpty();
        Visitor.Page next = visitor.post("/shelf/papers/2/confirm", yes);
        assertThat(next.status()).isEqualTo(302);
        assertThat(next.header("Location")).contains("confirm?at=terms.corn.carrier", "who=R.+Voss");
        assertThat(desk.book().decisions()).singleElement().satisfies(decision -> {
            assertThat(decision.value()).isEqualTo("12");
            assertThat(decision.page()).isEqualTo(1);
            assertThat(decision.words()).contains("12 hours");
        });
        assertThat(visitor.get("/shelf/papers/2/confirm").text()).contains("confirmed by R. Voss on");
        assertThat(visitor.get("/shelf").text()).contains("Label values (1 decided)");
        assertThat(visitor.get("/api/papers/2/values").body())
                .contains("\"verdict\" : \"confirmed\"", "\"in_force\" : null");
        assertThat(visitor.get("/shelf/papers/1/confirm").status()).isEqualTo(404);
        assertThat(visitor.get("/shelf/papers/2/confirm?at=terms.corn.nothing").status())
                .isEqualTo(404);
        assertThat(visitor.get("/shelf/papers/2/confirm?page=9").status()).isEqualTo(404);
    }

    /** Several files are read beside the desk; what became of each is said when they are done. */
    @Test
    void severalFilesComeInBesideTheDesk() throws IOException {
        Visitor.Page sent = visitor.upload(Map.of(
                "shed/again.pdf", Files.readAllBytes(papers.get(0)),
                "shed/letter.txt", "Dear neighbour".getBytes(StandardCharsets.UTF_8),
                "shed/picture.jpg", new byte[] {1, 2, 3}));
        assertThat(sent.status()).isEqualTo(302);
        Visitor.Page shelf = visitor.get("/shelf");
        while (shelf.body().contains("id=\"incoming\"")) {
            assertThat(shelf.text()).contains("of 2 files done");
            shelf = visitor.get("/shelf");
        }
        assertThat(shelf.text())
                .contains("What came in", "1 file of another kind left alone", "was in the book already")
                .contains("neither as a safety sheet");
        assertThat(visitor.get("/shelf/incoming").status()).isEqualTo(302);
    }
}
