package plumbrow.app.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedCondition;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A browser at a width, and what can be asked of the page in it. */
final class Chromium implements AutoCloseable {
    private static final String WHERE =
            "; name it with -Dplumbrow.%s=PATH, or leave the browser tests out with" + " -Dplumbrow.browser=skip";
    private static final String AXE = "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js";
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final ChromeDriver driver;
    private final int width;

    private Chromium(ChromeDriver driver, int width) {
        this.driver = driver;
        this.width = width;
    }

    /** A browser window of this width; the tests are left out only where that was asked for. */
    static Chromium open(int width, int height) {
        Assumptions.assumeFalse(
                "skip".equals(System.getProperty("plumbrow.browser")), "left out by -Dplumbrow.browser=skip");
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("chromium", "/usr/bin/chromium").toFile());
        options.addArguments(List.of(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--force-prefers-reduced-motion"));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(
                        program("chromedriver", "/usr/bin/chromedriver").toFile())
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        Chromium browser = new Chromium(driver, width);
        browser.height(height);
        return browser;
    }

    /** Sets the height of the window; its width stays. */
    void height(int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Shows pages as they are printed. */
    void paper() {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    }

    ChromeDriver driver() {
        return driver;
    }

    void go(String address) {
        driver.get(address);
    }

    WebElement find(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    String text(String css) {
        return find(css).getText();
    }

    void until(ExpectedCondition<?> condition) {
        new WebDriverWait(driver, PATIENCE, Duration.ofMillis(50)).until(condition);
    }

    /** What the browser complained of since it was last asked; a page that is rightly not there is no complaint. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .filter(message -> !message.contains("status of 404"))
                .toList();
    }

    /** Elements that stick out of the window or run over what stands beside them, or whose text is cut off. */
    List<?> cutOff() {
        return list("""
                const out = [];
                const wide = document.documentElement.scrollWidth - innerWidth;
                if (wide > 0) out.push('the page is ' + wide + ' px too wide');
                for (const e of document.body.querySelectorAll('*')) {
                  const style = getComputedStyle(e);
                  const hidden = style.clipPath !== 'none' || e.closest('thead') && getComputedStyle(e.closest('thead')).clipPath !== 'none';
                  if (hidden || style.display === 'none' || !e.getClientRects().length || e.matches('.skip')) continue;
                  const box = e.getBoundingClientRect();
                  if (e.closest('svg') !== e && e.closest('svg')) continue;
                  const name = e.tagName + '.' + e.className + ' ' + e.textContent.trim().slice(0, 40);
                  const room = e.closest('#answer, .decide, .boxes');
                  if (room && box.width > 0 && box.right > room.getBoundingClientRect().right + 1) out.push('runs over: ' + name);
                  if (box.width > 0 && (box.right > innerWidth + 1 || box.left < -1)) out.push('sticks out: ' + name);
                  if (style.overflowX !== 'visible' && e.scrollWidth > e.clientWidth + 1 && e.tagName !== 'INPUT' && e.tagName !== 'SELECT') out.push('cut off: ' + name);
                }
                return out;
                """);
    }

    /** Touch targets lower than 44 px, other than links within a sentence. */
    List<?> smallTargets() {
        return list("""
                const out = [];
                for (const e of document.querySelectorAll('button, summary, input:not([type=hidden]):not([type=radio]):not(.check input), .check, select, textarea, .pick label, .go, nav a, .name')) {
                  const box = e.getBoundingClientRect();
                  if (box.width && box.height < 43.5) out.push(e.tagName + ' ' + e.textContent.trim().slice(0, 30) + ' ' + box.height);
                }
                return out;
                """);
    }

    /** What axe finds against WCAG 2.2 AA, one line for each element. */
    List<?> inaccessible() {
        driver.executeScript(axe());
        Object found = driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
                  .then(result => done(result.violations.flatMap(v => v.nodes.map(n => v.id + ': ' + n.target + ' ' + n.failureSummary))))
                  .catch(fault => done(['axe could not run: ' + fault]));
                """);
        complaints(); // what the check itself stirred up is not the page's
        return (List<?>) Objects.requireNonNull(found);
    }

    /** Saves the whole page as a picture. */
    void picture(String name) {
        int tall = ((Number) Objects.requireNonNull(
                        driver.executeScript("return Math.ceil(document.documentElement.scrollHeight)")))
                .intValue();
        height(Math.min(tall, 12_000));
        try {
            Path folder = Files.createDirectories(Path.of("target", "screens"));
            Files.write(folder.resolve(name + "-" + width + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        height(900);
    }

    @Override
    public void close() {
        driver.quit();
    }

    private List<?> list(String script) {
        return (List<?>) Objects.requireNonNull(driver.executeScript(script));
    }

    private static Path program(String name, String usual) {
        Path path = Path.of(System.getProperty("plumbrow." + name, usual));
        if (!Files.isExecutable(path)) {
            throw new AssertionError("There is no " + name + " at " + path + WHERE.formatted(name));
        }
        return path;
    }

    private static String axe() {
        try (InputStream file = Chromium.class.getResourceAsStream(AXE)) {
            return new String(
                    Objects.requireNonNull(file, "axe-core is not on the class path")
                            .readAllBytes(),
                    UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
