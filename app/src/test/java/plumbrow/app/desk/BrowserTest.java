package plumbrow.app.desk;

import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.app.demo.DemoBook;
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
                new Page("figures", "/figures"),
                new Page("figure", "/figures/partial-budget"),
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
                for (String page : List.of(address, address + "/weighing")) {
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
            softly.assertThat(browser.find("#outlook").isDisplayed()).isFalse();
        }
        softly.assertAll();
    }
}
