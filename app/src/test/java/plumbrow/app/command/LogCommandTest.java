package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;
import plumbrow.app.book.Book;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@SuppressWarnings("NullAway.Init")
class LogCommandTest {
    private static final Season SEASON = SmallSeason.of(2027);

    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SEASON);
    }

    private Typed add(String rate) {
        return plumbrow(
                "log",
                "add",
                "--book",
                book,
                "--field",
                "North 80",
                "--date",
                "2026-05-01",
                "--product",
                "Stonefly 3G",
                "--rate",
                rate,
                "--unit",
                "lb/ac",
                "--source",
                "log book");
    }

    @Test
    void aLineIsWrittenStruckAndStays() {
        plumbrow("log", "list", "--book", book).good();
        assertThat(plumbrow("log", "list", "--book", book).out()).contains("The log has no line yet.");
        assertThat(add("4").good().out())
                .contains("Written down. 2026-05-01, North 80: Stonefly 3G, 4 lb/ac (log book).");
        add("5").good();
        plumbrow("log", "strike", 1, "--book", book, "--who", "R. Alder", "--why", "it was 5")
                .good();
        assertThat(plumbrow("log", "list", "--book", book).good().out())
                .contains("1  2026-05-01", "STRUCK by R. Alder: it was 5", "2  2026-05-01");
        JsonNode lines =
                plumbrow("log", "list", "--book", book, "--json").good().json();
        assertThat(lines.size()).isEqualTo(2);
        assertThat(lines.get(0).get("strike").get("why").asString()).isEqualTo("it was 5");
        assertThat(lines.get(1).get("strike").isNull()).isTrue();
    }

    @Test
    void nothingIsPutOnOnlyWhereAPassWaitsForScouting() {
        add("0").refused(
                        "rate: Found “0”; expected more than 0: no pass of North 80 that puts out Stonefly 3G waits for scouting");
        add("-1").refused("expected a number from 0");
        assertThat(plumbrow("log", "list", "--book", book).out()).contains("The log has no line yet.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-x", "@SUM(A1)", "a\u001B[2Jb", "a\u009Bb"})
    void whatTheWorkbookRefusesIsRefusedHereToo(String words) {
        plumbrow(
                        "log",
                        "add",
                        "--book",
                        book,
                        "--field=North 80",
                        "--date=2026-05-01",
                        "--product=Stonefly 3G",
                        "--rate=4",
                        "--unit=lb/ac",
                        "--source=" + words)
                .refused("The line was not written down. source: ");
        add("4").good();
        plumbrow("log", "strike", 1, "--book", book, "--who=" + words, "--why=wrong")
                .refused("Who strikes it: expected text");
    }

    @Test
    void aFieldThatNobodyKnowsHasNoEmptyLog() {
        plumbrow("log", "list", "--book", book, "--field", "Nroth 80")
                .refused("Neither the season nor the log has a field 'Nroth 80'; did you mean North 80?");
        plumbrow("log", "list", "--book", book, "--field", "North 80").good();
    }

    @Test
    void whichPassItWasIsAskedAndSaid() {
        String program = SEASON.programs("North 80").stream()
                .filter(one -> one.passes().stream().anyMatch(pass -> "Stonefly 3G".equals(pass.product())))
                .findFirst()
                .orElseThrow()
                .name();
        plumbrow(
                        "log",
                        "add",
                        "--book",
                        book,
                        "--field=North 80",
                        "--date=2026-05-01",
                        "--product=Stonefly 3G",
                        "--rate=4",
                        "--unit=lb/ac",
                        "--planned=9 of Nothing",
                        "--source=log book")
                .refused("planned: Found “9 of Nothing”; expected none, or a pass that puts out Stonefly 3G: 2 of "
                        + program);
        add("4").good();
        plumbrow("log", "pass", 1, "--book", book, "--planned=2 of " + program).refused("Say who says so.");
        plumbrow("log", "pass", 7, "--book", book, "--planned=none", "--who=R. Alder")
                .refused("The log has no line 7.");
        assertThat(plumbrow("log", "pass", 1, "--book", book, "--planned=2 of " + program, "--who=R. Alder")
                        .good()
                        .out())
                .contains("said to be pass 2 of " + program);
        assertThat(plumbrow("log", "pass", 1, "--book", book, "--planned=none", "--who=R. Alder")
                        .good()
                        .out())
                .contains("said to be none of the planned passes");
        Path workbook = folder.resolve("out");
        plumbrow("book", "export", workbook, "--book", book).good();
        assertThat(plumbrow("book", "import", workbook, "--book", book).good().out())
                .doesNotContain("new line");
        plumbrow("book", "check", "--book", book).good();
    }

    /** An older book may hold what no door lets in any more. */
    @Test
    void noWordOfTheBookGivesOrdersToTheTerminal() {
        String screen = "\u001B[2J\u001B]0;owned\u0007\u009B31mred\u202E\r\u0008";
        try (Book held = Book.open(book)) {
            held.log(
                    new Done(
                            "North 80",
                            LocalDate.of(2026, 5, 1),
                            "Stonefly 3G",
                            new Amount(4, FarmUnit.LB),
                            100,
                            "S. Lind" + screen,
                            "log book" + screen),
                    Instant.EPOCH);
        }
        String shown = plumbrow("log", "list", "--book", book).good().out();
        assertThat(shown).contains("bookred", "by S. Lindred").doesNotContain("owned");
        assertThat(shown.chars().filter(c -> c != '\n')).noneMatch(Character::isISOControl);
        String json = plumbrow("log", "list", "--book", book, "--json").good().out();
        assertThat(json.chars().filter(c -> c != '\n')).noneMatch(Character::isISOControl);
        assertThat(new JsonMapper()
                        .readTree(json)
                        .get(0)
                        .get("done")
                        .get("source")
                        .asString())
                .isEqualTo("log book" + screen);
        String asked =
                plumbrow("log", "add", "--book", book, "--field=" + screen).err();
        assertThat(asked.chars().filter(c -> c != '\n')).isNotEmpty().noneMatch(Character::isISOControl);
    }

    @Test
    void whatIsWrongIsSaidAndNothingIsWritten() {
        add("much").refused("The line was not written down. rate: Found “much”; expected a number from 0 to 1000000.");
        plumbrow("log", "add", "--book", book, "--field", "South")
                .refused("field: Found “South”; expected a field of the season.");
        plumbrow(
                        "log",
                        "add",
                        "--book",
                        book,
                        "--field",
                        "North 80",
                        "--date",
                        "9998-01-01",
                        "--product",
                        "Stonefly 3G",
                        "--rate",
                        1,
                        "--unit",
                        "gal/ac",
                        "--source",
                        "memory")
                .refused("rate_unit: Found “gal/ac”; expected a weight, since Stonefly 3G is priced per lb.");
        plumbrow("log", "strike", 1, "--book", book, "--who", "R. Alder", "--why", "wrong")
                .refused("The log has no line 1.");
        plumbrow("log", "strike", 1, "--book", book, "--who", "R. Alder")
                .refused("Say why it is wrong, in a sentence.");
        plumbrow("log", "--book", book).misused("Unknown option");
        assertThat(plumbrow("log", "list", "--book", book).out()).contains("no line yet");
    }

    /** A book goes out as a workbook and comes in again: into itself it adds nothing, into a new one it brings the log. */
    @Test
    void theLogGoesOutAndComesInAgain() {
        add("4").good();
        add("5").good();
        Path workbook = folder.resolve("season");
        plumbrow("book", "export", workbook, "--book", book).good();
        assertThat(plumbrow("book", "import", workbook, "--book", book).good().out())
                .doesNotContain("new line");
        assertThat(plumbrow("log", "list", "--book", book, "--json").json().size())
                .isEqualTo(2);
        Path other = folder.resolve("other.book");
        plumbrow("book", "new", other).good();
        assertThat(plumbrow("book", "import", workbook, "--book", other).good().out())
                .contains("2 new lines came to the log.");
        plumbrow("log", "strike", 1, "--book", book, "--who", "R. Alder", "--why", "wrong")
                .good();
        assertThat(workbook.resolve("log.csv").toFile().delete()).isTrue();
        assertThat(plumbrow("book", "import", workbook, "--book", book).good().out())
                .contains("1 line of the log not in the workbook stays: the log is only added to.");
        assertThat(plumbrow("log", "list", "--book", book, "--json").json().size())
                .isEqualTo(2);
    }
}
