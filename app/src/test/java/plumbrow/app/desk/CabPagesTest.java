package plumbrow.app.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.book.Choice;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.demo.DemoWeather;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.records.RecordEntry;
import plumbrow.app.weather.WeatherIntake;
import plumbrow.app.weather.Zones;

/** The pages that are read on a phone in the cab: today, hours, load card, field plan. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class CabPagesTest {
    private OpenDesk desk;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        Season season = DemoBook.season();
        desk = OpenDesk.over(season);
        Path file = DemoWeather.writeTo(folder.resolve("weather")).get(0);
        try (Book book = Book.open(desk.file())) {
            WeatherIntake.take(
                    book,
                    "hours.csv",
                    Files.readAllBytes(file),
                    WeatherIntake.asked(
                            season,
                            "IA: Kossuth",
                            Zones.of(season, "IA: Kossuth"),
                            null,
                            null,
                            null,
                            null,
                            null,
                            "invented"),
                    Instant.EPOCH);
            RecordEntry entry = RecordEntry.read(
                    season,
                    Map.of(
                            "field",
                            "Vine Bottom",
                            "date",
                            "2026-06-02",
                            "start",
                            "08:10",
                            "end",
                            "11:40",
                            "acres",
                            "74",
                            "product_1",
                            "Ironweir 4L",
                            "rate_1",
                            "0.9",
                            "rate_unit_1",
                            "qt/ac",
                            "sure",
                            "all"),
                    List.of(),
                    Instant.parse("2026-06-03T00:00:00Z"));
            book.record(
                    Objects.requireNonNull(entry.record()),
                    new By("S. Lind", "", By.Way.DESK, null),
                    Instant.parse("2026-06-03T00:00:00Z"));
            book.choose(new Choice(2026, "Vine Bottom", "Before and after", "x", Instant.EPOCH, "", null, null));
        }
    }

    @AfterAll
    void close() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 390})
    void each_stands_in_its_window_and_is_in_reach_of_everybody(int width) {
        String field = "/fields/" + Shown.part("Vine Bottom");
        List<String> pages = List.of(
                "/",
                "/today?day=2026-06-01",
                "/binder",
                field + "/hours?pass=4&from=2026-06-01",
                field + "/mix?pass=4",
                "/records",
                "/records/1",
                "/records/1/correct",
                "/records/new?field=" + Shown.part("Vine Bottom") + "&program=Before+and+after&pass=4",
                field + "/plan",
                "/fields/" + Shown.part("Creek Bottom") + "/plan",
                "/fields/" + Shown.part("Creek Bottom") + "/machine?program=" + Shown.part("No trait, half rate")
                        + "&pass=2",
                field + "/machine",
                "/fields/" + Shown.part("Dry Bench") + "/hours");
        SoftAssertions softly = new SoftAssertions();
        try (Chromium browser = Chromium.open(width, 900)) {
            for (String page : pages) {
                browser.go(desk.address() + page);
                softly.assertThat(browser.cutOff()).as("cut off on " + page).isEmpty();
                softly.assertThat(browser.smallTargets()).as("small on " + page).isEmpty();
                softly.assertThat(browser.complaints()).as("console of " + page).isEmpty();
                softly.assertThat(browser.inaccessible()).as("axe on " + page).isEmpty();
            }
        }
        softly.assertAll();
    }
}
