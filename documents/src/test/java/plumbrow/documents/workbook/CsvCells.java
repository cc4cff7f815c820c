package plumbrow.documents.workbook;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Puts something else into one cell of a workbook's folder. */
final class CsvCells {
    private CsvCells() {}

    static void put(Path folder, String sheet, int row, String column, String value) {
        Path file = folder.resolve(sheet + ".csv");
        List<List<String>> rows = new ArrayList<>();
        try {
            String text = Files.readString(file).replace("\uFEFF", "");
            try (CsvReader<CsvRecord> records = CsvReader.builder().ofCsvRecord(text)) {
                records.forEach(each -> rows.add(new ArrayList<>(each.getFields())));
            }
            rows.get(row - 1).set(rows.get(0).indexOf(column), value);
            try (CsvWriter writer = CsvWriter.builder().build(file)) {
                rows.forEach(writer::writeRecord);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
