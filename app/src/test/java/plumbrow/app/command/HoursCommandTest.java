package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.demo.DemoWeather;

/** Weather in and out of the book, hours, load card and the day, on the invented farms; and what is refused. */
@SuppressWarnings("NullAway.Init")
class HoursCommandTest {
    private static final Season SEASON = DemoBook.season();
    private static final String FIELD = "Vine Bottom";
    private static final String PROGRAM = "Before and after";

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SEASON);
    }

    private Path weather() throws IOException {
        return DemoWeather.writeTo(folder.resolve("weather")).get(0);
    }

    private void taken() throws IOException {
        plumbrow("hours", "import", weather(), "--book", book, "--place", "IA: Kossuth")
                .good();
    }

    @Test
    void withoutWeatherTheHoursAreUnknownAndItIsSaidHowToBringSome() {
        plumbrow("hours", "--book", book, "--field", FIELD, "--program", PROGRAM, "--pass", "4")
                .refused("No hourly weather is on file for Vine Bottom or IA: Kossuth, so its hours are unknown.");
        assertThat(plumbrow("hours", "files", "--book", book).good().out()).contains("No hourly weather is on file");
    }

    @Test
    void hoursAreTakenInOnceToldAndForgotten() throws IOException {
        Path file = weather();
        assertThat(plumbrow("hours", "import", file, "--book", book, "--place", "IA: Kossuth")
                        .good()
                        .out())
                .contains("Taken in: 6,888 hours of IA: Kossuth (CSV).")
                .contains("648 of 6,888 hours lack rain");
        assertThat(plumbrow("hours", "import", file, "--book", book, "--place", "IA: Kossuth")
                        .good()
                        .out())
                .contains("already; nothing was changed");
        assertThat(plumbrow("hours", "files", "--book", book, "--json").good().json())
                .hasSize(1);
        Path picture = folder.resolve("hours.svg");
        String out = plumbrow(
                        "hours",
                        "--book",
                        book,
                        "--field",
                        FIELD,
                        "--program",
                        PROGRAM,
                        "--pass",
                        "4",
                        "--from",
                        "2026-06-01",
                        "--days",
                        "2",
                        "--window",
                        "2026-05-28..2026-06-05",
                        "--svg",
                        picture)
                .good()
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains("The job takes 1.4 h")
                .contains("in 9 of 10 past years; in 1 more it is not known")
                .contains("wind (label of Stillmeadow K, label of Ironweir 4L, good practice)")
                .contains("rain too soon after: 24 h without rain after it (label of Ironweir 4L");
        assertThat(Files.readString(picture)).startsWith("<svg ").contains("aria-label=\"Hours fit for spraying");
        assertThat(plumbrow("season", "--book", book, "--field", FIELD, "--program", PROGRAM)
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("hours fit on")
                .doesNotContain("no hourly weather on file");
        plumbrow("hours", "forget", "1", "--book", book).good();
        plumbrow("hours", "forget", "1", "--book", book)
                .refused("There is no file of hourly weather with the number 1.");
        assertThat(plumbrow("book", "check", "--book", book).code()).isZero();
    }

    @Test
    void whatCantBeReadIsRefusedInASentenceAndChangesNothing() throws IOException {
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        plumbrow("hours", "import", empty, "--book", book, "--place", "IA: Kossuth")
                .refused("is empty");
        Path other = Files.writeString(folder.resolve("other.csv"), "field,crop\nNorth,corn\n");
        plumbrow("hours", "import", other, "--book", book, "--place", "IA: Kossuth")
                .refused("No heading says when an hour is");
        plumbrow("hours", "import", folder.resolve("gone.csv"), "--book", book, "--place", "IA: Kossuth")
                .refused("There is no file");
        Path good = weather();
        plumbrow("hours", "import", good, "--book", book, "--place", "IA: Kosuth")
                .refused("There is no field or county");
        plumbrow("hours", "import", good, "--book", book, "--place", "IA: Kossuth", "--latitude", "43")
                .refused("both latitude");
        plumbrow("hours", "import", good, "--book", book, "--place", "IN: Adams")
                .refused("name it with --zone");
        plumbrow("hours", "import", good, "--book", book, "--place", "IA: Kossuth", "--zone", "Middle/Nowhere")
                .refused("There is no clock");
        plumbrow("hours", "import", good, "--book", book, "--place", "IA: Kossuth", "--columns", "wind_mph=breeze")
                .refused("The file has no heading 'breeze'");
        plumbrow("hours", "import", good, "--book", book, "--place", "IA: Kossuth", "--wind-height", "0")
                .refused("expected 0.5 to 100 m");
        try (Book opened = Book.open(book)) {
            assertThat(opened.weatherFiles()).isEmpty();
        }
    }

    @Test
    void whatIsAskedWrongIsRefused() throws IOException {
        taken();
        plumbrow("hours", "--book", book).refused("Say which field");
        plumbrow("hours", "--book", book, "--field", "Nowhere").refused("There is no field 'Nowhere'");
        plumbrow("hours", "--book", book, "--field", FIELD, "--program", "Nothing")
                .refused("There is no program 'Nothing'");
        plumbrow("hours", "--book", book, "--field", FIELD, "--pass", "77").refused("Pass 77");
        plumbrow("hours", "--book", book, "--field", FIELD, "--machine", "big one")
                .refused("There is no sprayer 'big one'");
        plumbrow("hours", "--book", book, "--field", FIELD, "--from", "soon").refused("expected a day such as");
        plumbrow("hours", "--book", book, "--field", FIELD, "--days", "90").refused("31 days at most");
        plumbrow("hours", "--book", book, "--field", FIELD, "--wind", "10..3").refused("the lower first");
        plumbrow("hours", "--book", book, "--field", FIELD, "--window", "2026-06-01")
                .refused("expected two days");
        plumbrow("today", "--book", book, "--day", "x").refused("expected a day");
        plumbrow("mix", "--book", book, "--field", FIELD, "--machine", "big one")
                .refused("There is no such machine");
        plumbrow("mix", "card.txt", "--book", book, "--field", FIELD).refused("ends in .pdf");
    }

    /** Days of a station's thirty years go to the sheet of measured days, from which lateness comes. */
    @Test
    void wholeSeasonsOfDaysGoToTheSeasonAndYearsWithAGapDoNot() throws IOException {
        StringBuilder days = new StringBuilder("STATION,DATE,PRCP,TMAX,TMIN\n");
        for (int year = 2014; year <= 2015; year++) {
            for (var day = LocalDate.of(year, 3, 1);
                    day.getMonthValue() < 10;
                    day = day.plusDays(year == 2015 && day.getMonthValue() == 6 ? 2 : 1)) {
                days.append("USW1,").append(day).append(",12,200,100\n");
            }
        }
        Path file = Files.writeString(folder.resolve("days.csv"), days);
        plumbrow("hours", "import", file, "--book", book, "--place", FIELD).good();
        try (Book opened = Book.open(book)) {
            var kept = opened.latestSeason().orElseThrow().pests().weedBook().days();
            assertThat(kept)
                    .hasSize(214)
                    .allMatch(day -> day.date().getYear() == 2014 && day.place().equals(FIELD));
        }
    }

    /** Hours of a whole season give its days too; one hour without rain, and the day is none, so the season is none. */
    @Test
    void hoursOfAWholeSeasonGiveItsDays() throws IOException {
        StringBuilder whole = new StringBuilder("time_beginning,temperature_c,rain_mm\n");
        StringBuilder gap = new StringBuilder(whole);
        for (var at = LocalDate.of(2014, 3, 1).atStartOfDay();
                at.isBefore(LocalDate.of(2014, 10, 1).atStartOfDay());
                at = at.plusHours(1)) {
            String line = at.toString().replace('T', ' ') + "," + (10 + at.getHour() / 2.0) + ",";
            whole.append(line).append(at.getHour() == 3 ? "2.54" : "0").append('\n');
            gap.append(line)
                    .append(at.getDayOfYear() == 150 && at.getHour() == 5 ? "" : "0")
                    .append('\n');
        }
        Path file = Files.writeString(folder.resolve("gap.csv"), gap);
        plumbrow("hours", "import", file, "--book", book, "--place", FIELD).good();
        try (Book opened = Book.open(book)) {
            assertThat(opened.latestSeason().orElseThrow().pests().weedBook().days())
                    .isEmpty();
        }
        Path other = Files.writeString(folder.resolve("whole.csv"), whole);
        assertThat(plumbrow("hours", "import", other, "--book", book, "--place", FIELD)
                        .good()
                        .out())
                .contains("One whole season of days went to the measured days");
        try (Book opened = Book.open(book)) {
            assertThat(opened.latestSeason().orElseThrow().pests().weedBook().days())
                    .hasSize(214)
                    .allMatch(day -> day.lowF() == 50 && day.highF() == 70.7 && day.rainIn() == .1);
        }
    }

    @Test
    void theLoadCardAndTheDayAreTold() throws IOException {
        taken();
        Path card = folder.resolve("card.pdf");
        assertThat(plumbrow("mix", card, "--book", book, "--field", FIELD, "--program", PROGRAM, "--pass", "4")
                        .good()
                        .out())
                .contains(
                        "1 full load of 600 gal on 40 ac, and a last one of 510",
                        "3 × 2.5 gal + 192 fl oz",
                        "Broadvane 06");
        assertThat(Files.size(card)).isPositive();
        assertThat(plumbrow("mix", "--book", book, "--field", "Dry Bench").code())
                .as("nothing barred")
                .isZero();
        try (Book opened = Book.open(book)) {
            opened.choose(new Choice(2026, FIELD, PROGRAM, "x", Instant.EPOCH, "", null, null));
        }
        String out = plumbrow("today", "--book", book, "--day", "2026-06-01")
                .good()
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out)
                .contains(
                        "Vine Bottom has the hours, fit 10:00 to 18:00, once what is unknown of it has been looked at")
                .contains("window closes in 4 days")
                .contains("60-ft sprayer (Oakridge): 1 trip");
        assertThat(plumbrow("today", "--book", book, "--day", "2026-11-30")
                        .good()
                        .out())
                .contains("Nothing is due.", "The nearest planned work is on 2026-10-");
        assertThat(plumbrow("today", "--book", book, "--day", "2026-06-01", "--json")
                        .good()
                        .json()
                        .get("due"))
                .isNotEmpty();
    }
}
