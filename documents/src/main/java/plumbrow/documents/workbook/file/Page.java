package plumbrow.documents.workbook.file;

import java.util.List;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.Sheet;

/** A sheet and the rows of cells to be written on it, one cell for each column. */
public record Page(Sheet<?> sheet, List<List<Cell>> rows) {
    public Page {
        rows = List.copyOf(rows);
    }

    int column(String key) {
        return sheet.columns().stream().map(column -> column.key()).toList().indexOf(key);
    }
}
