package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;
import plumbrow.documents.workbook.WorkbookWriter;

@SuppressWarnings("NullAway.Init")
class BookCommandTest {
    private static final Season SEASON = SmallSeason.of(2027);

    @TempDir
    Path folder;

    @Test
    void aNewBookIsEmptyAndNeverWritesOverAFile() {
        Path file = folder.resolve("new.book");
        assertThat(plumbrow("book", "new", file).good().out()).startsWith("The book " + file + " is made.");
        assertThat(plumbrow("book", "check", "--book", file).good().out()).contains("is whole. Seasons: none.");
        plumbrow("book", "new", file).refused(file + " is there already");
        Path other = folder.resolve("other.book");
        assertThat(plumbrow("book", "new", other, "--json")
                        .good()
                        .json()
                        .get("book")
                        .stringValue())
                .isEqualTo(other.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"season.xlsx", "season"})
    void aWorkbookGoesInAndComesOutEqual(String name) {
        Path file = SmallBook.of(folder.resolve("farm.book"));
        Path in = folder.resolve(name);
        WorkbookWriter.write(SEASON, in);
        assertThat(plumbrow("book", "import", in, "--book", file).good().out())
                .startsWith("Season 2027 is now in " + file + ": 1 farm, 1 field with 3 programs, 2 products.");
        Path out = folder.resolve("again-" + name);
        assertThat(plumbrow("book", "export", out, "--book", file).good().out()).startsWith("Season 2027 is written");
        Path second = SmallBook.of(folder.resolve("second.book"));
        plumbrow("book", "import", out, "--book", second).good();
        assertThat(season(second)).isEqualTo(season(file)).isEqualTo(SEASON);
    }

    @Test
    void importingAgainReplacesTheSeasonAndSaysSo() {
        Path file = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2026), SEASON);
        try (Book book = Book.open(file)) {
            book.choose(new Choice(2027, "North 80", "half rate", "R. Alder", Instant.EPOCH, "", 0.7, 500.0));
        }
        Path in = folder.resolve("season.xlsx");
        WorkbookWriter.write(SEASON, in);
        assertThat(plumbrow("book", "import", in, "--book", file).good().out())
                .startsWith("Season 2027 was replaced in ");
        try (Book book = Book.open(file)) {
            assertThat(book.seasons()).containsExactly(2026, 2027);
            assertThat(book.choices(2027)).hasSize(1);
        }
        assertThat(plumbrow("book", "import", in, "--book", file, "--json")
                        .good()
                        .json()
                        .get("replaced")
                        .booleanValue())
                .isTrue();
    }

    @Test
    void aFaultyWorkbookLeavesEveryByteOfTheBookAsItWas() throws Exception {
        Path file = SmallBook.of(folder.resolve("farm.book"), SEASON);
        Path in = folder.resolve("season");
        WorkbookWriter.write(SEASON, in);
        Path fields = in.resolve("fields.csv");
        Files.writeString(fields, Files.readString(fields).replace("corn", "turnip"));
        byte[] before = Files.readAllBytes(file);
        Typed typed = plumbrow("book", "import", in, "--book", file);
        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err())
                .contains("fields")
                .contains("row 2")
                .contains("crop")
                .contains("\"turnip\"");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        assertThat(files()).containsExactly("farm.book", "season");
    }

    /** Even one who reads a book leaves traces beside it while it is open; a faulty workbook must not come that far. */
    @Test
    void aFaultyWorkbookIsRefusedBeforeTheBookIsOpened() {
        Typed typed = plumbrow("book", "import", folder.resolve("none.xlsx"), "--book", folder.resolve("none.book"));
        typed.refused("none.xlsx");
        assertThat(typed.err()).doesNotContain("none.book");
    }

    @Test
    void exportNeverWritesOverAFile() throws IOException {
        Path file = SmallBook.of(folder.resolve("farm.book"), SEASON);
        Path mine = Files.writeString(folder.resolve("mine.xlsx"), "mine");
        plumbrow("book", "export", mine, "--book", file).refused(mine + " is there already");
        assertThat(mine).hasContent("mine");
        plumbrow("book", "export", folder, "--book", file).refused("is there already");
        plumbrow("book", "export", folder.resolve("x.xlsx"), "--book", file, "--year", 1999)
                .refused("no season 1999");
    }

    @Test
    void aBackupIsAWholeBook() {
        Path file = SmallBook.of(folder.resolve("farm.book"), SEASON);
        Path copy = folder.resolve("copy.book");
        assertThat(plumbrow("book", "backup", copy, "--book", file).good().out())
                .contains("is copied to " + copy);
        assertThat(season(copy)).isEqualTo(SEASON);
        plumbrow("book", "backup", copy, "--book", file).refused("is there already");
        plumbrow("book", "backup", folder.resolve("no/copy.book"), "--book", file)
                .refused("check that its folder is there");
    }

    @Test
    void checkNamesWhatIsBroken() throws SQLException {
        Path file = SmallBook.of(folder.resolve("farm.book"), SEASON);
        assertThat(plumbrow("book", "check", "--book", file).good().out()).contains("is whole. Seasons: 2027.");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("UPDATE field SET farm = 'Nobody'");
        }
        Typed typed = plumbrow("book", "check", "--book", file);
        assertThat(typed.code()).isEqualTo(1);
        assertThat(typed.out()).contains("has 2 faults").contains("names a row of farm that isn't there");
        assertThat(plumbrow("book", "check", "--book", file, "--json")
                        .json()
                        .get("problems")
                        .size())
                .isEqualTo(2);
    }

    @Test
    void checkHoldsTheRecordAgainstAHeadKeptElsewhere() {
        Path file = SmallBook.of(folder.resolve("farm.book"), SEASON);
        Path copy = folder.resolve("copy.book");
        Choice choice = new Choice(2027, "North 80", "half rate", "R. Alder", Instant.EPOCH, "", 0.7, 500.0);
        try (Book book = Book.open(file)) {
            book.choose(choice);
        }
        String copied = plumbrow("book", "backup", copy, "--book", file).good().out();
        String head = copied.replaceAll("(?s).*Head of its record: (1:[0-9a-f]{32})\\..*", "$1");
        try (Book book = Book.open(file)) {
            book.choose(choice);
        }
        assertThat(plumbrow("book", "check", "--book", file, "--head", head, "--backup", copy)
                        .good()
                        .out())
                .contains("is whole", "Head of its record: 2:", "it went through 2 heads given");
        Path other = SmallBook.of(folder.resolve("other.book"), SEASON);
        Typed cut = plumbrow("book", "check", "--book", other, "--head", head);
        assertThat(cut.code()).isEqualTo(1);
        assertThat(cut.out()).contains("The record ends before entry 1, which the head " + head);
        plumbrow("book", "check", "--book", file, "--head", "12345").refused("--head is '12345'; expected a number");
    }

    @Test
    void aWorkbookDoesNotGoOverWhatWasChangedInTheBookSince() {
        Path file = SmallBook.of(folder.resolve("farm.book"), SEASON);
        Path in = folder.resolve("season");
        WorkbookWriter.write(SEASON, in);
        try (Book book = Book.open(file)) {
            book.change(season -> season.withPrograms(season.programs().subList(0, 2), season.work()));
        }
        plumbrow("book", "import", in, "--book", file)
                .refused(
                        "has it otherwise: the program 'full rate' of North 80. Nothing was changed. Write the season out");
        assertThat(plumbrow("book", "import", in, "--book", file, "--replace")
                        .good()
                        .out())
                .contains("No longer as it was changed in the book: the program 'full rate' of North 80.");
        assertThat(season(file)).isEqualTo(SEASON);
    }

    @Test
    void bookAloneAsksWhatToDo() {
        plumbrow("book").refused("new, import, export, begin-season, check or backup");
        plumbrow("book", "burn").misused("burn");
        plumbrow("book", "import").misused("WORKBOOK");
        plumbrow("book", "backup").misused("FILE");
    }

    private static Season season(Path file) {
        try (Book book = Book.open(file)) {
            return book.latestSeason().orElseThrow();
        }
    }

    private List<String> files() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
