package plumbrow.documents.workbook.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Grid;
import plumbrow.documents.workbook.form.Objections;
import plumbrow.documents.workbook.form.Sheet;

/** The cells of one CSV file: commas between cells, double quotes around those that hold commas. */
final class CsvText {
    private CsvText() {}

    static Grid grid(String sheet, String place, String text, Objections objections) {
        List<Cell> header = List.of();
        List<Grid.Line> lines = new ArrayList<>();
        int row = 0;
        try (CsvReader<CsvRecord> records = records(text)) {
            for (CsvRecord record : records) {
                row++;
                List<Cell> cells =
                        record.getFields().stream().map(CsvText::cell).toList();
                if (row == 1) {
                    header = cells;
                    if (otherSeparator(cells)) {
                        objections.at(
                                place,
                                1,
                                "",
                                cells.get(0).found(),
                                "columns parted by commas; save the sheet as CSV with commas and decimal points");
                        return new Grid(sheet, place, List.of(), List.of());
                    }
                } else if (cells.stream().anyMatch(cell -> !(cell instanceof Cell.Blank))) {
                    if (lines.size() == Sheet.MOST_ROWS) {
                        TooMany.rows(place, objections);
                        break;
                    }
                    lines.add(new Grid.Line(row, cells));
                }
            }
        } catch (CsvParseException broken) {
            objections.at(place, row + 1, "", "a double quote out of place", "each quoted cell to end with a quote");
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new Grid(sheet, place, header, lines);
    }

    private static CsvReader<CsvRecord> records(String text) {
        return CsvReader.builder()
                .skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text);
    }

    private static boolean otherSeparator(List<Cell> header) {
        String first = header.size() == 1 ? header.get(0).found() : "";
        return first.contains(";") || first.contains("\t");
    }

    private static Cell cell(String text) {
        String tidy = text.replace("\r\n", "\n").strip();
        return tidy.isEmpty() ? Cell.BLANK : new Cell.Written(tidy);
    }
}
