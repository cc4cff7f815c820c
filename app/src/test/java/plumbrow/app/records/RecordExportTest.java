package plumbrow.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.season.Season;
import plumbrow.app.RecordsOfTest;
import plumbrow.app.SmallSeason;
import plumbrow.documents.binder.RecordExport;
import plumbrow.documents.binder.RecordPaper;
import plumbrow.documents.binder.RecordSheets;

/** What goes to an inspector: every record with what corrects it, the head of the chain, whom to ask; and nothing that a spreadsheet runs. */
class RecordExportTest {
    private static final Season SEASON = RecordsOfTest.stocked(SmallSeason.of(2027), 400);
    private static final String HEAD = "42:3f9c0a7be2d14c55a90b11de7f6c2a38";

    private static final RecordExport EXPORT = new RecordExport(
            SEASON,
            List.of(kept(1, null, 2, "9"), kept(2, 1, null, "3")),
            "field North 80",
            HEAD,
            LocalDate.of(2027, 6, 2));

    @Test
    void csvHasARowForEachProductWithStateHeadAndWhomToAsk() throws IOException {
        List<NamedCsvRecord> rows = csv(RecordSheets.csv(EXPORT));
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).getField("standing")).isEqualTo("corrected by record 2");
        assertThat(rows.get(1).getField("standing")).isEqualTo("counts");
        assertThat(rows.get(1).getField("corrects")).isEqualTo("1");
        assertThat(rows.get(1).getField("why")).isEqualTo("typed 9 for 3");
        assertThat(rows.get(1).getField("total")).isEqualTo("120");
        assertThat(rows.get(1).getField("start")).isEqualTo("2027-05-02T08:10-05:00");
        assertThat(rows.get(1).getField("wind_start_mph")).isEqualTo("7.5");
        assertThat(rows).allMatch(row -> row.getField("chain_head").equals(HEAD));
        assertThat(rows).allMatch(row -> row.getField("ask").equals("R. Alder"));
        assertThat(rows.get(1).getField("note")).isEqualTo("'=1+1, an older book may hold it");
    }

    @Test
    void spreadsheetHasTheSameWithNumbersAsNumbersAndNoFormula() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(RecordSheets.xlsx(EXPORT)))) {
            var sheet = workbook.getSheet("records");
            assertThat(sheet.getLastRowNum()).isEqualTo(2);
            int numbers = 0;
            for (var row : sheet) {
                for (var cell : row) {
                    assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA);
                    numbers += cell.getCellType() == CellType.NUMERIC ? 1 : 0;
                }
            }
            assertThat(numbers).isGreaterThan(10);
            assertThat(workbook.getSheet("about").getRow(4).getCell(0).getStringCellValue())
                    .contains(HEAD);
        }
    }

    @Test
    void paperShowsCorrectionReasonHeadAndWhatIsMissing() throws IOException {
        String text = pdf(RecordPaper.pdf(EXPORT));
        assertThat(text)
                .contains("Record 1: North 80, 2027-05-02, Stonefly 3G")
                .contains("Does not count: corrected by record 2.")
                .contains("Corrects record 1: typed 9 for 3")
                .contains(HEAD)
                .contains("Ask R. Alder.")
                .contains("field North 80")
                .contains("place");
    }

    @Test
    void nothingAskedForIsAnEmptyListAndNoFault() throws IOException {
        RecordExport none = new RecordExport(SEASON, List.of(), "field X", HEAD, LocalDate.of(2027, 6, 2));
        assertThat(csv(RecordSheets.csv(none))).isEmpty();
        assertThat(pdf(RecordPaper.pdf(none))).contains("No record.");
        assertThat(RecordSheets.xlsx(none)).isNotEmpty();
    }

    private static KeptRecord kept(int number, @Nullable Integer corrects, @Nullable Integer correctedBy, String rate) {
        RecordEntry entry = RecordEntry.read(
                SEASON,
                RecordsOfTest.typed(Map.of("rate_1", rate, "wind_start_mph", "7.5", "role", "commercial")),
                List.of(),
                RecordsOfTest.NOW);
        ApplicationRecord read = Objects.requireNonNull(entry.record());
        Map<RecordItem, String> items = new EnumMap<>(read.items());
        items.put(RecordItem.NOTE, "=1+1, an older book may hold it");
        return new KeptRecord(
                number,
                new ApplicationRecord(
                        read.field(),
                        read.date(),
                        read.start(),
                        read.end(),
                        read.acres(),
                        read.sharePct(),
                        read.products(),
                        items),
                List.of(number),
                "S. Lind",
                Instant.parse("2027-05-02T20:00:00Z"),
                corrects,
                corrects == null ? null : "typed 9 for 3",
                correctedBy,
                null);
    }

    private static List<NamedCsvRecord> csv(byte[] file) throws IOException {
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().ofNamedCsvRecord(new String(file, StandardCharsets.UTF_8))) {
            return reader.stream().toList();
        }
    }

    private static String pdf(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
