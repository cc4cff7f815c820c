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
import java.util.Optional;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.ground.GeoJsonFile;

/** Writes pages as a folder of CSV files, and shapes into the GeoJSON files beside them. */
public final class CsvPages {
    private CsvPages() {}

    /** Writes into a folder that exists and is empty. */
    public static void write(List<Page> pages, Path folder) throws IOException {
        for (Page page : pages) {
            Optional<GeoFile> shapes = GeoFile.WRITTEN.stream()
                    .filter(file -> file.sheet().equals(page.sheet().name()))
                    .findFirst();
            int shape = shapes.map(file -> page.column(file.shape())).orElse(-1);
            Files.writeString(folder.resolve(page.sheet().name() + CsvFolder.ENDING), csv(page, shape));
            if (shapes.isPresent()) {
                shapes(page, shapes.get(), folder);
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

    private static void shapes(Page page, GeoFile file, Path folder) throws IOException {
        int shape = page.column(file.shape());
        Map<Map<String, String>, String> byKey = new LinkedHashMap<>();
        for (List<Cell> row : page.rows()) {
            if (!(row.get(shape) instanceof Cell.Blank)) {
                Map<String, String> key = new LinkedHashMap<>();
                file.keys()
                        .forEach(column ->
                                key.put(column, row.get(page.column(column)).found()));
                byKey.put(key, row.get(shape).found());
            }
        }
        Files.writeString(folder.resolve(file.name()), GeoJsonFile.write(byKey));
    }
}
