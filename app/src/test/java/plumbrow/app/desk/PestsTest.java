package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.pestpage.PestNames;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.PestPages;
import plumbrow.advice.pestpage.PestWords;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.PestPaper;

/** The pages of weeds and insects, on screen, on paper and for programs, over the demo's book. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PestsTest {
    private static final Season SEASON = DemoBook.season();

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(SEASON);
        visitor = new Visitor(desk);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    private static PestPage page(String name) {
        return PestPages.of(SEASON, name).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"waterhemp", "burcucumber", "corn rootworm", "soybean aphid", "kochia"})
    void thePageSaysWhatTheRecordSays(String name) {
        PestPage page = page(name);
        var shown = visitor.get("/pests/" + name.replace(" ", "%20"));
        assertThat(shown.status()).isEqualTo(200);
        assertThat(shown.text())
                .contains(
                        page.sentence(),
                        PestWords.capital(name),
                        page.cautions().get(0));
        page.thresholds().stream()
                .filter(one -> one.lookUp() == null)
                .forEach(one -> assertThat(shown.text()).contains(PestWords.threshold(one)));
        page.plans().forEach(plan -> assertThat(shown.text()).contains(plan.says()));
        page.failed().forEach(one -> assertThat(shown.text()).contains(PestWords.failed(one)));
        assertThat(visitor.get("/api/pests/" + name.replace(" ", "%20")).text())
                .isEqualTo(Json.of(page).replaceAll("\\s+", " ").strip());
    }

    @Test
    void theDemoShowsWhereTwoPassesHoldAndWhereNot() {
        assertThat(page("burcucumber").plans().get(0).holds()).isTrue();
        assertThat(page("waterhemp").plans().get(0).holds()).isFalse();
        assertThat(visitor.get("/pests/waterhemp").text()).contains("Group 9 fails", "2025-11-05: Stillmeadow K");
    }

    @Test
    void theListAndTheFieldLeadThere() {
        assertThat(visitor.get("/pests").body())
                .contains("href=\"/pests/waterhemp\"", "href=\"/pests/corn%20rootworm\"");
        assertThat(visitor.get("/fields/South%20Slough").body()).contains("href=\"/pests/giant%20foxtail\"");
        assertThat(visitor.get("/pests/dragon").status()).isEqualTo(404);
        assertThat(visitor.get("/api/pests/dragon").text()).contains("Nothing is kept of “dragon”");
    }

    @Test
    void everyPestOfTheDemoPrintsOnOnePage() throws IOException {
        for (var name : PestNames.of(SEASON)) {
            try (PDDocument document = Loader.loadPDF(PestPaper.print(page(name.name())))) {
                assertThat(document.getNumberOfPages()).as(name.name()).isEqualTo(1);
            }
        }
        var paper = visitor.get("/pests/corn%20rootworm/page.pdf");
        assertThat(paper.header("Content-Disposition")).contains("corn-rootworm.pdf");
        assertThat(paper.response().getContentAsByteArray()).isEqualTo(PestPaper.print(page("corn rootworm")));
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void thePagesAreInReachOfEverybody(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (Chromium browser = Chromium.open(width, 900)) {
            for (String path : new String[] {
                "/pests", "/pests/waterhemp", "/pests/burcucumber", "/pests/corn%20rootworm", "/pests/kochia"
            }) {
                browser.go(desk.address() + path);
                softly.assertThat(browser.cutOff()).as("cut off on " + path).isEmpty();
                softly.assertThat(browser.smallTargets()).as("small on " + path).isEmpty();
                softly.assertThat(browser.complaints()).as("console of " + path).isEmpty();
                softly.assertThat(browser.inaccessible()).as("axe on " + path).isEmpty();
            }
        }
        softly.assertAll();
    }
}
