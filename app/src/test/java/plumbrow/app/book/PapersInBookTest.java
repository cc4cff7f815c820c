package plumbrow.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.app.SmallSeason;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.RowName;
import plumbrow.documents.confirm.ShelfTable;
import plumbrow.documents.confirm.Verdict;
import plumbrow.documents.shelf.FiledPaper;

@SuppressWarnings("NullAway.Init")
class PapersInBookTest {
    private static final Instant AT = Instant.parse("2026-11-25T06:00:00Z");
    private static final FiledPaper SHEET = new FiledPaper(
            0,
            FiledPaper.Kind.SAFETY_SHEET,
            "larkwick.pdf",
            "Larkwick 4L",
            "90001-7",
            LocalDate.of(2026, 3, 4),
            9,
            false);

    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void aPaperComesOutAsItWentInAndTheSameFileIsKeptOnce() {
        Path file = folder.resolve("a.book");
        FiledPaper scan = new FiledPaper(0, FiledPaper.Kind.UNKNOWN, "scan.pdf", "", "", null, 1, true);
        try (Book book = Book.create(file)) {
            assertThat(book.keep(SHEET, bytes("one"), AT).already()).isFalse();
            assertThat(book.keep(SHEET, bytes("one"), AT.plusSeconds(9)).already())
                    .isTrue();
            assertThat(book.keep(scan, bytes("two"), AT).stored().number()).isEqualTo(2);
        }
        try (Book book = Book.open(file)) {
            List<StoredPaper> papers = book.papers();
            assertThat(papers).hasSize(2);
            assertThat(papers.get(0).paper())
                    .usingRecursiveComparison()
                    .ignoringFields("number")
                    .isEqualTo(SHEET);
            // SHA-256 of "one", from coreutils sha256sum
            assertThat(papers.get(0).sha256())
                    .isEqualTo("7692c3ad3540bb803c020b3aee66cd8887123234ea0c6e7143c0add73ff431ed");
            assertThat(papers.get(0).addedAt()).isEqualTo(AT);
            assertThat(papers.get(1).paper().dated()).isNull();
            assertThat(book.paperFile(1)).hasValue(bytes("one"));
            assertThat(book.paperFile(3)).isEmpty();
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void whatIsTypedStaysAsItWas() throws SQLException {
        Path file = folder.resolve("b.book");
        TypedValue value = new TypedValue(1, 1, "Product name", "Larkwick", "M. Hale", AT);
        try (Book book = Book.create(file)) {
            book.keep(SHEET, bytes("one"), AT);
            book.type(List.of(value));
            assertThat(book.typed(1)).containsExactly(value);
            assertThatThrownBy(() -> book.type(List.of(new TypedValue(9, 1, "x", "y", "z", AT))))
                    .isInstanceOf(BookException.class);
        }
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = sql.createStatement()) {
            assertThatThrownBy(() -> statement.execute("UPDATE paper_typed SET value = 'other'"))
                    .hasMessageContaining("stays as it was");
        }
    }

    @Test
    void aPaperThatWasTamperedWithIsFound() throws SQLException {
        Path file = folder.resolve("c.book");
        try (Book book = Book.create(file)) {
            book.keep(SHEET, bytes("one"), AT);
        }
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = sql.createStatement()) {
            assertThatThrownBy(() -> statement.execute("UPDATE paper SET content = x'00'"))
                    .hasMessageContaining("a paper once kept stays as it was");
            statement.execute("DROP TRIGGER paper_is_not_changed");
            statement.execute("UPDATE paper SET content = x'00'");
        }
        try (Book book = Book.open(file)) {
            assertThat(book.check())
                    .hasSize(2)
                    .anyMatch(problem -> problem.contains("larkwick.pdf") && problem.contains("no longer what it was"))
                    .anyMatch(problem -> problem.contains("no longer as Plumbrow made them"));
        }
    }

    /** A decision comes out as it went in, is never changed, and needs a label that the book keeps. */
    @Test
    void decisionsAboutLabelsStay() throws SQLException {
        Path file = folder.resolve("d.book");
        String sha256 = PaperRows.sha256(bytes("one"));
        RowName row = RowName.of(ShelfTable.PLANT_BACKS, "next_crop=alfalfa\ncondition=a = b", 2);
        LabelDecision decision =
                new LabelDecision(sha256, row, "days", Verdict.CORRECTED, "310", "", 3, "10 months", "M. Hale", AT);
        try (Book book = Book.create(file)) {
            book.keep(SHEET, bytes("one"), AT);
            book.decide(List.of(decision, decision));
            assertThat(book.decisions()).containsExactly(decision, decision);
            LabelDecision stranger =
                    new LabelDecision("f".repeat(64), row, "days", Verdict.REJECTED, "", "540", 0, "", "M. Hale", AT);
            assertThatThrownBy(() -> book.decide(List.of(decision, stranger))).isInstanceOf(BookException.class);
            assertThat(book.decisions()).hasSize(2);
        }
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = sql.createStatement()) {
            assertThatThrownBy(() -> statement.execute("UPDATE label_decision SET value = '1'"))
                    .hasMessageContaining("stays as it was");
            assertThatThrownBy(() -> statement.execute("DELETE FROM label_decision"))
                    .hasMessageContaining("stays as it was");
        }
    }

    /** What an older book wrote down under the names of the program's records is read under the keys of today, and stays as it stands. */
    @Test
    void decisionsOfAnOlderBookAreRead() throws SQLException {
        Path file = folder.resolve("older.book");
        String sha256 = PaperRows.sha256(bytes("one"));
        try (Book book = Book.create(file)) {
            book.keep(SHEET, bytes("one"), AT);
        }
        try (Connection sql = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = sql.createStatement()) {
            statement.execute(
                    "INSERT INTO label_decision (sha256, shelf, row_key, nth, property, verdict, value, page, who, decided_at)"
                            + " VALUES ('" + sha256
                            + "', 'setbacks', 'kind=stream\ndownwindOnly=no', 1, 'feet', 'confirmed', '66', 3, 'M. Hale', '"
                            + AT + "'), ('" + sha256
                            + "', 'label_uses', 'crop=corn', 1, 'preHarvestDays', 'corrected', '30', 2, 'M. Hale', '"
                            + AT + "')");
        }
        try (Book book = Book.open(file)) {
            assertThat(book.decisions())
                    .extracting(LabelDecision::id)
                    .containsExactly("setbacks.stream.distance-ft", "label-uses.corn.phi-days");
        }
    }

    /** A value of a label that would name what nobody knows would count as nothing: it is refused like any other word of a season. */
    @Test
    void aDecisionNamesWhatThereIs() {
        Season season = SmallSeason.of(2027);
        String product = season.shelf().products().stream()
                .filter(one -> one.kind() == ProductKind.INSECTICIDE)
                .findFirst()
                .orElseThrow()
                .name();
        FiledPaper label =
                new FiledPaper(0, FiledPaper.Kind.LABEL, "label.pdf", product, "", LocalDate.of(2026, 3, 4), 9, false);
        try (Book book = Book.create(folder.resolve("n.book"))) {
            book.put(season);
            book.keep(label, bytes("one"), AT);
            String sha256 = PaperRows.sha256(bytes("one"));
            book.decide(List.of(partner(sha256, "atrazine")));
            assertThat(book.latestSeason().orElseThrow().shelf().labels().mixRules())
                    .extracting(MixRule::partner)
                    .containsExactly("atrazine");
            assertThatThrownBy(() -> book.decide(List.of(partner(sha256, "atrazien"))))
                    .isInstanceOf(BookException.class)
                    .hasMessageContaining("Nothing was changed.")
                    .hasMessageContaining("atrazien");
            assertThat(book.decisions()).hasSize(1);
            assertThat(book.check()).isEmpty();
        }
    }

    private static LabelDecision partner(String sha256, String name) {
        return new LabelDecision(
                sha256,
                RowName.of(ShelfTable.MIX_RULES, "partner=" + name, 1),
                "word",
                Verdict.CONFIRMED,
                "forbidden",
                "",
                3,
                "do not mix with " + name,
                "M. Hale",
                AT);
    }

    /** What is typed from a scan files it: as a sheet of its product, by its number, with its date. */
    @Test
    void aTypedScanIsFiledByWhatWasTyped() {
        FiledPaper scan = new FiledPaper(0, FiledPaper.Kind.UNKNOWN, "scan.pdf", "", "", null, 2, true);
        try (Book book = Book.create(folder.resolve("e.book"))) {
            book.keep(scan, bytes("two"), AT);
            book.type(List.of(
                    new TypedValue(1, 1, "Product name", "Larkwick 5", "M. Hale", AT),
                    new TypedValue(1, 1, "Product name", "Larkwick 4L", "M. Hale", AT),
                    new TypedValue(1, 1, "EPA registration number", "90001-7", "M. Hale", AT),
                    new TypedValue(1, 2, "Revision date", "March 4, 2025", "M. Hale", AT),
                    new TypedValue(1, 2, TypedSheet.KIND, "safety sheet", "M. Hale", AT)));
            assertThat(book.papers().get(0).paper())
                    .isEqualTo(new FiledPaper(
                            1,
                            FiledPaper.Kind.SAFETY_SHEET,
                            "scan.pdf",
                            "Larkwick 4L",
                            "90001-7",
                            LocalDate.of(2025, 3, 4),
                            2,
                            true));
        }
    }

    @Test
    void typedValuesMeanWhatTheyMeanOnAnySheet() {
        TypedSheet typed = TypedSheet.of(List.of(
                new TypedValue(1, 1, "Product name", "Larkwick 4L", "M. Hale", AT),
                new TypedValue(
                        1, 2, "Ingredient", "Atrazine, 1912-24-9, 42.2 %; Propylene glycol 57-55-6 5 %", "M. Hale", AT),
                new TypedValue(1, 3, "Acute toxicity", "Oral LD50 (rat): 3090 mg/kg", "M. Hale", AT),
                new TypedValue(1, 3, "Density", "heavy", "M. Hale", AT),
                new TypedValue(1, 3, "First aid", "If swallowed: call a doctor", "M. Hale", AT)));
        assertThat(typed.understood("Ingredient"))
                .containsExactly("Atrazine, CAS 1912-24-9, 42.2 %", "Propylene glycol, CAS 57-55-6, 5 %");
        assertThat(typed.understood("Acute toxicity")).containsExactly("swallowed LD50 rat 3090 mg/kg");
        assertThat(typed.understood("First aid")).hasSize(1);
        assertThat(typed.understood("Density")).isEmpty();
    }
}
