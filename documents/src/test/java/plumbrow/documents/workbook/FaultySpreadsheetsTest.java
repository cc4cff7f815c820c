package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.assumptions.Distribution;

/** What only a spreadsheet can get wrong: formulas, formats, sheets; and what it may do without harm. */
class FaultySpreadsheetsTest {
    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void write() {
        file = folder.resolve("season.xlsx");
        WorkbookWriter.write(Fixture.season(), file);
    }

    @Test
    void aFormulaThatFailed() throws IOException {
        acres(cell -> cell.setCellErrorValue(FormulaError.REF));
        assertThat(sentences())
                .containsExactly(
                        "fields, row 4, column acres: found \"#REF!\", expected a value; the formula in this cell failed.");
    }

    @Test
    void aFormulaThatDividedByNothing() throws IOException {
        acres(cell -> cell.setCellErrorValue(FormulaError.DIV0));
        assertThat(sentences().get(0)).startsWith("fields, row 4, column acres: found \"#DIV/0!\"");
    }

    @Test
    void aFormulaThatWasNeverWorkedOut() throws IOException {
        acres(cell -> {
            cell.setBlank();
            cell.setCellFormula("20*2");
        });
        assertThat(sentences())
                .containsExactly(
                        "fields, row 4, column acres: found \"a formula without a value\", expected a value; open the "
                                + "workbook in a spreadsheet program, let it work out the formula and save it.");
    }

    @Test
    void theValueOfAFormulaIsTaken() throws IOException {
        edit(workbook -> {
            workbook.getSheet("fields").getRow(3).getCell(2).setCellFormula("4*10");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        });
        assertThat(WorkbookReader.read(file)).isEqualTo(Fixture.season());
    }

    @Test
    void aNumberAsText() throws IOException {
        acres(cell -> cell.setCellValue("40"));
        assertThat(sentences())
                .containsExactly(
                        "fields, row 4, column acres: found \"40\", expected a number above 0 and up to 50000; this "
                                + "cell holds text that looks like one, type it again in a cell with a number format.");
    }

    @Test
    void aNumberThatBecameADate() throws IOException {
        edit(workbook -> workbook.getSheet("fields").getRow(3).getCell(2).setCellStyle(dates(workbook)));
        assertThat(sentences())
                .containsExactly(
                        "fields, row 4, column acres: found \"1900-02-09\", expected a number above 0 and up to 50000; "
                                + "the spreadsheet turned this cell into a date, set its format to number and type it again.");
    }

    @Test
    void aNameThatBecameADate() throws IOException {
        edit(workbook -> {
            XSSFCell cell = workbook.getSheet("weeds").getRow(1).getCell(1);
            cell.setCellValue(LocalDate.of(2026, 5, 4));
            cell.setCellStyle(dates(workbook));
        });
        assertThat(sentences().get(0))
                .isEqualTo(
                        "weeds, row 2, column weed: found \"2026-05-04\", expected text; the spreadsheet turned this cell "
                                + "into a date, set its format to text and type it again.");
    }

    @Test
    void aPercentFormat() throws IOException {
        edit(workbook -> {
            CellStyle percent = workbook.createCellStyle();
            percent.setDataFormat(workbook.createDataFormat().getFormat("0%"));
            XSSFCell cell = workbook.getSheet("passes").getRow(3).getCell(8);
            cell.setCellValue(0.5);
            cell.setCellStyle(percent);
        });
        assertThat(sentences())
                .containsExactly(
                        "passes, row 4, column share_pct: found \"50%\", expected a number above 0 and up to 100, in "
                                + "a cell without the % format.");
    }

    @Test
    void datesAsTextAndYesAsTrueAreUnderstood() throws IOException {
        edit(workbook -> {
            workbook.getSheet("passes").getRow(1).getCell(4).setCellValue("2026-05-04");
            workbook.getSheet("programs").getRow(1).getCell(2).setCellValue(true);
            workbook.getSheet("fields").getRow(1).getCell(6).setCellValue("  CORN ");
        });
        assertThat(WorkbookReader.read(file)).isEqualTo(Fixture.season());
    }

    @Test
    void aDateWithATimeOfDay() throws IOException {
        edit(workbook -> workbook.getSheet("passes").getRow(1).getCell(4).setCellValue(46_146.5));
        assertThat(sentences())
                .containsExactly("passes, row 2, column date: found \"2026-05-04 12:00\", expected a date written "
                        + "year-month-day, such as 2026-05-04.");
    }

    @Test
    void theCalendarThatBeginsIn1904() throws IOException {
        Path shifted = folder.resolve("shifted.xlsx");
        ZipParts.edit(
                file, shifted, "xl/workbook.xml", text -> text.replace("date1904=\"false\"", "date1904=\"true\""));
        assertThat(catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(shifted)))
                .hasMessageContaining("season, row 2, column as_of: found \"2030-02-17\"");
    }

    @Test
    void hiddenRowsMergedCellsGapsAndCommentsDoNoHarm() throws IOException {
        edit(workbook -> {
            XSSFSheet history = workbook.getSheet("history");
            history.getRow(1).setZeroHeight(true);
            history.addMergedRegion(new CellRangeAddress(5, 6, 0, 2));
            history.createRow(900).createCell(1).setCellValue("  ");
            history.shiftRows(2, 2, 3);
            workbook.setSheetHidden(workbook.getSheetIndex("weeds"), true);
            workbook.setSheetOrder("assumptions", 0);
        });
        assertThat(WorkbookReader.read(file)).isEqualTo(Fixture.season());
    }

    @Test
    void sheetNamesInAnotherCase() throws IOException {
        edit(workbook -> {
            workbook.setSheetName(workbook.getSheetIndex("label_uses"), "Label_Uses ");
            workbook.getSheet("farms").getRow(0).getCell(0).setCellValue(" FARM ");
        });
        assertThat(WorkbookReader.read(file)).isEqualTo(Fixture.season());
    }

    @Test
    void sheetsMissingAndUnknown() throws IOException {
        edit(workbook -> {
            workbook.setSheetName(workbook.getSheetIndex("weeds"), "weed");
            workbook.setSheetName(workbook.getSheetIndex("traits"), "Sheet1");
        });
        assertThat(sentences())
                .containsExactly(
                        "weed: found \"an unknown sheet\", expected only sheets of the template; did you mean weeds?",
                        "Sheet1: found \"an unknown sheet\", expected only sheets of the template.",
                        "weeds: found \"no such sheet\", expected this sheet, if only with its column names.",
                        "traits: found \"no such sheet\", expected this sheet, if only with its column names.");
    }

    @Test
    void aHeaderThatIsNotInTheFirstRow() throws IOException {
        edit(workbook -> workbook.getSheet("season").shiftRows(0, 1, 2));
        assertThat(sentences().get(0))
                .isEqualTo("season, row 1: found \"no column names\", expected the column names in the first row.");
    }

    @Test
    void metricRatesBecomeRatesPerAcre() throws IOException {
        edit(workbook -> {
            XSSFSheet passes = workbook.getSheet("passes");
            passes.getRow(3).getCell(6).setCellValue(0.3);
            passes.getRow(3).getCell(7).setCellValue("L/ha");
        });
        // 0.3 L/ha is 0.3 / 2.471 053 8 = 0.121 406 L/ac: 1 ha = 2.471 053 8 ac (NIST SP 811, appendix B, from 1 ac =
        // 4046.873 m² survey, 4046.856 422 4 m² international).
        assertThat(WorkbookReader.read(file).programs().get(1).passes().get(1).rate())
                .isNotNull()
                .satisfies(rate -> {
                    assertThat(rate.value()).isEqualTo(0.121_406, within(5e-7));
                    assertThat(rate.unit().symbol()).isEqualTo("L");
                });
    }

    @Test
    void plantsPerSquareFootBecomePlantsPerSquareMetre() throws IOException {
        edit(workbook -> workbook.getSheet("weeds").getRow(1).getCell(5).setCellValue("plants/ft2"));
        // 1 m² = 10.763 910 ft² (NIST SP 811, appendix B).
        assertThat(WorkbookReader.read(file).pests().weeds().get(0).densityPerSquareMetre())
                .isInstanceOfSatisfying(
                        Distribution.Pert.class,
                        distribution -> assertThat(distribution.likely()).isEqualTo(8 * 10.763_910, within(1e-5)));
    }

    private static CellStyle dates(XSSFWorkbook workbook) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat("m/d/yy"));
        return style;
    }

    private void acres(Consumer<XSSFCell> change) throws IOException {
        edit(workbook -> change.accept(workbook.getSheet("fields").getRow(3).getCell(2)));
    }

    private void edit(Consumer<XSSFWorkbook> change) throws IOException {
        Path edited = folder.resolve("edited.xlsx");
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(edited)) {
            change.accept(workbook);
            workbook.write(out);
        }
        Files.move(edited, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private List<String> sentences() {
        return catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(file)).faults().stream()
                .map(Fault::sentence)
                .toList();
    }
}
