package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.json.Json;

/** The season picture while it is used: passes dragged, moved by keys, typed, kept and undone. */
class CalendarPageTest {
    private static final String FIELD = "/fields/" + Shown.part(VineSeason.FIELD) + "/season";
    private static final String PAGE = FIELD + "?program=" + Shown.part(VineSeason.PROGRAM);
    private static final Season SEASON = VineSeason.season();

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.over(SEASON);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void a_pass_is_dragged_moved_by_keys_kept_and_undone(int width) {
        try (Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + PAGE);
            browser.driver().executeScript("window.samePage = true");
            assertThat(browser.inaccessible()).isEmpty();
            assertThat(browser.cutOff()).isEmpty();
            assertThat(browser.smallTargets()).isEmpty();
            browser.picture("season");
            String before = browser.text("#trial .answer");

            WebElement mark = mark(browser, 4);
            new Actions(browser.driver()).scrollToElement(mark).perform();
            new Actions(browser.driver())
                    .clickAndHold(mark)
                    .moveByOffset(10, 0)
                    .moveByOffset(width > 1000 ? 60 : 20, 0)
                    .release()
                    .perform();
            browser.until(ExpectedConditions.attributeToBe(By.id("trial"), "data-how", "whole"));
            assertThat(browser.text("#trial .answer")).startsWith("So changed, Before and after earns");
            String moved = value(browser, "#date4");
            assertThat(moved).isGreaterThan("2026-05-30").isLessThan("2026-07-01");
            assertThat(value(browser, "#date5")).isEqualTo(moved);
            assertThat(browser.text("#trial")).contains("10,000 simulated seasons", "kept: $");

            browser.driver().executeScript("document.getElementById('trial').dataset.how = ''");
            WebElement again = mark(browser, 4);
            browser.driver().executeScript("arguments[0].focus()", again);
            browser.driver().switchTo().activeElement().sendKeys(Keys.ARROW_LEFT);
            browser.until(ExpectedConditions.attributeToBe(By.id("trial"), "data-how", "whole"));
            assertThat(value(browser, "#date4"))
                    .isEqualTo(java.time.LocalDate.parse(moved).minusDays(1).toString());
            assertThat(browser.driver().switchTo().activeElement().getAttribute("data-pass"))
                    .isEqualTo("4");
            browser.picture("season-moved");
            assertThat(browser.inaccessible()).isEmpty();

            browser.find("#back").click();
            browser.find("#back").click();
            browser.until(ExpectedConditions.textToBe(By.cssSelector("#trial .answer"), before));
            assertThat(value(browser, "#date4")).isEqualTo("2026-05-30");
            assertThat(browser.driver().executeScript("return window.samePage")).isEqualTo(true);
            assertThat(desk.book().season()).contains(SEASON);

            WebElement rate = browser.find("#rate4");
            rate.clear();
            rate.sendKeys("500");
            browser.until(ExpectedConditions.textToBePresentInElementLocated(By.id("e4"), "the label is the law"));
            rate.clear();
            rate.sendKeys("22");
            browser.until(ExpectedConditions.textToBePresentInElementLocated(
                    By.cssSelector("#trial .answer"), "So changed, Before and after"));
            browser.find("button[formaction]").click();
            browser.until(ExpectedConditions.visibilityOfElementLocated(By.cssSelector(".told")));
            assertThat(browser.text(".told")).contains("Before and after, moved is in the book as one more program.");
            Program kept = desk.book().season().orElseThrow().programs(VineSeason.FIELD).stream()
                    .filter(program -> program.name().equals("Before and after, moved"))
                    .findFirst()
                    .orElseThrow();
            assertThat(Objects.requireNonNull(kept.passes().get(3).rate()).value())
                    .isEqualTo(22);
            browser.find(".told button").click();
            browser.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(".told"), "Undone"));
            assertThat(desk.book().season()).contains(SEASON);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void the_form_does_the_same_without_a_script() {
        Visitor visitor = new Visitor(desk);
        assertThat(visitor.get(PAGE).text()).contains("Before and after as it is kept earns", "The days in words");
        var typed = visitor.post(FIELD, FIELD, typed("2026-06-03", "20"));
        assertThat(typed.status()).isEqualTo(200);
        assertThat(typed.text()).contains("So changed, Before and after earns");
        assertThat(typed.body()).contains("value=\"2026-06-03\"", "value=\"20\"");
        assertThat(desk.book().season()).contains(SEASON);

        Map<String, String> keep = typed("2026-06-03", "20");
        keep.put("as", "changed");
        keep.put("seen", visitor.get(PAGE).hidden("seen"));
        var kept = visitor.post(FIELD, FIELD + "/keep", keep);
        assertThat(kept.status()).isEqualTo(302);
        assertThat(visitor.get(Objects.requireNonNull(kept.header("Location"))).text())
                .contains("Before and after is changed in the book.");
        assertThat(desk.book().season()).isNotEqualTo(java.util.Optional.of(SEASON));
        Map<String, String> undo = Map.of("kept", kept.header("Location").replaceAll(".*&kept=", ""));
        visitor.post(FIELD, FIELD + "/undo", undo);
        assertThat(desk.book().season()).contains(SEASON);
        assertThat(visitor.get(visitor.post(FIELD, FIELD + "/undo", undo).header("Location"))
                        .text())
                .contains("can’t be undone any more");
    }

    @Test
    void what_cant_be_read_stays_in_its_box_with_a_sentence() {
        Visitor visitor = new Visitor(desk);
        var junk = visitor.post(FIELD, FIELD, typed("next week", "20"));
        assertThat(junk.status()).isEqualTo(422);
        assertThat(junk.text()).contains("'next week' is no day for pass 4");
        assertThat(junk.body()).contains("value=\"next week\"");
        Map<String, String> much = typed("2026-06-03", "4000");
        much.put("as", "new");
        much.put("name", "too much");
        much.put("seen", visitor.get(PAGE).hidden("seen"));
        var refused = visitor.post(FIELD, FIELD + "/keep", much);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.text()).contains("the label is the law");
        assertThat(desk.book().season()).contains(SEASON);
        assertThat(visitor.get(FIELD + "?program=none").status()).isEqualTo(404);
        assertThat(visitor.get("/fields/nowhere/season").status()).isEqualTo(404);
    }

    @Test
    void programs_get_the_same_numbers_or_a_sentence() {
        Visitor visitor = new Visitor(desk);
        String api = "/api" + PAGE;
        var plain = visitor.get(api + "&pass=4&date=2026-06-03&rate=30");
        assertThat(plain.status()).isEqualTo(200);
        Season season = desk.book().season().orElseThrow();
        var trial = new plumbrow.advice.calendar.SeasonTrials(season, plumbrow.advice.weighing.WeighingOptions.DEFAULT)
                .whole(
                        season.field(VineSeason.FIELD).orElseThrow(),
                        VineSeason.PROGRAM,
                        java.util.List.of(
                                new plumbrow.advice.calendar.PassChange(4, java.time.LocalDate.of(2026, 6, 3), 30.0)));
        assertThat(plain.body()).isEqualTo(Json.of(trial));
        assertThat(visitor.get(api + "&pass=4&date=soon").status()).isEqualTo(400);
        assertThat(visitor.get(api + "&date=2026-06-03").body()).contains("Say which pass");
        assertThat(visitor.get(api + "&pass=44&date=2026-06-03").status()).isEqualTo(422);
        assertThat(visitor.get("/api" + FIELD + "?program=none").status()).isEqualTo(404);
    }

    private static Map<String, String> typed(String date, String rate) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("program", VineSeason.PROGRAM);
        typed.put("pass", "4");
        typed.put("date", date);
        typed.put("rate", rate);
        return typed;
    }

    private static WebElement mark(Chromium browser, int pass) {
        return browser.driver().findElements(By.cssSelector("#trial .handle[data-pass='" + pass + "']")).stream()
                .filter(WebElement::isDisplayed)
                .findFirst()
                .orElseThrow();
    }

    private static String value(Chromium browser, String box) {
        return Objects.requireNonNull(browser.find(box).getDomProperty("value"));
    }
}
