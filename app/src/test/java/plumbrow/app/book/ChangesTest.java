package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;
import plumbrow.app.SmallSeason;
import plumbrow.documents.workbook.edit.EditFaults;
import plumbrow.documents.workbook.edit.ProgramDraft;
import plumbrow.documents.workbook.edit.RowChange;
import plumbrow.documents.workbook.edit.SeasonTables;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** Every change of a season is kept with what was and what became; each is taken back exactly, in this run or the next. */
class ChangesTest {
    private static final By ALDER = new By("R. Alder", "soil test", By.Way.DESK, Instant.parse("2027-03-02T08:00:00Z"));
    private static final Season SEASON = SmallSeason.of(2027);

    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void make() {
        file = folder.resolve("season.book");
        try (Book book = Book.create(file)) {
            book.put(SEASON);
        }
    }

    @Test
    void a_change_says_who_when_why_what_from_and_what_to() {
        try (Book book = Book.open(file)) {
            int number = book.edit(ALDER, List.of(cell(book, "fields", 0, "ph", "6.4")))
                    .orElseThrow();
            SeasonChange change = last(book);
            assertThat(change.number()).isEqualTo(number);
            assertThat(change.who()).isEqualTo("R. Alder");
            assertThat(change.why()).isEqualTo("soil test");
            assertThat(change.at()).isEqualTo(Instant.parse("2027-03-02T08:00:00Z"));
            assertThat(change.rows()).singleElement().satisfies(row -> {
                assertThat(row.columns()).containsExactly("ph");
                assertThat(row.before()).doesNotContainKey("ph");
                assertThat(row.after()).containsEntry("ph", "6.4");
            });
            assertThat(book.edit(ALDER, List.of(cell(book, "fields", 0, "ph", "6.4"))))
                    .isEmpty();
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void undo_and_redo_outlive_a_restart_and_are_exact() {
        int number;
        Season changed;
        try (Book book = Book.open(file)) {
            number = book.edit(ALDER, List.of(cell(book, "fields", 0, "ph", "6.4")))
                    .orElseThrow();
            changed = book.latestWritten().orElseThrow();
        }
        int undo;
        try (Book book = Book.open(file)) {
            undo = book.undo(number, ALDER);
            assertThat(book.latestWritten()).contains(SEASON);
            assertThat(last(book).way()).isEqualTo(By.Way.UNDO);
            assertThatThrownBy(() -> book.undo(number, ALDER)).hasMessageContaining("taken back already");
        }
        try (Book book = Book.open(file)) {
            int redo = book.undo(undo, ALDER);
            assertThat(book.latestWritten()).contains(changed);
            assertThat(last(book).way()).isEqualTo(By.Way.REDO);
            book.undo(redo, ALDER);
            assertThat(book.latestWritten()).contains(SEASON);
        }
    }

    @Test
    void what_others_changed_since_stays_and_a_row_changed_since_is_not_taken_back() {
        try (Book book = Book.open(file)) {
            int ph = book.edit(ALDER, List.of(cell(book, "fields", 0, "ph", "6.4")))
                    .orElseThrow();
            book.edit(ALDER, List.of(cell(book, "farms", 0, "grower", "L. Marsh")));
            book.undo(ph, ALDER);
            assertThat(book.latestWritten().orElseThrow().fields().get(0).ph()).isNull();
            assertThat(book.latestWritten().orElseThrow().farms().get(0).grower())
                    .isEqualTo("L. Marsh");
            int acres = book.edit(ALDER, List.of(cell(book, "fields", 0, "acres", "81")))
                    .orElseThrow();
            book.edit(ALDER, List.of(cell(book, "fields", 0, "acres", "82")));
            assertThatThrownBy(() -> book.undo(acres, ALDER))
                    .isInstanceOf(MeanwhileException.class)
                    .hasMessageContaining("acres was 81 and is 82");
            assertThat(book.latestWritten().orElseThrow().fields().get(0).acres())
                    .isEqualTo(82);
        }
    }

    @Test
    void two_windows_on_one_row_the_second_is_told() {
        try (Book book = Book.open(file)) {
            RowChange mine = cell(book, "fields", 0, "acres", "81");
            RowChange others = cell(book, "fields", 0, "ph", "7");
            book.edit(ALDER, List.of(others));
            assertThatThrownBy(() -> book.edit(ALDER, List.of(mine)))
                    .isInstanceOf(MeanwhileException.class)
                    .hasMessageContaining("ph was blank and is 7");
            assertThat(book.latestWritten().orElseThrow().fields().get(0).acres())
                    .isEqualTo(80);
        }
    }

    @Test
    void a_program_that_was_chosen_stays() {
        try (Book book = Book.open(file)) {
            book.choose(new Choice(2027, "North 80", "half rate", "R. Alder", Instant.EPOCH, "", null, null));
            List<RowChange> all = new ArrayList<>(ProgramDraft.removed(SEASON, "North 80", "half rate"));
            assertThatThrownBy(() -> book.edit(ALDER, all)).hasMessageContaining("was chosen by R. Alder");
            book.edit(ALDER, ProgramDraft.removed(SEASON, "North 80", "full rate"));
            assertThat(book.latestWritten().orElseThrow().programs()).hasSize(2);
            book.undo(last(book).number(), ALDER);
            assertThat(book.latestWritten()).contains(SEASON);
        }
    }

    @Test
    void a_workbook_says_what_it_would_change_and_its_coming_is_taken_back_too() {
        try (Book book = Book.open(file)) {
            book.edit(ALDER, List.of(cell(book, "fields", 0, "ph", "6.4")));
            Season changed = book.latestWritten().orElseThrow();
            Season workbook = withAdviser(SEASON, "L. Marsh");
            Book.Incoming coming = book.incoming(workbook);
            assertThat(coming.rows()).extracting(RowChange::table).containsExactlyInAnyOrder("season", "fields");
            assertThat(coming.gone()).containsExactly("the row fields: North 80");
            assertThat(book.latestWritten()).contains(changed);
            assertThatThrownBy(() -> book.bring(workbook, null, false)).hasMessageContaining("fields: North 80");
            book.bring(workbook, null, true);
            assertThat(book.latestWritten()).contains(workbook);
            book.undo(last(book).number(), ALDER);
            assertThat(book.latestWritten()).contains(changed);
        }
    }

    @Test
    void nobody_rewrites_the_history() throws SQLException {
        try (Book book = Book.open(file)) {
            book.edit(ALDER, List.of(cell(book, "fields", 0, "ph", "6.4")));
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String sql : List.of(
                    "UPDATE season_change SET who = 'somebody'",
                    "DELETE FROM season_change_row",
                    "UPDATE season_change_row SET after = NULL",
                    "INSERT OR REPLACE INTO season_change SELECT * FROM season_change")) {
                assertThatThrownBy(() -> statement.execute(sql)).hasMessageContaining("stays written down");
            }
        }
    }

    /** Random edits, undos, redos, imports and restarts: what is answered with done is there, and undo leads back exactly. */
    @Test
    void no_acknowledged_change_is_lost_in_a_random_order_of_them() {
        int operations = Integer.getInteger("changes.operations", 60);
        Random random = new Random(13);
        List<Season> states = new ArrayList<>(List.of(SEASON));
        Map<Integer, Season> before = new LinkedHashMap<>();
        Book book = Book.open(file);
        try {
            for (int i = 0; i < operations; i++) {
                Season now = states.get(states.size() - 1);
                int what = random.nextInt(10);
                if (what < 5) {
                    RowChange change = random(book, random, i);
                    try {
                        book.edit(ALDER, List.of(change)).ifPresent(number -> before.put(number, now));
                    } catch (EditFaults refused) {
                        assertThat(book.latestWritten()).contains(now);
                    }
                } else if (what < 8 && !before.isEmpty()) {
                    int number = new ArrayList<>(before.keySet()).get(before.size() - 1);
                    Season wanted = before.remove(number);
                    book.undo(number, ALDER);
                    assertThat(book.latestWritten()).contains(wanted);
                } else if (what == 8) {
                    book.bring(withAdviser(now, "adviser " + i), null, true);
                    before.put(last(book).number(), now);
                } else {
                    book.close();
                    book = Book.open(file);
                    assertThat(book.latestWritten()).contains(now);
                }
                states.add(book.latestWritten().orElseThrow());
            }
            assertThat(book.check()).isEmpty();
        } finally {
            book.close();
        }
    }

    private static RowChange random(Book book, Random random, int i) {
        SeasonTables tables = SeasonTables.of(book.latestWritten().orElseThrow());
        return switch (random.nextInt(4)) {
            case 0 -> cell(book, "fields", 0, "ph", String.valueOf(4 + random.nextInt(50) / 10.0));
            case 1 -> cell(book, "fields", 0, "acres", String.valueOf(70 + random.nextInt(30)));
            case 2 ->
                RowChange.add(
                        "history",
                        Map.of("field", "North 80", "year", String.valueOf(1990 + random.nextInt(40)), "crop", "corn"));
            default -> {
                Sheet<?> history = sheet("history");
                int size = tables.size(history);
                int at = size == 0 ? 0 : random.nextInt(size);
                yield size == 0
                        ? cell(book, "farms", 0, "grower", "grower " + i)
                        : RowChange.remove(
                                "history", at, tables.row(history, at).orElseThrow());
            }
        };
    }

    private static RowChange cell(Book book, String table, int at, String column, String text) {
        Map<String, String> row = SeasonTables.of(book.latestWritten().orElseThrow())
                .row(sheet(table), at)
                .orElseThrow();
        Map<String, String> changed = new LinkedHashMap<>(row);
        changed.put(column, text);
        return RowChange.change(table, at, row, changed);
    }

    private static Sheet<?> sheet(String name) {
        return Sheets.named(name).orElseThrow();
    }

    private static SeasonChange last(Book book) {
        List<SeasonChange> all = book.changes(2027);
        return all.get(all.size() - 1);
    }

    private static Season withAdviser(Season season, String adviser) {
        return new Season(
                season.year(),
                season.asOf(),
                adviser,
                season.farms(),
                season.fields(),
                season.history(),
                season.shelf(),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work());
    }
}
