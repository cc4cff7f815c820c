package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import plumbrow.app.desk.shown.Shown;

/** A label in three columns of small print, from its file to another word of the check, by screen and keyboard alone. */
class LabelToCheckTest {
    private static final String CHECK =
            "/fields/" + Shown.part(DeskSeason.HOME) + "/check?program=" + Shown.part("half rate");

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void aLineOfTheLabelBarsTheNextCrop(int width, @TempDir Path folder) throws IOException {
        Path file = Files.write(folder.resolve("stonefly-3g-label.pdf"), ThreeColumns.label());
        try (OpenDesk desk = OpenDesk.over(DeskSeason.of(2027)).weighed();
                Chromium browser = Chromium.open(width, 900)) {
            browser.go(desk.address() + CHECK);
            assertThat(browser.text("main")).doesNotContain("the label asks for 744");

            browser.go(desk.address() + "/shelf");
            browser.find("#papers").sendKeys(file.toString());
            browser.find("main form button").click();
            says(browser, "main", "taken in as a label");

            belongs(browser, desk);
            browser.go(desk.address() + "/shelf/papers/1/confirm");
            assertThat(browser.text("main")).doesNotContain("has no product of this name");
            link(browser, "plant-backs.clover.days").sendKeys(Keys.ENTER);
            says(browser, "#decide", "clover");
            assertThat(browser.text("#decide")).contains("Plant-back interval", "744 days");
            browser.picture("three-columns-confirm");
            assertThat(browser.cutOff()).isEmpty();
            assertThat(browser.inaccessible()).isEmpty();
            browser.find("#who").sendKeys("R. Voss", Keys.ENTER);
            says(browser, "main", "1 confirmed");
            browser.go(desk.address() + "/shelf/papers/1/confirm?at=plant-backs.clover.days");
            assertThat(browser.text("#decide")).contains("confirmed by R. Voss");

            browser.go(desk.address() + CHECK);
            assertThat(browser.text("main")).contains("the label asks for 744");
            browser.picture("three-columns-check");

            mend(browser, desk);
        }
    }

    /** Whatever name was read, a person puts the paper with its product. */
    private static void belongs(Chromium browser, OpenDesk desk) {
        browser.go(desk.address() + "/shelf/papers/1");
        browser.driver()
                .findElement(By.xpath("//summary[contains(., 'Which product')]"))
                .sendKeys(Keys.ENTER);
        new Select(browser.find("#belongs")).selectByVisibleText("Stonefly 3G");
        browser.find("#linker").sendKeys("R. Voss");
        browser.find("button[value=belongs]").sendKeys(Keys.ENTER);
        says(browser, "main", "R. Voss put it with Stonefly 3G");
    }

    /** What stands on the reading page is put right by the keyboard, and the card shows it. */
    private static void mend(Chromium browser, OpenDesk desk) {
        browser.go(desk.address() + "/shelf/papers/1");
        browser.driver()
                .findElement(By.partialLinkText("Restricted-entry interval"))
                .sendKeys(Keys.ENTER);
        browser.until(ExpectedConditions.presenceOfElementLocated(By.id("mended")));
        WebElement box = browser.find("#mended");
        box.sendKeys(Keys.chord(Keys.CONTROL, "a"), "soon");
        browser.find("#mender").sendKeys("R. Voss");
        browser.find("#mend button[value=correct]").sendKeys(Keys.ENTER);
        browser.until(ExpectedConditions.presenceOfElementLocated(By.id("mend-faults")));
        assertThat(browser.text("#mend-faults")).contains("can't be read as Restricted-entry interval", "12 hours");
        assertThat(browser.find("#mended").getDomProperty("value")).isEqualTo("soon");
        browser.picture("mend-fault");
        assertThat(browser.inaccessible()).isEmpty();
        browser.find("#mended").sendKeys(Keys.chord(Keys.CONTROL, "a"), "48 hours");
        browser.find("#mend button[value=correct]").sendKeys(Keys.ENTER);
        says(browser, "#mend", "typed over by R. Voss");
        assertThat(browser.text("#mend")).contains("48 h");
        browser.picture("mend");
        assertThat(browser.cutOff()).isEmpty();
        assertThat(browser.smallTargets()).isEmpty();
        assertThat(browser.inaccessible()).isEmpty();
    }

    private static void says(Chromium browser, String css, String text) {
        browser.until(ExpectedConditions.textToBePresentInElementLocated(By.cssSelector(css), text));
    }

    private static WebElement link(Chromium browser, String value) {
        return browser.find("a[href*='at=" + value + "']");
    }
}
