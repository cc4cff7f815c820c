package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.transaction.TransactionSystemException;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import plumbrow.app.RandomSeason;
import plumbrow.app.SmallSeason;

/** A book in a file: the contract of all books, and what is particular to a file. */
class SqliteBookTest extends BookContract {
    @Override
    Book fresh() {
        return Book.create(file());
    }

    @Override
    Book again() {
        return Book.open(file());
    }

    private Path file() {
        return folder.resolve("farm é.book");
    }

    @Test
    void betweenTransactionsTheFileIsWholeByItself() throws IOException {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
            assertThat(names()).containsExactly("farm é.book");
            Path copy = Files.copy(file(), folder.resolve("copy.book"));
            assertThat(Book.open(copy).season(2027)).contains(SmallSeason.of(2027));
        }
    }

    /**
     * The driver begins another transaction after each commit: had that the lock of a writer, a commit that is done would be
     * answered with "in use" where somebody else has the lock by then. Found by writers that were killed, 2,000 answers long.
     */
    @Test
    void aChangeThatIsWrittenHoldsNoLockAndIsNotAnsweredWithInUse() {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
        }
        List<String> others = new ArrayList<>();
        SqliteFile file = SqliteFile.open(file(), Duration.ofMillis(50));
        for (boolean fails : List.of(false, true)) {
            try {
                file.write(sql -> {
                    TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
                        @Override
                        public void afterCompletion(int status) {
                            others.add(writtenByAnother());
                        }
                    });
                    sql.execute("PRAGMA user_version = " + (700 + others.size()));
                    if (fails) {
                        throw new BookException("thought better of it");
                    }
                    return sql;
                });
            } catch (BookException better) {
                assertThat(fails).isTrue();
            }
        }
        assertThat(others).containsExactly("written", "written");
    }

    private String writtenByAnother() {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = other.createStatement()) {
            statement.execute("PRAGMA busy_timeout = 0");
            statement.execute("BEGIN IMMEDIATE");
            statement.execute("ROLLBACK");
            return "written";
        } catch (SQLException inUse) {
            return String.valueOf(inUse.getMessage());
        }
    }

    @Test
    void aPutThatFailsHalfwayLeavesEveryByteAsItWas() throws Exception {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
            sql("CREATE TRIGGER power_cut BEFORE INSERT ON assumptions BEGIN SELECT RAISE(ABORT, 'power cut'); END");
            byte[] before = Files.readAllBytes(file());
            assertThatThrownBy(() -> book.put(SmallSeason.of(2027))).isInstanceOf(BookException.class);
            assertThat(Files.readAllBytes(file())).isEqualTo(before);
            assertThat(names()).containsExactly("farm é.book");
            assertThat(book.season(2027)).contains(SmallSeason.of(2027));
        }
    }

    @Test
    void readingLeavesEveryByteAsItWas() throws Exception {
        again().put(SmallSeason.of(2027));
        byte[] before = Files.readAllBytes(file());
        try (Book book = again()) {
            assertThat(book.latestSeason()).isPresent();
            assertThat(book.check()).isEmpty();
        }
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
        assertThat(names()).containsExactly("farm é.book");
    }

    @Test
    void anExistingFileIsNeverOverwritten() throws IOException {
        Path other = Files.writeString(folder.resolve("notes.txt"), "keep me");
        assertThatThrownBy(() -> Book.create(other))
                .isInstanceOf(BookException.class)
                .hasMessage(other + " is there already; give a name that is not taken.");
        assertThat(other).hasContent("keep me");
    }

    @Test
    void aBookNeedsAFolderThatIsThere() {
        assertThatThrownBy(() -> Book.create(folder.resolve("nowhere/new.book")))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("check that its folder is there");
    }

    @Test
    void aMissingBookIsSaidSo() {
        Path missing = folder.resolve("missing.book");
        assertThatThrownBy(() -> Book.open(missing))
                .isInstanceOf(BookException.class)
                .hasMessage("There is no book " + missing + "; make one with: plumbrow book new " + missing);
        assertThat(missing).doesNotExist();
    }

    @Test
    void aFolderIsNotABook() {
        assertThatThrownBy(() -> Book.open(folder)).hasMessage(folder + " is a folder, not a book.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "field,acres\nNorth 80,80\n", "SQLite format 3"})
    void anyOtherFileIsNotABook(String content) throws IOException {
        Path other = Files.writeString(folder.resolve("other.csv"), content);
        assertThatThrownBy(() -> Book.open(other))
                .isInstanceOf(BookException.class)
                .hasMessage(other + " is not a book.");
        assertThat(other).hasContent(content);
    }

    @Test
    void anotherProgramsDatabaseIsNotTouched() throws Exception {
        Path other = folder.resolve("other.db");
        sql(other, "CREATE TABLE season (season INTEGER)");
        byte[] before = Files.readAllBytes(other);
        assertThatThrownBy(() -> Book.open(other))
                .hasMessage(other + " is not a book; it is a database of another program.");
        assertThat(Files.readAllBytes(other)).isEqualTo(before);
    }

    @Test
    void aDamagedFileIsSaidSo() throws IOException {
        byte[] content = "SQLite format 3\0".repeat(600).getBytes(StandardCharsets.US_ASCII);
        Path damaged = Files.write(folder.resolve("damaged.book"), content);
        assertThatThrownBy(() -> Book.open(damaged))
                .isInstanceOf(BookException.class)
                .hasMessageContaining("damaged");
    }

    @Test
    void aBookOfANewerPlumbrowIsRefused() throws Exception {
        sql("INSERT INTO flyway_schema_history SELECT installed_rank + 1, '999', description, type, script, checksum, "
                + "installed_by, installed_on, execution_time, success FROM flyway_schema_history "
                + "ORDER BY installed_rank DESC LIMIT 1");
        assertThatThrownBy(this::again)
                .isInstanceOf(BookException.class)
                .hasMessageContaining("was written by a newer Plumbrow (form 999");
    }

    @Test
    void theSchemaKnowsItsLastStep() throws Exception {
        try (var steps = Files.list(
                Path.of(getClass().getResource("/db/migration/sqlite").toURI()))) {
            assertThat(steps.map(step -> step.getFileName().toString().replaceAll("V(\\d+)__.*", "$1"))
                            .mapToInt(Integer::parseInt)
                            .max())
                    .hasValue(Schema.VERSION);
        }
    }

    @Test
    void aBookInUseIsSaidSo() throws Exception {
        Book book = new Book(SqliteFile.open(file(), Duration.ofMillis(20)));
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = other.createStatement()) {
            statement.execute("BEGIN IMMEDIATE");
            assertThatThrownBy(() -> book.put(SmallSeason.of(2027)))
                    .isInstanceOf(BookException.class)
                    .hasMessageContaining("is in use by another program");
            assertThat(book.seasons()).isEmpty();
        }
    }

    @Test
    void aWriteProtectedBookIsSaidSo() throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA query_only = on");
            assertThatThrownBy(() -> statement.execute("DELETE FROM season"))
                    .satisfies(
                            fault -> assertThat(SqliteFaults.sentence("f.book", fault))
                                    .hasMessage(
                                            "The book f.book or its folder is write-protected; it can be read, but nothing was written."));
        }
    }

    /** A database whose disk is full ends the transaction itself, and then there is none left to roll back. */
    @Test
    void whyATransactionWasGivenUpIsSaidAndNotThatItCouldNotBeRolledBack() {
        var gaveUp = new TransactionSystemException(
                "", new SQLiteException("cannot rollback - no transaction is active", SQLiteErrorCode.SQLITE_ERROR));
        gaveUp.initApplicationException(new SQLiteException("full", SQLiteErrorCode.SQLITE_FULL));
        assertThat(SqliteFaults.sentence("f.book", gaveUp))
                .hasMessage("The disk is full; nothing was changed in the book f.book.")
                .satisfies(fault -> assertThat(SqliteFaults.ofTheDisk(fault)).isTrue());
    }

    /** The database can't make the file it shares with others, as on a disk that is full or write-protected. */
    @Test
    void aBookWhoseDiskTakesNothingIsReadAllTheSameAndSaysWhyItCannotBeWritten() throws Exception {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
        }
        Files.createDirectory(folder.resolve(file().getFileName() + "-shm"));
        try (Book book = again()) {
            assertThat(book.latestSeason()).contains(SmallSeason.of(2027));
            assertThat(book.check()).isEmpty();
            assertThatThrownBy(() -> book.put(SmallSeason.of(2028)))
                    .isInstanceOf(BookException.class)
                    .hasMessageContaining("is write-protected; it can be read, but nothing was written");
            assertThat(book.seasons()).containsExactly(2027);
        }
    }

    /** What was written but is not yet in the file must not be passed over in silence. */
    @Test
    void aBookWithAChangeThatCannotBeReadIsNotReadPastThatChange() throws Exception {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
        }
        Files.createDirectory(folder.resolve(file().getFileName() + "-shm"));
        Files.createDirectory(folder.resolve(file().getFileName() + "-wal"));
        assertThatThrownBy(() -> again().seasons()).isInstanceOf(BookException.class);
    }

    @Test
    void aChoiceCanBeNeitherChangedNorRemoved() throws Exception {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
            book.choose(new Choice(2027, "North 80", "half rate", "R. Alder", java.time.Instant.EPOCH, "", null, null));
        }
        for (String change : List.of("UPDATE choice SET who = 'X'", "DELETE FROM choice")) {
            assertThatThrownBy(() -> sql(change)).hasMessageContaining("stays as it was");
        }
    }

    @Test
    void checkFindsWhatOthersBroke() throws Exception {
        try (Book book = again()) {
            book.put(SmallSeason.of(2027));
            book.put(RandomSeason.of(2028, 5));
            sql("UPDATE field SET farm = 'Nobody' WHERE season = 2027");
            assertThat(book.check())
                    .containsExactly(
                            "A row of the table field names a row of farm that isn't there.", unsealed("field"));
            sql("UPDATE field SET farm = 'Alder Home', crop = 'turnip' WHERE season = 2027");
            assertThat(book.check())
                    .containsExactly(
                            unsealed("field"),
                            "Season 2027 can't be read. The book holds 'turnip' where a word for crop should stand.");
            sql("UPDATE field SET crop = 'corn' WHERE season = 2027");
            sql("UPDATE pass SET rate_unit = NULL WHERE season = 2027 AND position = 1");
            assertThat(book.check())
                    .containsExactly(
                            unsealed("pass"), "Season 2027 reads back otherwise than it stands in the table pass.");
            sql("PRAGMA application_id = 7");
            assertThat(book.check()).contains("The file no longer says that it is a book.");
        }
    }

    private static String unsealed(String table) {
        return "Season 2027 is no longer as it was put in: its table " + table
                + " was changed by something else than Plumbrow.";
    }

    private List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("farm"))
                    .toList();
        }
    }

    private void sql(String statement) throws SQLException {
        sql(file(), statement);
    }

    /** As any other program would change the file: without foreign keys. */
    private static void sql(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
