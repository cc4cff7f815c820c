package plumbrow.documents.workbook.form;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The cells of a row that is being written, by column. */
public final class Entry {
    private final Map<String, Cell> cells = new HashMap<>();

    /** Fills a cell; nothing is written for null or an empty text. */
    public <T> void put(Column<T> column, @Nullable T value) {
        Cell cell = value == null ? Cell.BLANK : column.kind().show(value);
        if (!cell.found().isEmpty()) {
            cells.put(column.key(), cell);
        }
    }

    public Cell cell(Column<?> column) {
        return cells.getOrDefault(column.key(), Cell.BLANK);
    }
}
