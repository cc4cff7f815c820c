package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders whose files are missing, strange or in another form. */
class FaultyFoldersTest {
    @TempDir
    Path parent;

    private Path folder = Path.of("");

    @BeforeEach
    void write() {
        folder = parent.resolve("season");
        WorkbookWriter.write(Fixture.season(), folder);
    }

    @Test
    void nothingThere() {
        assertThat(sentences(parent.resolve("other")))
                .containsExactly("other: nothing there, expected a workbook of this name.");
    }

    @Test
    void aFolderWithoutCsvFiles() throws IOException {
        assertThat(sentences(Files.createDirectory(parent.resolve("empty"))))
                .containsExactly("empty: found \"no CSV files\", expected a folder with a CSV file for each sheet.");
    }

    @Test
    void aMissingSheet() throws IOException {
        Files.delete(folder.resolve("weeds.csv"));
        assertThat(sentences(folder))
                .containsExactly("weeds: found \"no such sheet\", expected this sheet, if only with its column names.");
    }

    @Test
    void anUnknownSheet() throws IOException {
        Files.writeString(folder.resolve("feilds.csv"), "field\n");
        assertThat(sentences(folder))
                .containsExactly(
                        "feilds.csv: found \"an unknown sheet\", expected only sheets of the template; did you mean "
                                + "fields?");
    }

    @Test
    void filesOfOtherKindsAreLeftAlone() throws IOException {
        Files.writeString(folder.resolve("notes.txt"), "call the elevator");
        assertThat(WorkbookReader.read(folder)).isEqualTo(Fixture.season());
    }

    @Test
    void misspelledDoubledAndMissingColumns() throws IOException {
        replace("history.csv", "field,year,crop,yield_bu_ac", "field,year,Year,yield_bu_acre");
        assertThat(sentences(folder))
                .containsExactly(
                        "history.csv, row 1, column year: found \"Year\", expected each column once.",
                        "history.csv, row 1, column yield_bu_acre: found \"yield_bu_acre\", expected a column name of this "
                                + "sheet; did you mean yield_bu_ac?",
                        "history.csv, row 1, column crop: found \"no such column\", expected this column: what it carried; "
                                + "any crop, or fallow.");
    }

    @Test
    void columnsInAnotherOrderAndCaseAndOptionalOnesLeftOut() throws IOException {
        Files.writeString(folder.resolve("farms.csv"), """
                 Grower ,FARM,crop_share
                L. Marsh,Home place,
                A. Ng,"Müller ""river"", 40",0.5
                """);
        assertThat(WorkbookReader.read(folder).farms().get(1).costShare()).isEqualTo(1);
        assertThat(WorkbookReader.read(folder).farms().get(1).cropShare()).isEqualTo(0.5);
    }

    @Test
    void aCellBesideTheTable() throws IOException {
        replace("season.csv", "R. Alder", "R. Alder,left over");
        assertThat(sentences(folder))
                .containsExactly(
                        "season.csv, row 2, column number 4: found \"left over\", expected nothing, since this column "
                                + "has no name in the first row.");
    }

    @Test
    void semicolonsBetweenColumns() throws IOException {
        Files.writeString(folder.resolve("season.csv"), "year;as_of;adviser\n2026;2026-02-16;R. Alder\n");
        assertThat(sentences(folder).get(0))
                .isEqualTo(
                        "season.csv, row 1: found \"year;as_of;adviser\", expected columns parted by commas; save the sheet "
                                + "as CSV with commas and decimal points.");
    }

    @Test
    void lettersInAnotherEncoding() throws IOException {
        byte[] windows = Files.readString(folder.resolve("farms.csv"))
                .replace("\uFEFF", "")
                .getBytes(Charset.forName("windows-1252"));
        Files.write(folder.resolve("farms.csv"), windows);
        assertThat(sentences(folder).get(0))
                .isEqualTo(
                        "farms.csv, row 3: found \"a character that is not UTF-8 after \"\"M\"\", expected text saved as "
                                + "UTF-8; in the spreadsheet program choose \"CSV UTF-8\".");
    }

    @Test
    void textInUtf16() throws IOException {
        Files.write(folder.resolve("farms.csv"), "\uFEFFfarm,grower\n".getBytes(StandardCharsets.UTF_16LE));
        assertThat(sentences(folder).get(0)).startsWith("farms.csv, row 1: found \"text saved as UTF-16\"");
    }

    @Test
    void aByteOrderMarkIsWelcome() throws IOException {
        Files.writeString(folder.resolve("history.csv"), "\uFEFF" + Files.readString(folder.resolve("history.csv")));
        assertThat(WorkbookReader.read(folder)).isEqualTo(Fixture.season());
    }

    @Test
    void linesEndingAsOnWindowsAndBlankLinesAtTheEnd() throws IOException {
        String history = Files.readString(folder.resolve("history.csv"));
        Files.writeString(folder.resolve("history.csv"), history.replace("\n", "\r\n") + ",,,\r\n\r\n");
        assertThat(WorkbookReader.read(folder)).isEqualTo(Fixture.season());
    }

    @Test
    void aQuoteThatIsNeverClosed() throws IOException {
        replace("history.csv", "East 80", "\"East 80");
        assertThat(sentences(folder))
                .containsExactly(
                        "history.csv, row 2: found \"a double quote out of place\", expected each quoted cell to end "
                                + "with a quote.");
    }

    @Test
    void anEmptyFile() throws IOException {
        Files.writeString(folder.resolve("history.csv"), "");
        assertThat(sentences(folder))
                .containsExactly(
                        "history.csv, row 1: found \"no column names\", expected the column names in the first row.");
    }

    @Test
    void aMillionRows() throws IOException {
        Files.writeString(folder.resolve("history.csv"), "field,year,crop\n" + "East 80,2024,corn\n".repeat(1_000_000));
        assertThat(sentences(folder))
                .contains(
                        "history.csv, row 20002: found \"more than 20,000 rows\", expected at most 20,000 rows under the "
                                + "column names.")
                .hasSize(FaultList.MOST + 1)
                .last()
                .asString()
                .contains("more faults");
    }

    @Test
    void anOutlineOfNoField() throws IOException {
        replace("boundaries.geojson", "\"field\":\"5-4\"", "\"field\":\"5-5\"");
        assertThat(sentences(folder))
                .containsExactly(
                        "boundaries.geojson, column field: found \"5-5\", expected a field of the fields sheet.");
    }

    @Test
    void outlinesThatAreBroken() throws IOException {
        replace("boundaries.geojson", "]}", "");
        assertThat(sentences(folder).get(0))
                .startsWith(
                        "boundaries.geojson: found \"something else\", expected GeoJSON; it is broken at character");
    }

    @Test
    void anOutlineThatCrossesItself() throws IOException {
        replace(
                "boundaries.geojson",
                "[-43.58,42.0],[-43.576899999999995,42.0],[-43.576899999999995,42.0021],[-43.58,42.0021]",
                "[-43.58,42.0],[-43.576899999999995,42.0021],[-43.576899999999995,42.0],[-43.58,42.0021]");
        assertThat(sentences(folder).get(0))
                .startsWith("fields.csv, row 3, column boundary: found")
                .contains("expected an outline that does not cross or touch itself");
    }

    private void replace(String file, String before, String after) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(before);
        Files.writeString(folder.resolve(file), text.replace(before, after));
    }

    private static List<String> sentences(Path path) {
        return catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(path)).faults().stream()
                .map(Fault::sentence)
                .toList();
    }
}
