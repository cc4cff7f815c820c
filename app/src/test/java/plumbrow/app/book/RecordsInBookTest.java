package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.program.Done;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.app.RecordsOfTest;
import plumbrow.app.SmallSeason;
import plumbrow.app.records.RecordEntry;

/** Records are lines of the log with more to them; they are corrected, never changed, and hang in the chain. */
class RecordsInBookTest {
    private static final String PRODUCT = RecordsOfTest.PRODUCT;
    private static final Instant AT = RecordsOfTest.NOW;
    private static final By LIND = new By("S. Lind", "typed 6 for 3", By.Way.DESK, AT);

    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void book() {
        file = folder.resolve("farm.book");
        try (Book book = Book.create(file)) {
            book.put(RecordsOfTest.stocked(SmallSeason.of(2027), 400));
        }
    }

    @Test
    void recordIsOneLineOfTheLogForEachProductAndComesBackAsItWasWritten() {
        try (Book book = Book.open(file)) {
            ApplicationRecord record = record(book, Map.of());
            KeptRecord kept = book.record(record, LIND, AT);
            assertThat(book.records()).containsExactly(kept);
            assertThat(kept.record()).isEqualTo(record);
            assertThat(kept.who()).isEqualTo("S. Lind");
            assertThat(kept.counts()).isTrue();
            LogLine line = book.log().get(0);
            assertThat(book.log()).hasSize(1);
            assertThat(line.record()).isEqualTo(kept.number());
            assertThat(line.done())
                    .isEqualTo(new Done(
                            "North 80",
                            LocalDate.of(2027, 5, 2),
                            PRODUCT,
                            new Amount(3, FarmUnit.LB),
                            50,
                            "S. Lind",
                            ApplicationRecord.SOURCE));
            assertThat(season(book).work().log()).containsExactly(line.done());
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void stockGoesDownAndComesBack() {
        try (Book book = Book.open(file)) {
            KeptRecord first = book.record(record(book, Map.of()), LIND, AT);
            assertThat(onHand(book)).isEqualTo(400 - 120);
            KeptRecord second = book.correct(first.number(), record(book, Map.of("rate_1", "6")), LIND, AT);
            assertThat(onHand(book)).isEqualTo(400 - 240);
            book.voidRecord(second.number(), LIND, AT);
            assertThat(onHand(book)).isEqualTo(400);
            assertThat(book.changes(2027).stream().map(SeasonChange::why)).contains("application record 1");
        }
    }

    @Test
    void moreThanWasOnHandLeavesNothingAndGivesBackNoMoreThanItTook() {
        try (Book book = Book.open(file)) {
            book.put(RecordsOfTest.stocked(SmallSeason.of(2027), 100));
            KeptRecord kept = book.record(record(book, Map.of()), LIND, AT);
            assertThat(onHand(book)).isZero();
            book.voidRecord(kept.number(), LIND, AT);
            assertThat(onHand(book)).isEqualTo(100);
        }
    }

    @Test
    void correctionKeepsTheOldRecordAndTheReason() {
        try (Book book = Book.open(file)) {
            KeptRecord wrong = book.record(record(book, Map.of("rate_1", "6")), LIND, AT);
            KeptRecord right = book.correct(wrong.number(), record(book, Map.of()), LIND, AT);
            KeptRecord again = book.correct(right.number(), record(book, Map.of("acres", "41")), LIND, AT);
            List<KeptRecord> all = book.records();
            assertThat(all.stream().map(KeptRecord::counts)).containsExactly(false, false, true);
            assertThat(all.stream().map(KeptRecord::correctedBy)).containsExactly(2, 3, null);
            assertThat(again.corrects()).isEqualTo(2);
            assertThat(again.why()).isEqualTo("typed 6 for 3");
            assertThat(all.get(0).record().products().get(0).rate()).isEqualTo(new Amount(6, FarmUnit.LB));
            assertThat(season(book).work().log()).hasSize(1);
            assertThat(season(book).work().log().get(0).sharePct()).isEqualTo(100 * 41 / 80.);
            assertThatThrownBy(() -> book.correct(wrong.number(), record(book, Map.of()), LIND, AT))
                    .isInstanceOf(BookException.class)
                    .hasMessage("Record 1 is corrected already, by record 2: correct that one.");
            assertThatThrownBy(() -> book.correct(9, record(book, Map.of()), LIND, AT))
                    .hasMessage("There is no record 9.");
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void lineOfRecordIsNotStruckByItself() {
        try (Book book = Book.open(file)) {
            book.record(record(book, Map.of()), LIND, AT);
            assertThatThrownBy(() -> book.strike(1, new LogLine.Strike("S. Lind", "no", AT)))
                    .hasMessageContaining("product of application record 1");
            assertThat(book.log().get(0).counts()).isTrue();
        }
    }

    @Test
    void workbookThatHasTheLineAddsItNoSecondTime() {
        try (Book book = Book.open(file)) {
            book.record(record(book, Map.of()), LIND, AT);
            Season out = season(book);
            assertThat(book.put(out).added()).isZero();
            assertThat(book.log()).hasSize(1);
        }
    }

    @Test
    void nothingOfARecordCanBeChangedOrRemoved() throws SQLException {
        try (Book book = Book.open(file)) {
            KeptRecord kept = book.record(record(book, Map.of()), LIND, AT);
            book.voidRecord(kept.number(), LIND, AT);
        }
        for (String sql : List.of(
                "UPDATE application_record SET acres = 1",
                "DELETE FROM application_record",
                "INSERT OR REPLACE INTO application_record SELECT * FROM application_record",
                "UPDATE record_product SET total = 1",
                "DELETE FROM record_product",
                "INSERT OR REPLACE INTO record_product SELECT * FROM record_product",
                "UPDATE record_void SET why = ''",
                "DELETE FROM record_void",
                "INSERT OR REPLACE INTO record_void SELECT * FROM record_void")) {
            assertThatThrownBy(() -> byHand(sql)).as(sql).hasMessageContaining("stays as it was");
        }
    }

    @Test
    void whatIsChangedByHandIsFound() throws SQLException {
        RecordHead head;
        try (Book book = Book.open(file)) {
            book.record(record(book, Map.of("wind_start_mph", "7")), LIND, AT);
            book.record(record(book, Map.of("date", "2027-05-03")), LIND, AT);
            head = book.head();
        }
        byHand("DROP TRIGGER application_record_is_not_changed");
        byHand("UPDATE application_record SET wind_start_mph = '9' WHERE number = 1");
        assertThat(check())
                .anyMatch(fault -> fault.startsWith("Application record 1 was changed: wind start mph was '7'"));
        byHand("UPDATE application_record SET wind_start_mph = '7' WHERE number = 1");
        byHand("DROP TRIGGER record_product_is_not_removed");
        byHand("DELETE FROM record_product WHERE line = 2");
        assertThat(check())
                .anyMatch(
                        fault -> fault.startsWith("What line 2 of the log has of its application record was removed"));
        cutTail();
        try (Book book = Book.open(file)) {
            assertThat(book.check(List.of(head)))
                    .anyMatch(fault -> fault.contains("its end was cut off") && fault.contains(head.text()));
        }
    }

    /** Takes the last record out with all its links, as somebody would who knows the book. */
    private void cutTail() throws SQLException {
        for (String sql : List.of(
                "DROP TRIGGER chain_is_not_removed",
                "DROP TRIGGER application_record_is_not_removed",
                "DROP TRIGGER log_line_is_not_removed",
                "DELETE FROM application_record WHERE number = 2",
                "DELETE FROM log_line WHERE number = 2",
                "DELETE FROM chain WHERE number > 3")) {
            byHand(sql);
        }
    }

    private List<String> check() {
        try (Book book = Book.open(file)) {
            return book.check();
        }
    }

    private void byHand(String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private static ApplicationRecord record(Book book, Map<String, String> otherwise) {
        RecordEntry entry = RecordEntry.read(season(book), RecordsOfTest.typed(otherwise), List.of(), AT);
        assertThat(entry.faults()).isEmpty();
        assertThat(Objects.requireNonNull(entry.record()).item(RecordItem.APPLICATOR))
                .contains("S. Lind");
        return Objects.requireNonNull(entry.record());
    }

    private static Season season(Book book) {
        return book.latestSeason().orElseThrow();
    }

    private static double onHand(Book book) {
        return season(book)
                .shelf()
                .product(PRODUCT)
                .map(Product::onHand)
                .map(Amount::value)
                .orElseThrow();
    }
}
