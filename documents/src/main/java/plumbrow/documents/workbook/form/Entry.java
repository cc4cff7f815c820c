package plumbrow.documents.workbook.form;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The cells of a row that is being written, by column. */
public final class Entry {
    private final Map<String, Cell> cells = new HashMap<>();

    /** Fills a cell; nothing is written for null. */
    public <T> void put(Column<T> column, @Nullable T value) {
        if (value != null) {
            cells.put(column.key(), column.kind().show(value));
        }
    }

    public Cell cell(Column<?> column) {
        return cells.getOrDefault(column.key(), Cell.BLANK);
    }
}
