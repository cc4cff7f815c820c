package plumbrow.documents.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.sheet.Sheets;

/** The template as another spreadsheet library sees it. */
class TemplateTest {
    @TempDir
    Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void write() {
        file = folder.resolve("template.xlsx");
        WorkbookTemplate.write(file);
    }

    @Test
    void theFirstSheetIsToBeRead() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile().getPath())) {
            assertThat(workbook.getSheetName(0)).isEqualTo("read me");
            assertThat(workbook.getSheetAt(0).getRow(0).getCell(0).getStringCellValue())
                    .isEqualTo("Workbook of one season");
            assertThat(workbook.getNumberOfSheets()).isEqualTo(1 + Sheets.ALL.size());
        }
    }

    @Test
    void everyColumnNameHasANoteWithMeaningRangeExample() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile().getPath())) {
            for (Sheet<?> sheet : Sheets.ALL) {
                XSSFSheet page = workbook.getSheet(sheet.name());
                for (int i = 0; i < sheet.columns().size(); i++) {
                    Column<?> column = sheet.columns().get(i);
                    assertThat(page.getRow(0).getCell(i).getStringCellValue()).isEqualTo(column.key());
                    assertThat(page.getCellComment(new CellAddress(0, i))
                                    .getString()
                                    .getString())
                            .as(sheet.name() + " " + column.key())
                            .containsIgnoringCase(column.meaning())
                            .contains(column.unit(), column.kind().words(), "Example: " + column.example())
                            .containsIgnoringCase(column.required() ? "Required." : column.blank());
                }
            }
        }
    }

    @Test
    void aNoteHasRoomForItsText() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile().getPath())) {
            ClientAnchor box = workbook.getSheet("passes")
                    .getCellComment(new CellAddress(0, 7))
                    .getClientAnchor();
            assertThat(box.getRow2() - box.getRow1()).isEqualTo(15);
            assertThat(box.getCol2() - box.getCol1()).isEqualTo(3);
        }
    }

    @Test
    void fewWordsComeAsADropDown() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile().getPath())) {
            assertThat(list(workbook, "passes", 3))
                    .containsExactly("seed", "spray", "granule", "tillage", "scouting", "hand labor", "harvest");
            assertThat(list(workbook, "programs", 2)).containsExactly("yes", "no");
            assertThat(list(workbook, "fields", 6)).containsExactly("corn", "soybean", "wheat");
            assertThat(list(workbook, "label_uses", 4)).contains("fl oz/ac", "L/ha");
        }
    }

    @Test
    void namesOfOtherSheetsComeAsADropDown() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile().getPath())) {
            assertThat(validation(workbook, "fields", 1)
                            .getValidationConstraint()
                            .getFormula1())
                    .isEqualTo("farms!$A$2:$A$20001");
            assertThat(validation(workbook, "passes", 5)
                            .getValidationConstraint()
                            .getFormula1())
                    .isEqualTo("shelf!$A$2:$A$20001");
        }
    }

    @Test
    void theHeaderStaysInSightAndShowsWhatIsRequired() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile().getPath())) {
            XSSFSheet fields = workbook.getSheet("fields");
            assertThat(fields.getPaneInformation().isFreezePane()).isTrue();
            assertThat((int) fields.getPaneInformation().getHorizontalSplitPosition())
                    .isEqualTo(1);
            assertThat(fields.getRow(0).getCell(0).getCellStyle().getFillForegroundColorColor())
                    .isNotEqualTo(fields.getRow(0).getCell(2).getCellStyle().getFillForegroundColorColor());
            assertThat(fields.getColumnWidthInPixels(0)).isBetween(100f, 250f);
        }
    }

    @Test
    void anEmptyTemplateLacksOnlyItsRows() {
        WorkbookFaults faults = catchThrowableOfType(WorkbookFaults.class, () -> WorkbookReader.read(file));
        assertThat(faults.faults())
                .extracting(Fault::sentence)
                .containsExactly(
                        "season: found \"no row\", expected exactly one row.",
                        "farms: found \"no row\", expected at least one row.",
                        "fields: found \"no row\", expected at least one row.");
    }

    private static List<String> list(XSSFWorkbook workbook, String sheet, int column) {
        return List.of(
                validation(workbook, sheet, column).getValidationConstraint().getExplicitListValues());
    }

    private static DataValidation validation(XSSFWorkbook workbook, String sheet, int column) {
        return workbook.getSheet(sheet).getDataValidations().stream()
                .filter(validation ->
                        validation.getRegions().getCellRangeAddresses()[0].isInRange(1, column))
                .findFirst()
                .orElseThrow();
    }
}
