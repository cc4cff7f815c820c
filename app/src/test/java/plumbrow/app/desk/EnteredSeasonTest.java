package plumbrow.app.desk;

import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import plumbrow.advice.season.Season;

/** From an empty book to two programs that are checked and compared, by a browser alone. What is typed and pressed is counted. */
class EnteredSeasonTest {
    private static final int MOST_INPUTS = 40;
    private static final int MOST_TAPS = 12;

    private int inputs;
    private int taps;

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_empty_book_becomes_a_field_with_two_programs_compared(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (OpenDesk desk = OpenDesk.over();
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + "/season/start");
            looked(browser, softly, "enter-start");
            fill(browser, "season.adviser", "R. Alder");
            fill(browser, "fields.field", "East 80");
            fill(browser, "fields.acres", "78.4");
            choose(browser, "fields.crop", "corn");
            choose(browser, "fields.state", "IA");
            fill(browser, "fields.county", "Adams");
            press(browser, "main form button");
            browser.until(ExpectedConditions.urlContains("/fields/East%2080/enter"));
            looked(browser, softly, "enter-steps");

            fill(browser, "price.b", "4.4");
            fill(browser, "price.a", "3.6");
            fill(browser, "price.c", "5.4");
            fill(browser, "yield.b", "190");
            fill(browser, "yield.a", "150");
            fill(browser, "yield.c", "220");
            fill(browser, "handling.b", "0.35");
            press(browser, "form[action*='/enter/money'] > .buttons button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("#money .there")));

            fill(browser, "insects.insect", "western corn rootworm");
            choose(browser, "insects.measure", "node injury");
            fill(browser, "insects.pressure_likely", "0.9");
            fill(browser, "insects.loss_likely_pct", "15");
            press(browser, "form[action*='/enter/insect'] > .buttons button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("#pests .there")));

            fill(browser, "tag.product", "Hollowbrook 108");
            fill(browser, "tag.price_usd", "240");
            fill(browser, "seeds.seeds_per_unit", "80000");
            press(browser, "form[action*='/enter/seed'] > .buttons button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("#seeds .there")));

            // A slip of the hand is said beside its box, and what was typed stays.
            WebElement product = browser.find("form[action*='/enter/product']");
            fill(product, "shelf.product", "Stonefly 3G");
            choose(product, "shelf.kind", "insecticide");
            fill(product, "shelf.price_usd", "3.10");
            choose(product, "shelf.priced_per", "lb");
            fill(product, "label_uses.low_rate", "3");
            fill(product, "label_uses.high_rate", "6");
            choose(product, "label_uses.rate_unit", "lb/ac");
            fill(product, "control.pest", "western corn rotworm");
            fill(product, "control.control_likely", "0.55");
            press(browser, "form[action*='/enter/product'] > .buttons button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.id("choice-faults")));
            softly.assertThat(browser.text("#fault-box-control-pest")).contains("did you mean western corn rootworm?");
            looked(browser, softly, "enter-fault");
            fill(browser, "control.pest", "western corn rootworm");
            press(browser, "form[action*='/enter/product'] > .buttons button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector("#products .there")));

            press(browser, "#programs a.button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.id("trips")));
            looked(browser, softly, "build-first");
            choose(browser, "t0.what", "Hollowbrook 108");
            fill(browser, "t0.rate", "34");
            press(browser, "#program > .buttons button");
            browser.until(ExpectedConditions.presenceOfElementLocated(By.cssSelector(".built")));
            press(browser, ".built a[href*='as=copy']");
            browser.until(ExpectedConditions.urlContains("as=copy"));
            choose(browser, "t1.what", "Stonefly 3G");
            fill(browser, "t1.rate", "6");
            choose(browser, "t1.method", "in furrow");
            browser.until(ExpectedConditions.textToBePresentInElementLocated(By.id("trial"), "Against the baseline"));
            looked(browser, softly, "build-second");
            press(browser, "#program > .buttons button");
            browser.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector(".built > li"), 2));
            looked(browser, softly, "built");
            press(browser, ".built + .buttons a.button");
            browser.until(ExpectedConditions.urlContains("/weighing"));
            softly.assertThat(browser.text(".answer")).isNotBlank();
            softly.assertThat(browser.text("main")).contains("Hollowbrook 108, Stonefly 3G");
            softly.assertThat(inputs).as("boxes filled in").isLessThanOrEqualTo(MOST_INPUTS);
            softly.assertThat(taps).as("buttons pressed").isLessThanOrEqualTo(MOST_TAPS);

            Season season = desk.book().written().orElseThrow();
            softly.assertThat(season.programs("East 80")).hasSize(2);
            browser.go(desk.address() + "/history");
            looked(browser, softly, "history");
            browser.go(desk.address() + "/season");
            looked(browser, softly, "enter-tables");
            browser.go(desk.address() + "/season/fields");
            looked(browser, softly, "enter-table");
            browser.go(desk.address() + "/season/fields/row/2");
            looked(browser, softly, "enter-row");
            browser.go(desk.address() + "/season/terms/new?product=Stonefly%203G");
            looked(browser, softly, "enter-row-new");
        }
        softly.assertAll();
    }

    private static void looked(Chromium browser, SoftAssertions softly, String name) {
        browser.picture(name);
        softly.assertThat(browser.cutOff()).as("cut off on " + name).isEmpty();
        softly.assertThat(browser.smallTargets()).as("small on " + name).isEmpty();
        softly.assertThat(browser.inaccessible()).as("axe on " + name).isEmpty();
        softly.assertThat(browser.complaints())
                .as("console of " + name)
                .allMatch(said -> said.contains("status of 422"));
    }

    private void fill(Chromium browser, String name, String text) {
        fill(browser.find("main"), name, text);
    }

    private void fill(WebElement within, String name, String text) {
        inputs++;
        WebElement box = within.findElement(By.cssSelector("[name='" + name + "']"));
        box.clear();
        box.sendKeys(text + Keys.TAB);
    }

    private void choose(Chromium browser, String name, String word) {
        choose(browser.find("main"), name, word);
    }

    private void choose(WebElement within, String name, String word) {
        inputs++;
        new Select(within.findElement(By.cssSelector("[name='" + name + "']"))).selectByValue(word);
    }

    private void press(Chromium browser, String css) {
        taps++;
        WebElement button = browser.find(css);
        ((JavascriptExecutor) browser.driver()).executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
        button.click();
    }
}
