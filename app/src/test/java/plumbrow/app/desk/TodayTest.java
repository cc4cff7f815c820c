package plumbrow.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.mock.web.MockMultipartFile;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.today.Days;
import plumbrow.advice.today.Today;
import plumbrow.app.book.Choice;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.demo.DemoWeather;
import plumbrow.app.desk.shown.Shown;

/** Today, hours and load card on the desk over the invented farms. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init")
class TodayTest {
    private static final String FIELD = "/fields/" + Shown.part("Vine Bottom");
    private static final String ASKED = "?program=" + Shown.part("Before and after") + "&pass=4";

    private OpenDesk desk;
    private Visitor visitor;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        desk = OpenDesk.over(DemoBook.season());
        visitor = new Visitor(desk);
        assertThat(visitor.get(FIELD + "/hours" + ASKED).text())
                .as("before any weather")
                .contains("Unknown: no hourly weather is on file", "Unknown is not fit");
        assertThat(visitor.get("/api" + FIELD + "/hours" + ASKED).status()).isEqualTo(404);
        Path file = DemoWeather.writeTo(Files.createTempDirectory(folder, "w")).get(0);
        assertThat(upload(Files.readAllBytes(file)))
                .contains("Taken in for IA: Kossuth: CSV.", "648 of 6,888 hours lack rain");
        desk.book()
                .choose(
                        new Choice(2026, "Vine Bottom", "Before and after", "x", Instant.EPOCH, "", null, null),
                        desk.book().season().orElseThrow());
        desk.book()
                .log(
                        new Done(
                                "South Slough",
                                LocalDate.of(2026, 5, 31),
                                "Twinfold",
                                new Amount(2, FarmUnit.QT),
                                100,
                                "J. Halvorsrud",
                                "log book"),
                        Instant.EPOCH);
    }

    @AfterAll
    void close() {
        desk.close();
    }

    private String upload(byte[] content) throws Exception {
        var form = visitor.get(FIELD + "/hours" + ASKED);
        return new Visitor.Page(visitor.mvc()
                        .perform(multipart(URI.create(FIELD + "/hours/weather"))
                                .file(new MockMultipartFile("file", "hours.csv", "text/csv", content))
                                .cookie(Objects.requireNonNull(form.response().getCookie("XSRF-TOKEN")))
                                .param("_csrf", form.hidden("_csrf"))
                                .param("of", "county"))
                        .andReturn()
                        .getResponse())
                .text();
    }

    @Test
    void aWrongFileIsRefusedBesideItsBox() throws Exception {
        assertThat(upload("no,weather\n1,2\n".getBytes(StandardCharsets.UTF_8)))
                .contains("No heading says when an hour is");
        assertThat(upload(new byte[0])).contains("No file was chosen, or it is empty");
    }

    @Test
    void theDaySaysWhatIsDueWhatIsFitAndWhatWaits() {
        var page = visitor.get("/today?day=2026-06-01");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text())
                .contains("Vine Bottom has the hours, fit 10:00 to 18:00")
                .contains("Window closes in 4 days", "past years")
                .contains("South Slough: nobody goes in until Tue, Jun 2, 00:00 at the latest")
                .contains("60-ft sprayer (Oakridge): ", "Vine Bottom", "poison control, 1-800-222-1222");
        assertThat(visitor.get("/today?day=soon").status()).isEqualTo(422);
        assertThat(visitor.get("/api/today?day=2026-06-01").body()).contains("\"days_left\" : 4");
    }

    /** Twinfold asks for 24 h (demo, sheet terms): from half past ten, not from the end of the day as a line of the log. */
    @Test
    void aRecordThatSaysWhenItEndedGoesBeforeItsLineOfTheLog() {
        ZonedDateTime end = ZonedDateTime.of(2026, 5, 31, 10, 30, 0, 0, ZoneId.of("America/Chicago"));
        ApplicationRecord record = new ApplicationRecord(
                "South Slough",
                LocalDate.of(2026, 5, 31),
                end.minusHours(3),
                end,
                120,
                100,
                List.of(new RecordedProduct(
                        "Twinfold",
                        null,
                        new Amount(2, FarmUnit.QT),
                        new Amount(60, FarmUnit.GAL),
                        Ask.NO,
                        24,
                        60,
                        null,
                        null)),
                Map.of());
        var season = desk.book().season().orElseThrow();
        var today =
                Days.of(season, LocalDate.of(2026, 6, 1), field -> null, field -> Optional.empty(), List.of(record));
        assertThat(today.waits())
                .filteredOn(wait ->
                        wait.field().equals("South Slough") && wait.what().startsWith("nobody"))
                .extracting(Today.Wait::until)
                .containsExactly("Mon, Jun 1, 10:30");
        assertThat(Days.of(season, LocalDate.of(2026, 6, 2), field -> null, field -> Optional.empty(), List.of(record))
                        .waits())
                .noneMatch(wait -> wait.field().equals("South Slough"));
    }

    @Test
    void hoursAndLoadCardShowTheSameTripOnScreenAndAsJson() {
        String hours =
                visitor.get(FIELD + "/hours" + ASKED + "&from=2026-06-01").text();
        assertThat(hours)
                .contains("The job takes 1.4 h, in one go from Monday, June 1, 10:00.", "label of Ironweir 4L");
        assertThat(visitor.get("/api" + FIELD + "/hours" + ASKED + "&from=2026-06-01")
                        .body())
                .contains("\"whose\" : \"label\"", "\"needed_hours\" : 1.44");
        assertThat(visitor.get(FIELD + "/hours" + ASKED + "&from=soon").status())
                .isEqualTo(422);
        assertThat(visitor.get(FIELD + "/hours?pass=77").text()).contains("Pass 77");
        String card = visitor.get(FIELD + "/mix" + ASKED).text();
        assertThat(card)
                .contains(
                        "1 full load of 600 gal on 40 ac",
                        "3 × 2.5 gal + 192 fl oz",
                        "Fits Broadvane 06",
                        "12 h after the last load");
        assertThat(visitor.get("/api" + FIELD + "/mix" + ASKED).body())
                .contains("\"words\" : \"3 × 2.5 gal + 192 fl oz\"");
        var paper = visitor.get(FIELD + "/mix.pdf" + ASKED);
        assertThat(paper.status()).isEqualTo(200);
        assertThat(paper.body()).startsWith("%PDF");
        assertThat(visitor.get(FIELD + "/mix?pass=nine").status()).isEqualTo(422);
        assertThat(visitor.get("/api" + FIELD + "/mix?machine=none").status()).isEqualTo(422);
        assertThat(visitor.get(FIELD + "/mix.pdf?pass=77").status()).isEqualTo(404);
    }
}
