package plumbrow.documents.binder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.documents.FileTrouble;
import plumbrow.documents.SampleAdvice;
import plumbrow.documents.SampleSeason;

/** Read back with another library than the one that wrote it. */
class AdviceSheetTest {
    private static final String ADVISED = "advised program, or those about equal";

    @TempDir
    Path folder;

    @Test
    void hasASheetForEachQuestionWithAFrozenHeader() throws IOException {
        try (XSSFWorkbook book = written(SampleAdvice.advice())) {
            List<String> names = new ArrayList<>();
            for (Sheet sheet : book) {
                names.add(sheet.getSheetName());
                assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
                assertThat(sheet.getPaneInformation().getHorizontalSplitPosition())
                        .isEqualTo((short) 1);
            }
            assertThat(names)
                    .containsExactly(
                            "advice",
                            "programs",
                            "findings",
                            "ranges",
                            "what matters",
                            "workings",
                            "inputs",
                            "cautions");
            assertThat(book.getSheet("advice").getLastRowNum()).isEqualTo(3);
            assertThat(book.getSheet("programs").getLastRowNum()).isEqualTo(9);
        }
    }

    @Test
    void numbersAreNumbersInFullWithTheirUnitInTheHeader() throws IOException {
        WeighedProgram first = SampleAdvice.home().programs().get(0);
        try (XSSFWorkbook book = written(SampleAdvice.advice())) {
            Sheet programs = book.getSheet("programs");
            Row row = programs.getRow(1);
            assertThat(cell(programs, row, "cost [$/ac]").getNumericCellValue()).isEqualTo(first.costUsdPerAcre());
            Cell low = cell(programs, row, "margin, 10 of 100 below [$/ac]");
            assertThat(low.getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(low.getNumericCellValue()).isEqualTo(first.margin().low());
            assertThat(low.getCellStyle().getDataFormatString()).isEqualTo("#,##0.00");
            assertThat(cell(programs, row, "chance it beats the baseline [0 to 1]")
                            .getNumericCellValue())
                    .isEqualTo(0.71);
            assertThat(cell(programs, row, "status").getStringCellValue()).isEqualTo("conditional");
        }
    }

    @Test
    void whatIsNotKnownIsEmptyAndEachBandHasItsRow() throws IOException {
        try (XSSFWorkbook book = written(SampleAdvice.advice())) {
            Sheet ranges = book.getSheet("ranges");
            assertThat(cell(ranges, ranges.getRow(1), "to [unit beside]").getNumericCellValue())
                    .isEqualTo(3.82);
            assertThat(cell(ranges, ranges.getRow(2), "best program").getStringCellValue())
                    .isEqualTo(SampleAdvice.home().advised());
            assertThat(cell(ranges, ranges.getRow(3), "input").getStringCellValue())
                    .isEqualTo("attainable yield");
            Sheet advice = book.getSheet("advice");
            assertThat(cell(advice, advice.getRow(3), ADVISED).getStringCellValue())
                    .isEqualTo("none may be advised");
        }
    }

    @Test
    void aNearTieNamesAllThatAreAboutEqual() throws IOException {
        try (XSSFWorkbook book = written(SampleAdvice.with(SampleAdvice.aboutEqual()))) {
            Sheet advice = book.getSheet("advice");
            assertThat(cell(advice, advice.getRow(1), ADVISED).getStringCellValue())
                    .isEqualTo("Half rate in the furrow; Full rate in the furrow");
        }
    }

    @Test
    void hostileNamesStayText() throws IOException {
        String name = "=HYPERLINK(\"x\") <script>&'\" 🌽 \u0007 " + "x".repeat(40_000);
        Advice hostile = SampleAdvice.with(
                SampleAdvice.of(name, List.of(SampleAdvice.program(name, Standing.BARRED, 400, 100, 0.5, 130))));
        try (XSSFWorkbook book = written(hostile)) {
            Sheet programs = book.getSheet("programs");
            Cell field = cell(programs, programs.getRow(1), "field");
            assertThat(field.getCellType()).isEqualTo(CellType.STRING);
            assertThat(field.getStringCellValue())
                    .startsWith("=HYPERLINK(\"x\") <script>&'\" 🌽")
                    .endsWith("…");
        }
    }

    @Test
    void adviceForNoFieldGivesHeadersOnly() throws IOException {
        try (XSSFWorkbook book = written(SampleAdvice.with())) {
            assertThat(book.getSheet("advice").getLastRowNum()).isZero();
        }
    }

    @Test
    void aFolderThatIsNotThereIsToldInASentence() {
        Path nowhere = folder.resolve("not there").resolve("advice.xlsx");
        assertThatThrownBy(() -> AdviceSheet.write(SampleSeason.season(), SampleAdvice.advice(), nowhere))
                .isInstanceOf(FileTrouble.class)
                .hasMessageContaining("its folder does not exist");
    }

    private XSSFWorkbook written(Advice advice) throws IOException {
        Path xlsx = folder.resolve("advice.xlsx");
        AdviceSheet.write(SampleSeason.season(), advice, xlsx);
        return new XSSFWorkbook(Files.newInputStream(xlsx));
    }

    private static Cell cell(Sheet sheet, Row row, String head) {
        for (Cell header : sheet.getRow(0)) {
            if (header.getStringCellValue().equals(head)) {
                return row.getCell(header.getColumnIndex());
            }
        }
        throw new AssertionError("no column " + head + " in " + sheet.getSheetName());
    }
}
