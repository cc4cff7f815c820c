package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;

/**
 * From an empty book to an answer about the insecticide by hand, counted: boxes filled in and taps. docs/asking.md tells these
 * counts.
 */
class FirstAnswerTest {
    private static final int MOST_INPUTS = 10;
    private static final int MOST_TAPS = 12;

    private int inputs;
    private int taps;

    private void tap(WebElement element) {
        taps++;
        element.click();
    }

    private void type(Chromium browser, String box, String text) {
        tap(browser.find("#b-" + box));
        inputs++;
        browser.find("#b-" + box).sendKeys(text);
    }

    /** A choice takes a tap to open and a tap to choose. */
    private void choose(Chromium browser, String box, String word) {
        taps += 2;
        inputs++;
        new Select(browser.find("#b-" + box)).selectByValue(word);
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void an_answer_in_a_few_taps(int width) {
        SoftAssertions softly = new SoftAssertions();
        try (OpenDesk desk = OpenDesk.over();
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + "/");
            tap(browser.find("a[href='/ask/insecticide']"));
            browser.until(ExpectedConditions.presenceOfElementLocated(By.id("ask")));
            assertThat(browser.text("#answer .answer")).startsWith("By the money");
            softly.assertThat(inputs).as("inputs before the first answer").isZero();
            softly.assertThat(taps).as("taps before the first answer").isEqualTo(1);
            choose(browser, "state", "IA");
            choose(browser, "trait", "none");
            choose(browser, "history", "third");
            type(browser, "price", "4.40");
            type(browser, "yield", "205");
            browser.until(ExpectedConditions.textToBePresentInElementLocated(
                    By.cssSelector("#answer"), "On what you’ve told (4) and typical Iowa values"));
            browser.until(ExpectedConditions.numberOfElementsToBe(By.cssSelector("#answer [hx-trigger]"), 0));
            softly.assertThat(browser.text("#answer .answer")).startsWith("By the money");
            softly.assertThat(browser.text("#n-price")).isEqualTo("told");
            softly.assertThat(browser.find("#b-price").getDomProperty("value")).isEqualTo("4.40");
            softly.assertThat(browser.cutOff()).isEmpty();
            softly.assertThat(browser.smallTargets()).isEmpty();
            softly.assertThat(browser.complaints()).isEmpty();
            softly.assertThat(browser.inaccessible()).isEmpty();
            browser.picture("first-answer");
            softly.assertThat(inputs).as("inputs").isLessThanOrEqualTo(MOST_INPUTS);
            softly.assertThat(taps).as("taps").isLessThanOrEqualTo(MOST_TAPS);
            System.out.println("first answer at " + width + " px: " + inputs + " inputs, " + taps + " taps");
        }
        softly.assertAll();
    }
}
