package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.RecordsOfTest;
import plumbrow.app.SmallSeason;
import tools.jackson.databind.JsonNode;

/** Records by command: kept, asked back, corrected, void, checked, given out. */
@SuppressWarnings("NullAway.Init")
class RecordCommandTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), RecordsOfTest.stocked(SmallSeason.of(2026), 4_000));
    }

    private Typed add(String... further) {
        Object[] words = new Object[12 + further.length];
        System.arraycopy(
                new Object[] {
                    "record",
                    "add",
                    "--book",
                    book,
                    "field=North 80",
                    "date=2026-05-02",
                    "start=08:10",
                    "end=11:40",
                    "acres=40",
                    "product_1=Stonefly 3G",
                    "rate_1=3",
                    "rate_unit_1=lb/ac"
                },
                0,
                words,
                0,
                12);
        System.arraycopy(further, 0, words, 12, further.length);
        return plumbrow(words);
    }

    /** What is said where a command is refused. */
    private static String refused(Typed typed) {
        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        return typed.err();
    }

    @Test
    void recordIsKeptListedCorrectedVoidAndStays() {
        assertThat(plumbrow("record", "list", "--book", book).good().out()).contains("No record.");
        assertThat(add("applicator=S. Lind", "role=commercial").good().out())
                .contains("Written down. Record 1.", "3 lb/ac; 120 lb in all, by S. Lind", "KEEP OUT");
        plumbrow(
                        "record",
                        "correct",
                        1,
                        "acres=41",
                        "total_1=",
                        "--book",
                        book,
                        "--who",
                        "S. Lind",
                        "--why",
                        "measured")
                .good();
        plumbrow("record", "void", 2, "--book", book, "--who", "S. Lind", "--why", "the other field")
                .good();
        assertThat(plumbrow("record", "list", "--book", book).good().out())
                .contains("corrected by record 2", "void: the other field (S. Lind)");
        JsonNode records =
                plumbrow("record", "list", "--book", book, "--json").good().json();
        assertThat(records.size()).isEqualTo(2);
        assertThat(records.get(1).get("corrects").asInt()).isEqualTo(1);
        assertThat(records.get(1).get("counts").asBoolean()).isFalse();
        plumbrow("book", "check", "--book", book).good();
    }

    @Test
    void whatIsAskedBackNamesTheWayOn() {
        assertThat(refused(add("rate_1x=9"))).contains("nothing called “rate_1x”");
        Typed asked = add("wind_start_mph=7", "spray_gal=900", "carrier_gpa=10");
        assertThat(refused(asked)).contains("900 gal of spray", "--sure spray");
        add("spray_gal=900", "carrier_gpa=10", "--sure", "spray").good();
        assertThat(refused(add())).contains("--sure").contains("twice");
        assertThat(refused(plumbrow("record", "show", 7, "--book", book))).contains("There is no record 7.");
        assertThat(refused(plumbrow("record", "add", "--book", book, "acres"))).contains("expected KEY=VALUE");
        assertThat(refused(plumbrow("record", "add", "--book", book, "acres=1", "acres=2")))
                .contains("given twice");
    }

    @Test
    void checkEndsWithOneWhereSomethingIsMissing() {
        add("role=commercial").good();
        Typed check = plumbrow("record", "check", "--book", book);
        assertThat(check.code()).isEqualTo(1);
        assertThat(check.out()).contains("Missing by the rules of that day", "Iowa Code 206.15", "who applied");
    }

    @Test
    void cardFillsTheRecordAndFilesAreWritten() throws Exception {
        plumbrow(
                        "record",
                        "add",
                        "--card",
                        "--book",
                        book,
                        "field=North 80",
                        "program=half rate",
                        "pass=2",
                        "date=2026-05-03",
                        "start=08:00",
                        "end=09:00")
                .good();
        for (String name : new String[] {"a.csv", "a.xlsx", "a.pdf"}) {
            assertThat(plumbrow("record", "export", folder.resolve(name), "--book", book, "--from", "2026-01-01")
                            .good()
                            .out())
                    .contains("1 record written", "Head of the record");
            assertThat(Files.size(folder.resolve(name))).isGreaterThan(300);
        }
        assertThat(refused(plumbrow("record", "export", folder.resolve("a.doc"), "--book", book)))
                .contains(".csv, .xlsx or .pdf");
        assertThat(refused(plumbrow("record", "list", "--book", book, "--field", "North 8")))
                .contains("has the field 'North 8'");
        assertThat(refused(plumbrow("record", "list", "--book", book, "--from", "May")))
                .contains("expected a date");
    }
}
