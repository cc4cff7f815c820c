package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sqlite.SQLiteDataSource;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.app.SmallSeason;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.RowName;
import plumbrow.documents.confirm.ShelfTable;
import plumbrow.documents.confirm.Verdict;
import plumbrow.documents.shelf.FiledPaper;

/** Somebody changes the file by hand, past every guard: the record shows it. */
class ChainTest {
    private static final Instant AT = Instant.parse("2027-04-02T06:31:07Z");

    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void write() {
        file = folder.resolve("farm.book");
        try (Book book = Book.create(file)) {
            book.put(SmallSeason.of(2027));
            book.log(done(1, 3), AT);
            book.log(done(2, 4.5), AT);
            book.log(done(3, 5), AT);
            book.strike(2, new LogLine.Strike("R. Alder", "wrong field\nand day", AT));
            book.choose(new Choice(2027, "North 80", "half rate", "R. Alder", AT, "", 0.7, 512.25));
            byte[] label = "the very label".getBytes(StandardCharsets.UTF_8);
            book.keep(new FiledPaper(0, FiledPaper.Kind.LABEL, "l.txt", "", "", null, 1, false), label, AT);
            book.type(List.of(new TypedValue(1, 1, "Product name", "Stonefly 3G", "R. Alder", AT)));
            RowName row = RowName.of(ShelfTable.PLANT_BACKS, "next_crop=alfalfa", 1);
            book.decide(List.of(new LabelDecision(
                    PaperRows.sha256(label),
                    row,
                    "days",
                    Verdict.CORRECTED,
                    "310",
                    "",
                    3,
                    "10 months",
                    "R. Alder",
                    AT)));
            assertThat(book.check()).isEmpty();
        }
    }

    /** The form in docs/book.md, worked out once more by nothing but SHA-256. */
    @Test
    void theHeadFollowsFromTheRowsByTheFormOfTheManual() throws Exception {
        String before = "";
        int links = 0;
        try (Connection sql = open();
                Statement statement = sql.createStatement();
                ResultSet chain = statement.executeQuery("SELECT * FROM chain ORDER BY number")) {
            while (chain.next()) {
                String text = before + "\n" + links + "\n" + chain.getString("kind") + " " + chain.getInt("entry")
                        + "\n" + chain.getString("said");
                before = HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
                links++;
            }
        }
        assertThat(links).isEqualTo(9);
        try (Book book = Book.open(file)) {
            assertThat(book.head()).isEqualTo(new RecordHead(8, before));
            assertThat(RecordHead.read(" 8: " + before.substring(0, 32).toUpperCase(java.util.Locale.ROOT)))
                    .contains(new RecordHead(8, before.substring(0, 32)));
            assertThat(book.head().text()).isEqualTo("8:" + before.substring(0, 32));
        }
        assertThat(said("log line", 2).lines())
                .containsExactly(
                        "applicator=n",
                        "date=t2027-05-02",
                        "field=tNorth 80",
                        "number=i2",
                        "product=tStonefly 3G",
                        "rate=r0x1.2p2",
                        "rate_unit=tlb",
                        "share_pct=r0x1.9p6",
                        "source=tlog book",
                        "written_at=t2027-04-02T06:31:07Z");
        assertThat(said("strike", 2)).contains("why=twrong field\\nand day");
    }

    /** With every guard in place a rate was changed so: the row that is in the way is taken out without asking them. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "INSERT OR REPLACE INTO log_line SELECT number, field, date, product, 99, rate_unit, share_pct, applicator,"
                        + " source, written_at FROM log_line WHERE number = 1",
                "REPLACE INTO log_strike SELECT line, 'X', why, struck_at FROM log_strike",
                "INSERT OR REPLACE INTO choice SELECT number, season, field, course, 'X', chosen_at, why,"
                        + " chance_beats_baseline, mean_margin_usd_ac FROM choice",
                "REPLACE INTO paper_typed SELECT number, paper, page, about, 'X', who, typed_at FROM paper_typed",
                "REPLACE INTO label_decision SELECT number, sha256, shelf, row_key, nth, property, verdict, '0', instead_of,"
                        + " page, words, who, decided_at FROM label_decision",
                "REPLACE INTO chain SELECT number, kind, entry, 'X', hash FROM chain WHERE number = 1",
                "UPDATE OR REPLACE log_line SET number = 1 WHERE number = 2",
                "UPDATE paper SET product = 'X'",
                "DELETE FROM paper",
                "DELETE FROM chain"
            })
    void noGuardIsGoneAround(String attack) {
        assertThatThrownBy(() -> byHand(attack)).hasMessageMatching("(?s).*(stays|struck).*");
        assertThat(problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "UPDATE log_line SET rate = 9 WHERE number = 2 | Line 2 of the log was changed: rate was 4.5 and is 9.0.",
                "UPDATE log_line SET applicator = 'X' WHERE number = 1 | Line 1 of the log was changed: applicator was blank and is 'X'.",
                "DELETE FROM log_line WHERE number = 3 | Line 3 of the log was removed; it said: date '2027-05-03'",
                "DELETE FROM log_strike | The strike of line 2 of the log was removed",
                "UPDATE log_strike SET why = 'so' | The strike of line 2 of the log was changed: why was",
                "UPDATE choice SET course = 'full rate' | Choice 1 was changed: course was 'half rate' and is 'full rate'.",
                "DELETE FROM choice | Choice 1 was removed",
                "UPDATE paper SET file_name = 'm.txt' | Paper 1 was changed: file name was 'l.txt' and is 'm.txt'.",
                "UPDATE paper_typed SET value = 'X' | Typed value 1 was changed",
                "UPDATE label_decision SET value = '0' | Label value 1 was changed: value was '310' and is '0'.",
                "INSERT INTO log_line SELECT 9, field, date, product, rate, rate_unit, share_pct, applicator, source, written_at FROM log_line WHERE number = 1 | Line 9 of the log was not written by Plumbrow",
                "UPDATE chain SET said = replace(said, '0x1.2p2', '0x1.2p3') WHERE number = 2 | The record was changed at entry 2 (line 2 of the log)",
                "DELETE FROM chain WHERE number = 2 | The record lacks entry 2.",
                "DELETE FROM chain WHERE number = 0 | The beginning of the record's chain is gone.",
                "DELETE FROM chain | The beginning of the record's chain is gone.",
                "UPDATE field SET acres = 81 | Season 2027 is no longer as it was put in: its table field",
                "UPDATE season SET adviser = 'X' | Season 2027 is no longer as it was put in: its table season"
            })
    void whatIsChangedWithTheGuardsTakenOutIsFoundAndSaid(String attack, String said) throws SQLException {
        unguarded(attack);
        assertThat(problems())
                .anyMatch(problem -> problem.startsWith(said))
                .anyMatch(problem -> problem.contains("guards"));
    }

    @Test
    void whatIsPutBackWithItsGuardsIsFoundAllTheSame() throws SQLException {
        List<String> guards = guards();
        unguarded("UPDATE log_line SET rate = 9 WHERE number = 2");
        for (String guard : guards) {
            byHand(guard);
        }
        assertThat(problems()).containsExactly("Line 2 of the log was changed: rate was 4.5 and is 9.0.");
    }

    /** A row and its link taken out, or the whole chain worked out anew, hold together: only a head kept elsewhere tells. */
    @Test
    void anEndCutOffOrWrittenAnewIsFoundByAHeadKeptElsewhere() throws Exception {
        RecordHead head;
        Path copy = folder.resolve("copy.book");
        try (Book book = Book.open(file)) {
            head = book.head();
            book.backup(copy);
            book.log(done(4, 6), AT);
            assertThat(book.check(List.of(head))).isEmpty();
        }
        RecordHead printed = RecordHead.read(head.text()).orElseThrow();
        Path cut = Files.copy(copy, folder.resolve("cut.book"));
        unguarded(cut, "DELETE FROM label_decision");
        unguarded(cut, "DELETE FROM chain WHERE number = 8");
        try (Book book = Book.open(cut)) {
            assertThat(book.check(List.of(printed)))
                    .contains("The record ends before entry 8, which the head " + head.text()
                            + " speaks of: its end was cut off.");
            assertThat(book.check()).allMatch(problem -> problem.contains("guards"));
            // Others write on, and the end grows again.
            book.log(done(4, 6), AT);
            assertThat(book.check(List.of(printed)))
                    .contains("The record up to entry 8 is not the one with the head " + head.text()
                            + ": it was written anew since.");
        }
        Path anew = Files.copy(copy, folder.resolve("anew.book"));
        unguarded(anew, "UPDATE log_line SET rate = 9 WHERE number = 2");
        unguarded(anew, "DELETE FROM chain");
        unguarded(anew, "INSERT INTO chain_due VALUES (1)");
        try (Book book = Book.open(anew)) {
            assertThat(book.check()).allMatch(problem -> problem.contains("guards"));
            assertThat(book.check(List.of(printed))).anyMatch(problem -> problem.contains("was written anew since"));
        }
    }

    @Test
    void aByteChangedInTheFileIsFound() throws Exception {
        byte[] whole = Files.readAllBytes(file);
        for (String words :
                List.of("log book", "wrong field", "half rate", "the very label", "Alder Home", "10 months")) {
            int at = new String(whole, StandardCharsets.ISO_8859_1).indexOf(words);
            int found = 0;
            while (at >= 0) {
                byte[] changed = whole.clone();
                changed[at] ^= 1;
                Path other = Files.write(folder.resolve("byte.book"), changed);
                try (Book book = Book.open(other)) {
                    assertThat(book.check()).as("%s at %d", words, at).isNotEmpty();
                }
                found++;
                at = new String(whole, StandardCharsets.ISO_8859_1).indexOf(words, at + 1);
            }
            assertThat(found).as(words).isPositive();
        }
    }

    @Test
    void anOlderBookIsLinkedAsItIsFoundAndSaysSo() throws SQLException {
        Path old = folder.resolve("old.book");
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite:" + old);
        Flyway.configure(getClass().getClassLoader())
                .dataSource(source)
                .locations("classpath:db/migration/sqlite")
                .target("8")
                .load()
                .migrate();
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + old);
                Statement statement = sql.createStatement()) {
            statement.execute("ATTACH DATABASE '" + file + "' AS lender");
            for (String table : List.of("season", "log_line", "log_strike", "choice")) {
                String columns = columns(statement, table);
                statement.execute(
                        "INSERT INTO main." + table + " (" + columns + ") SELECT " + columns + " FROM lender." + table);
            }
        }
        try (Book book = Book.open(old)) {
            assertThat(book.check()).isEmpty();
            assertThat(book.head().number()).isEqualTo(5);
            RecordHead head = book.head();
            book.log(done(4, 6), AT);
            assertThat(book.check(List.of(head))).isEmpty();
        }
        file = old;
        assertThat(said("beginning", 0)).contains("held=i5");
        byHand("ALTER TABLE log_line ADD COLUMN later TEXT");
        assertThat(problems()).allMatch(problem -> problem.contains("no longer as Plumbrow made them"));
        unguarded("UPDATE log_line SET later = 'X' WHERE number = 1");
        assertThat(problems()).contains("Line 1 of the log was changed: later was blank and is 'X'.");
    }

    @Test
    void aHeadIsReadAsItIsPrintedOrNotAtAll() {
        for (String wrong : List.of("", "8", "8:", "8:abc", "x:0123456789abcdef", "8:0123456789abcdeg")) {
            assertThat(RecordHead.read(wrong)).isEqualTo(Optional.empty());
        }
    }

    /** The columns that a table had then. */
    private static String columns(Statement statement, String table) throws SQLException {
        List<String> names = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery("SELECT name FROM main.pragma_table_info('" + table + "')")) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return String.join(", ", names);
    }

    private static Done done(int day, double pounds) {
        return new Done(
                "North 80",
                LocalDate.of(2027, 5, day),
                "Stonefly 3G",
                new Amount(pounds, FarmUnit.LB),
                100,
                null,
                "log book");
    }

    private List<String> problems() {
        try (Book book = Book.open(file)) {
            return book.check();
        }
    }

    private String said(String kind, int entry) throws SQLException {
        try (Connection sql = open();
                Statement statement = sql.createStatement();
                ResultSet row = statement.executeQuery(
                        "SELECT said FROM chain WHERE kind = '" + kind + "' AND entry = " + entry)) {
            row.next();
            return row.getString(1);
        }
    }

    private List<String> guards() throws SQLException {
        List<String> guards = new ArrayList<>();
        try (Connection sql = open();
                Statement statement = sql.createStatement();
                ResultSet rows = statement.executeQuery("SELECT sql FROM sqlite_master WHERE type = 'trigger'")) {
            while (rows.next()) {
                guards.add(rows.getString(1));
            }
        }
        return guards;
    }

    private void byHand(String statement) throws SQLException {
        try (Connection sql = open();
                Statement hand = sql.createStatement()) {
            hand.execute(statement);
        }
    }

    private void unguarded(String attack) throws SQLException {
        unguarded(file, attack);
    }

    /** As anybody with the file can: every trigger is taken out first. */
    private static void unguarded(Path file, String attack) throws SQLException {
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement hand = sql.createStatement()) {
            List<String> names = new ArrayList<>();
            try (ResultSet rows = hand.executeQuery("SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
                while (rows.next()) {
                    names.add(rows.getString(1));
                }
            }
            for (String name : names) {
                hand.execute("DROP TRIGGER " + name);
            }
            hand.execute(attack);
        }
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file);
    }
}
