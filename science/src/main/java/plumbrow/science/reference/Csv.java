package plumbrow.science.reference;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rows of a CSV text whose header must be exactly the columns that are expected. */
final class Csv {
    private Csv() {}

    static List<Row> rows(String file, String text, List<String> columns, List<Trouble> troubles) {
        List<Row> rows = new ArrayList<>();
        int number = 0;
        try {
            for (CsvRecord record : records(text.startsWith("\uFEFF") ? text.substring(1) : text)) {
                number++;
                List<String> cells =
                        record.getFields().stream().map(String::strip).toList();
                if (number == 1) {
                    if (!cells.equals(columns)) {
                        troubles.add(new Trouble(
                                file, 1, "", String.join(",", cells), "the columns " + String.join(",", columns)));
                        return rows;
                    }
                } else if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
                    row(file, number, cells, columns, troubles).ifPresent(rows::add);
                }
            }
        } catch (CsvParseException broken) {
            troubles.add(new Trouble(
                    file, number + 1, "", "a double quote out of place", "each quoted cell to end with a quote"));
        }
        if (number == 0) {
            troubles.add(new Trouble(file, 1, "", "nothing", "the columns " + String.join(",", columns)));
        }
        return rows;
    }

    private static Optional<Row> row(
            String file, int number, List<String> cells, List<String> columns, List<Trouble> troubles) {
        if (cells.size() != columns.size()) {
            troubles.add(
                    new Trouble(file, number, "", cells.size() + " cells", columns.size() + " cells parted by commas"));
            return Optional.empty();
        }
        return Optional.of(new Row(file, number, byColumn(columns, cells), troubles));
    }

    private static Iterable<CsvRecord> records(String text) {
        return CsvReader.builder()
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text);
    }

    private static Map<String, String> byColumn(List<String> columns, List<String> cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            row.put(columns.get(i), cells.get(i));
        }
        return row;
    }
}
