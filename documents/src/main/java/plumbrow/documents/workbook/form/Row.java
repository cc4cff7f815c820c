package plumbrow.documents.workbook.form;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One row of a sheet with the values of its cells, as far as they could be read. */
public final class Row {
    private final String place;
    private final int number;
    private final Map<String, Cell> cells;
    private final Map<String, Object> values;

    Row(String place, int number, Map<String, Cell> cells, Map<String, Object> values) {
        this.place = place;
        this.number = number;
        this.cells = Map.copyOf(cells);
        this.values = Map.copyOf(values);
    }

    public String place() {
        return place;
    }

    public int number() {
        return number;
    }

    /** The cell as it was found; empty where it is blank. */
    public String found(Column<?> column) {
        return cells.getOrDefault(column.key(), Cell.BLANK).found();
    }

    public boolean blank(Column<?> column) {
        return !cells.containsKey(column.key());
    }

    /** Whether the cell could be read, or may be blank: a check need not look at what was refused already. */
    public boolean sound(Column<?> column) {
        return values.containsKey(column.key()) || (blank(column) && !column.required());
    }

    /** The value, or what a blank cell stands for; null where it is blank without meaning or was refused. */
    @SuppressWarnings("unchecked") // Only a column's own kind makes the value under its key.
    public <T> @Nullable T find(Column<T> column) {
        Object value = values.get(column.key());
        return value != null ? (T) value : blank(column) ? column.fallback() : null;
    }

    /** The value of a column that is required or stands for something when blank. */
    public <T> T get(Column<T> column) {
        T value = find(column);
        if (value == null) {
            throw new IllegalStateException(place + " row " + number + " has no " + column.key());
        }
        return value;
    }
}
