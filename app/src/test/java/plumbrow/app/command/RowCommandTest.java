package plumbrow.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbrow.app.command.Typed.plumbrow;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.app.SmallSeason;
import plumbrow.documents.workbook.WorkbookWriter;

/** Rows and their history by command, with the workbook's faults. */
@SuppressWarnings("NullAway.Init")
class RowCommandTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void make() {
        book = SmallBook.of(folder.resolve("farm.book"), SmallSeason.of(2027));
    }

    @Test
    void rowsAreListedShownAddedChangedAndRemoved() {
        assertThat(plumbrow("row", "list", "--book", book).good().out()).contains("fields  1 row", "label_uses");
        assertThat(plumbrow("row", "list", "fields", "--book", book).good().out())
                .contains("2  field=North 80; farm=Alder Home");
        assertThat(plumbrow("row", "show", "fields", 2, "--book", book).good().out())
                .contains("acres", "80 ac", "blank: soil pH");
        assertThat(plumbrow("row", "add", "history", "field=North 80", "year=2026", "crop=soybean", "--book", book)
                        .good()
                        .out())
                .contains("history: added North 80, 2026, soybean");
        assertThat(plumbrow(
                                "row",
                                "change",
                                "history",
                                2,
                                "yield_bu_ac=58",
                                "--who",
                                "L. Marsh",
                                "--why",
                                "scale tickets",
                                "--book",
                                book)
                        .good()
                        .out())
                .contains("yield_bu_ac blank → 58");
        assertThat(plumbrow("row", "list", "history", "--book", book, "--json")
                        .good()
                        .json()
                        .get("rows")
                        .get(0)
                        .get("cells")
                        .get("yield_bu_ac")
                        .asString())
                .isEqualTo("58");
        plumbrow("row", "remove", "history", 2, "--book", book).good();
        assertThat(plumbrow("history", "list", "--book", book).good().out().replaceAll("\\s+", " "))
                .contains("L. Marsh, by command, scale tickets", "removed North 80, 2026, soybean");
        plumbrow("history", "undo", "--book", book).good();
        assertThat(plumbrow("row", "list", "history", "--book", book).good().out())
                .contains("yield_bu_ac=58");
        plumbrow("history", "redo", "--book", book).good();
        assertThat(plumbrow("row", "list", "history", "--book", book).good().out())
                .contains("No such row");
        plumbrow("history", "redo", "--book", book).refused("There is no undo to take back.");
        assertThat(plumbrow("history", "list", "--since", "2999-01-01", "--book", book)
                        .good()
                        .out())
                .contains("Nothing was changed.");
    }

    @Test
    void faultsAreTheWorkbooksAndNothingIsChanged() {
        plumbrow("row", "change", "fields", 2, "ph=6,4", "--book", book)
                .refused(
                        "Nothing was changed. fields, row 2, column ph: found \"6,4\", expected a number from 3 to 11");
        plumbrow("row", "change", "fields", 2, "field=..", "--book", book)
                .refused("found \"..\", expected a name with a letter or digit in it");
        plumbrow("row", "change", "fields", 2, "phh=6.4", "--book", book).refused("did you mean ph?");
        plumbrow("row", "change", "feilds", 2, "ph=6.4", "--book", book).refused("did you mean fields?");
        plumbrow("row", "change", "fields", 9, "ph=6.4", "--book", book).refused("has no row 9");
        plumbrow("row", "change", "fields", 2, "ph", "--book", book).refused("expected a cell as column=text");
        plumbrow("row", "remove", "shelf", 3, "--book", book).refused("expected a product of the sheet shelf");
        plumbrow("row", "change", "fields", 2, "ph=6.4", "--seen", "0", "--book", book)
                .refused("no longer the one");
        plumbrow("history", "undo", 99, "--book", book).refused("has no change 99");
        assertThat(plumbrow("row", "show", "fields", 2, "--book", book).good().out())
                .contains("blank: soil pH");
    }

    /** A seed stands on two sheets, neither of which may be without the other. */
    @Test
    void aSeedComesAndGoesWithBothItsRows() {
        plumbrow(
                        "row",
                        "add",
                        "shelf",
                        "product=Kettle 99",
                        "kind=seed",
                        "price_usd=250",
                        "priced_per=unit",
                        "source=tag",
                        "--book",
                        book)
                .refused("a row for this seed on the sheet seeds");
        plumbrow(
                        "row",
                        "add",
                        "shelf",
                        "product=Kettle 99",
                        "kind=seed",
                        "price_usd=250",
                        "priced_per=unit",
                        "source=tag",
                        "+",
                        "seeds",
                        "product=Kettle 99",
                        "crop=corn",
                        "seeds_per_unit=80000",
                        "germination_pct=95",
                        "--book",
                        book)
                .good();
        assertThat(plumbrow("row", "list", "seeds", "--book", book).good().out())
                .contains("Kettle 99");
        plumbrow("row", "remove", "shelf", 4, "--book", book).good();
        assertThat(plumbrow("row", "list", "seeds", "--book", book).good().out())
                .doesNotContain("Kettle 99");
        plumbrow("history", "undo", "--book", book).good();
        assertThat(plumbrow("row", "list", "shelf", "--book", book).good().out())
                .contains("Kettle 99");
    }

    @Test
    void aNameTakesAlongWhatRefersToIt() {
        plumbrow("row", "change", "fields", 2, "field=South 80", "--book", book).good();
        plumbrow("row", "change", "shelf", 3, "product=Stonefly 4G", "--book", book)
                .good();
        plumbrow("row", "change", "programs", 4, "program=all of it", "--book", book)
                .good();
        String passes =
                plumbrow("row", "list", "passes", "--book", book).good().out().replaceAll("\\s+", " ");
        assertThat(passes)
                .contains("South 80", "Stonefly 4G", "all of it")
                .doesNotContain("North 80", "Stonefly 3G", "full rate");
        plumbrow(
                        "log",
                        "add",
                        "--book",
                        book,
                        "--field",
                        "South 80",
                        "--date",
                        "2026-05-01",
                        "--product",
                        "Stonefly 4G",
                        "--rate",
                        "4",
                        "--unit",
                        "lb/ac",
                        "--source",
                        "log book")
                .good();
        plumbrow("row", "change", "fields", 2, "field=West 80", "--book", book).refused("the log is only added to");
        assertThat(plumbrow("book", "check", "--book", book).good().code()).isZero();
    }

    @Test
    void aWorkbookSaysWhatItWouldChange() {
        Path workbook = folder.resolve("season");
        WorkbookWriter.write(SmallSeason.of(2027), workbook);
        assertThat(plumbrow("book", "import", workbook, "--dry-run", "--book", book)
                        .good()
                        .out())
                .contains("nothing would change");
        plumbrow("row", "change", "fields", 2, "ph=6.4", "--book", book).good();
        assertThat(plumbrow("book", "import", workbook, "--dry-run", "--book", book)
                        .good()
                        .out())
                .contains("1 row of season 2027 would change", "ph 6.4 → blank", "the row fields: North 80");
        plumbrow("book", "import", workbook, "--book", book).refused("fields: North 80");
        assertThat(plumbrow("row", "show", "fields", 2, "--book", book).good().out())
                .contains("ph  6.4");
    }
}
