package plumbrow.documents.workbook.file;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.ground.BoundaryFile;

/** Writes pages as a folder of CSV files, and outlines into the GeoJSON file beside them. */
public final class CsvPages {
    private CsvPages() {}

    /** Writes into a folder that exists and is empty. */
    public static void write(List<Page> pages, Path folder) throws IOException {
        for (Page page : pages) {
            boolean outlined = page.sheet().name().equals(BoundaryJoin.SHEET);
            int outline = outlined ? page.column(BoundaryJoin.BOUNDARY) : -1;
            Files.writeString(folder.resolve(page.sheet().name() + CsvFolder.ENDING), csv(page, outline));
            if (outlined) {
                outlines(page, outline, folder.resolve(CsvFolder.BOUNDARIES));
            }
        }
    }

    private static String csv(Page page, int leftOut) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(page.sheet().columns().stream().map(Column::key).toList());
            for (List<Cell> row : page.rows()) {
                List<String> cells =
                        new ArrayList<>(row.stream().map(Cell::found).toList());
                if (leftOut >= 0) {
                    cells.set(leftOut, "");
                }
                csv.writeRecord(cells);
            }
        }
        // Spreadsheet programs take a file with letters beyond ASCII for UTF-8 only if it begins with this mark.
        boolean plain = text.toString().chars().allMatch(c -> c < 128);
        return plain ? text.toString() : "\uFEFF" + text;
    }

    private static void outlines(Page page, int outline, Path file) throws IOException {
        int field = page.column(BoundaryJoin.FIELD);
        Map<String, String> byField = new LinkedHashMap<>();
        for (List<Cell> row : page.rows()) {
            if (!(row.get(outline) instanceof Cell.Blank)) {
                byField.put(row.get(field).found(), row.get(outline).found());
            }
        }
        Files.writeString(file, BoundaryFile.write(byField));
    }
}
