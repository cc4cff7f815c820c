package plumbrow.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.ExpectedConditions;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.demo.DemoPapers;
import plumbrow.app.desk.shown.Shown;

/** Every page in a browser, on a screen and on a phone: nothing cut off, nothing complained of, nothing out of reach. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BrowserTest {
    private static final String HOME = "/fields/" + Shown.part(DeskSeason.HOME);
    private static final String AWKWARD = "/fields/" + Shown.part(DeskSeason.AWKWARD);
    private static final String STUCK = "/fields/" + Shown.part(DeskSeason.STUCK);

    private OpenDesk desk;

    @BeforeAll
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
    }

    @AfterAll
    void close() {
        desk.close();
    }

    private record Page(String name, String path) {}

    private static List<Page> pages() {
        return List.of(
                new Page("season", "/"),
                new Page("field", HOME),
                new Page("field-awkward", AWKWARD),
                new Page("weighing", HOME + "/weighing"),
                new Page("weighing-stuck", STUCK + "/weighing"),
                new Page("check", "/check"),
                new Page("check-barred", "/check?standing=unknown&protects=distribution"),
                new Page("check-field", HOME + "/check"),
                new Page("check-awkward", AWKWARD + "/check"),
                new Page("gates", "/gates"),
                new Page("gate", "/gates/right-to-save"),
                new Page("log", "/log"),
                new Page("map", HOME + "/map"),
                new Page("map-bare", AWKWARD + "/map"),
                new Page("maps", "/map"),
                new Page("figures", "/figures"),
                new Page("figure", "/figures/partial-budget"),
                new Page("ask", "/ask"),
                new Page("ask-insecticide", "/ask/insecticide?state=IA&trait=none"),
                new Page("ask-aphids", "/ask/spray-now?state=MN&count=300"),
                new Page("ask-replant", "/ask/replant?state=IL"),
                new Page("next", HOME + "/next"),
                new Page("ingredients", "/ingredients"),
                new Page("ingredient", "/ingredients/atrazine"),
                new Page("trouble", "/nothing-here"));
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void every_page_stands_in_its_window_and_is_in_reach_of_everybody(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (Chromium browser = Chromium.open(width, 900)) {
            for (Page page : pages()) {
                browser.go(desk.address() + page.path());
                browser.picture(page.name());
                softly.assertThat(browser.cutOff()).as("cut off on " + page).isEmpty();
                softly.assertThat(browser.smallTargets()).as("small on " + page).isEmpty();
                softly.assertThat(browser.complaints()).as("console of " + page).isEmpty();
                softly.assertThat(browser.inaccessible()).as("axe on " + page).isEmpty();
            }
        }
        softly.assertAll();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_demo_stands_in_its_window_field_by_field(int width) {
        SoftAssertions softly = new SoftAssertions();
        Season season = DemoBook.season();
        try (OpenDesk demo = OpenDesk.over(season).weighed();
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(demo.address() + "/");
            browser.picture("demo-season");
            softly.assertThat(browser.cutOff()).as("the demo's season").isEmpty();
            for (Field field : season.fields()) {
                String address = demo.address() + "/fields/" + Shown.part(field.name());
                for (String page : List.of(address, address + "/weighing", address + "/check")) {
                    browser.go(page);
                    softly.assertThat(browser.cutOff()).as(page).isEmpty();
                    softly.assertThat(browser.complaints()).as(page).isEmpty();
                }
            }
            browser.picture("demo-weighing");
        }
        softly.assertAll();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_shelf_its_papers_and_cards_are_in_reach_of_everybody(int width, @TempDir Path folder) throws IOException {
        SoftAssertions softly = new SoftAssertions();
        try (OpenDesk demo = OpenDesk.over(DeskSeason.of(2027)).weighed();
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(demo.address() + "/shelf");
            browser.picture("shelf-empty");
            softly.assertThat(browser.inaccessible())
                    .as("axe on the empty shelf")
                    .isEmpty();
            List<Path> papers = new ArrayList<>(DemoPapers.writeTo(folder.resolve("papers")));
            papers.add(Files.write(folder.resolve("scan.pdf"), ShelfTest.blank()));
            browser.find("#papers").sendKeys(papers.stream().map(Path::toString).collect(Collectors.joining("\n")));
            browser.find("main form button").click();
            browser.until(ExpectedConditions.and(
                    ExpectedConditions.presenceOfElementLocated(By.id("came")),
                    ExpectedConditions.numberOfElementsToBe(By.id("incoming"), 0)));
            browser.picture("shelf-came");
            softly.assertThat(browser.text("#came + ul").lines().count()).isEqualTo(5);
            softly.assertThat(browser.inaccessible()).as("axe on what came in").isEmpty();
            for (Page page : List.of(
                    new Page("shelf", "/shelf"),
                    new Page("card", "/shelf/papers/1/card?container=2.5+gal"),
                    new Page("card-old", "/shelf/papers/3/card?container=none"),
                    new Page("reading", "/shelf/papers/1?at=3"),
                    new Page("reading-label", "/shelf/papers/2?at=6"),
                    new Page("reading-scan", "/shelf/papers/5"),
                    new Page("confirm", "/shelf/papers/2/confirm"),
                    new Page("confirm-unclear", "/shelf/papers/2/confirm?at=terms.corn.days-between"),
                    new Page("compare", "/shelf/compare?before=3&after=4"))) {
                browser.go(demo.address() + page.path());
                browser.picture(page.name());
                softly.assertThat(browser.cutOff()).as("cut off on " + page).isEmpty();
                softly.assertThat(browser.smallTargets()).as("small on " + page).isEmpty();
                softly.assertThat(browser.complaints())
                        .as("console of " + page)
                        .allMatch(said -> said.contains("status of 422"));
                softly.assertThat(browser.inaccessible()).as("axe on " + page).isEmpty();
            }
        }
        softly.assertAll();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_empty_book_and_a_sheet_of_paper_look_right_too(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (OpenDesk empty = OpenDesk.over();
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(empty.address() + "/");
            browser.picture("empty");
            softly.assertThat(browser.cutOff()).isEmpty();
            softly.assertThat(browser.inaccessible()).isEmpty();
            browser.go(desk.address() + HOME + "/weighing");
            browser.paper();
            browser.picture("printed");
            softly.assertThat(browser.cutOff()).isEmpty();
            softly.assertThat(browser.find("#assumptions").isDisplayed()).isFalse();
        }
        softly.assertAll();
    }
}
