package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.PointerInput.Kind;
import org.openqa.selenium.interactions.PointerInput.MouseButton;
import org.openqa.selenium.interactions.PointerInput.Origin;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.app.desk.shown.Shown;

/** A thing is drawn on the map, moved, taken back, saved and removed, by mouse and by finger. */
class DrawingTest {
    private static final String MAP = "/fields/" + Shown.part(DeskSeason.HOME) + "/map";
    private static final Duration SHORT = Duration.ofMillis(20);

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @ParameterizedTest
    @CsvSource({"1280,MOUSE", "1280,TOUCH", "390,MOUSE", "390,TOUCH"})
    void a_creek_is_drawn_moved_taken_back_saved_and_removed(int width, Kind kind) {
        try (Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + MAP);
            browser.find("label[for=form-line]").click();
            PointerInput pointer = new PointerInput(kind, "pointer");
            touch(browser, pointer, -60, -60);
            touch(browser, pointer, -60, 60);
            touch(browser, pointer, 60, 60);
            assertThat(places(browser)).hasSize(3);

            browser.find("#undo").click();
            List<String> two = places(browser);
            assertThat(two).hasSize(2);
            assertThat(dots(browser)).hasSize(2);

            drag(browser, pointer, dots(browser).get(1), 30, -20);
            assertThat(places(browser)).hasSize(2).startsWith(two.get(0)).doesNotContain(two.get(1));
            browser.find("#undo").click();
            assertThat(places(browser)).isEqualTo(two);

            new Select(browser.find("#kind")).selectByVisibleText("stream");
            browser.find("#called").sendKeys("Mill Creek");
            press(browser, "#shape button:not([type])", "Remove Mill Creek");
            Feature creek = features().get(0);
            assertThat(creek.kind()).isEqualTo(FeatureKind.STREAM);
            assertThat(((Feature.Line) Objects.requireNonNull(creek.shape())).points())
                    .isEqualTo(two.stream().map(DrawingTest::point).toList());

            browser.find("#around ~ .wide form button").click();
            browser.until(ExpectedConditions.textToBePresentInElementLocated(
                    By.cssSelector("section[aria-labelledby=around]"), "Nothing is on file"));
            assertThat(features()).isEmpty();
            assertThat(browser.complaints()).isEmpty();
        }
    }

    /** Presses and waits for the page that then has these words on a button. */
    private static void press(Chromium browser, String button, String words) {
        browser.find(button).click();
        browser.until(
                ExpectedConditions.presenceOfElementLocated(By.xpath("//button[normalize-space()='" + words + "']")));
    }

    /** Presses and lets go at a place, counted from the middle of the map. */
    private static void touch(Chromium browser, PointerInput pointer, int right, int down) {
        WebElement chart = shown(browser, browser.find("#chart"));
        browser.driver()
                .perform(List.of(new Sequence(pointer, 0)
                        .addAction(pointer.createPointerMove(SHORT, Origin.fromElement(chart), right, down))
                        .addAction(pointer.createPointerDown(MouseButton.LEFT.asArg()))
                        .addAction(pointer.createPointerUp(MouseButton.LEFT.asArg()))));
    }

    private static void drag(Chromium browser, PointerInput pointer, WebElement dot, int right, int down) {
        WebElement seen = shown(browser, dot);
        browser.driver()
                .perform(List.of(new Sequence(pointer, 0)
                        .addAction(pointer.createPointerMove(SHORT, Origin.fromElement(seen), 0, 0))
                        .addAction(pointer.createPointerDown(MouseButton.LEFT.asArg()))
                        .addAction(pointer.createPointerMove(SHORT, Origin.pointer(), right, 0))
                        .addAction(pointer.createPointerMove(SHORT, Origin.pointer(), 0, down))
                        .addAction(pointer.createPointerUp(MouseButton.LEFT.asArg()))));
    }

    private static WebElement shown(Chromium browser, WebElement element) {
        browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        return element;
    }

    private static List<WebElement> dots(Chromium browser) {
        return browser.driver().findElements(By.cssSelector("#drawn circle"));
    }

    private static List<String> places(Chromium browser) {
        return Objects.requireNonNull(browser.find("#places").getDomProperty("value"))
                .lines()
                .toList();
    }

    private static Point point(String place) {
        int comma = place.indexOf(',');
        return new Point(Double.parseDouble(place.substring(comma + 1)), Double.parseDouble(place.substring(0, comma)));
    }

    private List<Feature> features() {
        return desk.book().season().orElseThrow().ground().features(DeskSeason.HOME);
    }
}
