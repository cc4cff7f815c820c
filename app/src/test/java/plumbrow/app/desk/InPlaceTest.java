package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import plumbrow.app.desk.shown.Shown;

/** What happens on a page while it is used. */
class InPlaceTest {
    private static final String HOME = "/fields/" + Shown.part(DeskSeason.HOME);

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_answer_follows_what_is_typed_without_a_new_page(int width) {
        try (Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + HOME + "/weighing");
            browser.driver().executeScript("window.samePage = true");
            String before = browser.text("#answer .answer");
            WebElement price = browser.find("#i0-0");
            price.clear();
            price.sendKeys("1.05");
            browser.until(ExpectedConditions.textToBe(By.id("m0"), "changed"));
            browser.until(ExpectedConditions.textToBePresentInElementLocated(
                    By.cssSelector("#answer .answer"), "With your changed assumptions"));
            browser.until(ExpectedConditions.textToBePresentInElementLocated(
                    By.cssSelector("#answer"), "10,000 simulated seasons"));
            assertThat(browser.text("#answer .answer")).isNotEqualTo(before);
            assertThat(browser.driver().executeScript("return window.samePage")).isEqualTo(true);
            assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                    .isEqualTo("i0-0");
            assertThat(price.getAttribute("value")).isEqualTo("1.05");
            browser.picture("changed");

            price.sendKeys("x");
            browser.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector("#answer .faults")));
            assertThat(browser.text("#e0")).contains("'1.05x' is not a number");
            assertThat(price.getAttribute("aria-invalid")).isEqualTo("true");
            assertThat(browser.inaccessible()).isEmpty();
            browser.picture("fault");

            browser.driver()
                    .findElement(By.linkText("Back to the season’s assumptions"))
                    .click();
            browser.until(ExpectedConditions.textToBe(By.cssSelector("#answer .answer"), before));
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_decision_is_written_down_and_shown(int width) {
        try (Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + HOME + "/weighing");
            browser.driver()
                    .findElement(By.xpath("//label[contains(., '" + DeskSeason.BARRED + "')]"))
                    .click();
            browser.find("#choice-why").sendKeys("because");
            browser.find("#choice button").click();
            browser.until(ExpectedConditions.visibilityOfElementLocated(By.id("choice-faults")));
            assertThat(browser.text("#choice-faults")).contains("is barred and can't be chosen");
            assertThat(browser.driver().switchTo().activeElement().getAttribute("id"))
                    .isEqualTo("choice-faults");
            browser.picture("refused");

            browser.driver()
                    .findElement(By.xpath("//label[contains(., 'half rate')]"))
                    .click();
            browser.find("#choice button").click();
            browser.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".log li")));
            assertThat(browser.text(".log li")).contains("half rate", "R. Alder", "because");
            assertThat(desk.book().choices(2027)).hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_figure_answers_as_it_is_filled_in(int width) {
        try (Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + "/figures");
            browser.find("#q").sendKeys("does a change leave over");
            browser.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector("#list li"), 1));
            browser.find("#list li a").click();
            browser.until(ExpectedConditions.visibilityOfElementLocated(By.id("figure")));
            String[] values = {"97500", "55000", "88000", "69000"};
            for (int i = 0; i < values.length; i++) {
                browser.find("#i" + i).sendKeys(values[i]);
            }
            browser.until(ExpectedConditions.textToBePresentInElementLocated(By.id("result"), "−4,500"));
            browser.picture("figure-answered");
            browser.find("#i3").sendKeys("x");
            browser.until(ExpectedConditions.textToBePresentInElementLocated(By.id("e3"), "69000x"));
            assertThat(browser.find("#i3").getAttribute("aria-invalid")).isEqualTo("true");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void the_keyboard_reaches_everything(int width) {
        try (Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + HOME + "/weighing");
            long reachable = ((Number) Objects.requireNonNull(browser.driver().executeScript("""
                                    return [...document.querySelectorAll('a[href], button, summary, input:not([type=hidden]), select, textarea')]
                                      .filter(e => e.checkVisibility({visibilityProperty: true}))
                                      .filter(e => e.type !== 'radio' || e.checked).length
                                    """))).longValue();
            Set<Object> reached = new HashSet<>();
            browser.find("body").sendKeys(Keys.TAB);
            assertThat(browser.driver().switchTo().activeElement().getText()).isEqualTo("Skip to the answer");
            for (int i = 0; i < 3 * reachable; i++) {
                Object place = browser.driver().executeScript("""
                                const e = document.activeElement;
                                if (e === document.body) return null;
                                const style = getComputedStyle(e);
                                if (style.outlineStyle === 'none') return 'no ring on ' + e.outerHTML.slice(0, 80);
                                e.dataset.place ||= String(performance.now() + Math.random());
                                return e.dataset.place;
                                """);
                if (place == null || !reached.add(place)) {
                    break;
                }
                assertThat(place.toString()).doesNotContain("no ring");
                browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
            }
            assertThat(reached.size()).isGreaterThanOrEqualTo((int) reachable);
        }
    }

    /** A creek is drawn by three touches, the last taken back, a corner moved, and saved: the map has measured it. */
    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_creek_is_drawn_on_the_map_and_saved(int width) {
        try (Chromium browser = Chromium.open(width, 1400)) {
            browser.go(desk.address() + HOME + "/map");
            WebElement chart = browser.find("#chart");
            browser.find("#form-line").click();
            int side = chart.getSize().getWidth();
            Actions hand = new Actions(browser.driver());
            hand.moveToElement(chart, -side / 3, -60).click().perform();
            hand.moveToElement(chart, -side / 3, 60).click().perform();
            hand.moveToElement(chart, side / 3, 90).click().perform();
            assertThat(places(browser)).hasSize(3);
            browser.find("#undo").click();
            List<String> two = places(browser);
            assertThat(two).hasSize(2);
            hand.clickAndHold(browser.find("#drawn circle:last-child"))
                    .moveByOffset(-8, 12)
                    .release()
                    .perform();
            List<String> moved = places(browser);
            assertThat(moved).hasSize(2);
            assertThat(moved.get(0)).isEqualTo(two.get(0));
            assertThat(moved.get(1)).isNotEqualTo(two.get(1));
            new Select(browser.find("#kind")).selectByVisibleText("stream");
            browser.find("#called").sendKeys("Mill Creek");
            browser.picture("map-drawing");
            browser.find("#shape > .buttons button").click();
            browser.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".wide"), "Mill Creek"));
            assertThat(browser.text(".wide")).contains("The distance is measured on the map.");
            assertThat(browser.inaccessible()).isEmpty();
            browser.picture("map-drawn");
        }
    }

    private static List<String> places(Chromium browser) {
        String typed = browser.find("#places").getDomProperty("value");
        return typed == null || typed.isBlank() ? List.of() : typed.lines().toList();
    }
}
