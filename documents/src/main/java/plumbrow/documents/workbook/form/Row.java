package plumbrow.documents.workbook.form;

import java.util.Map;
import java.util.NoSuchElementException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** One row of a sheet with the values of its cells, as far as they could be read. */
public final class Row {
    private final String place;
    private final int number;
    private final Map<String, Cell> cells;
    private final Values values;
    private final boolean kept;

    Row(String place, int number, Map<String, Cell> cells, Map<String, Object> values) {
        this(place, number, Map.copyOf(cells), Map.copyOf(values)::get, false);
    }

    private Row(String place, int number, Map<String, Cell> cells, Values values, boolean kept) {
        this.place = place;
        this.number = number;
        this.cells = cells;
        this.values = values;
        this.kept = kept;
    }

    /** The value under a key; null where there is none. */
    @FunctionalInterface
    public interface Values {
        @Nullable
        Object of(String key);
    }

    /** A row that was never in cells: its values stand under the keys of the table's {@link Attribute}s. */
    public static Row kept(String place, int number, Values values) {
        return new Row(place, number, Map.of(), values, true);
    }

    /** What several columns show together: in a row that was never in cells it stands under one key. */
    @SuppressWarnings("unchecked") // An attribute's own storage makes the value under its key.
    public <T> @Nullable T whole(String key, Function<Row, @Nullable T> ofCells) {
        return kept ? (T) values.of(key) : ofCells.apply(this);
    }

    /** A value that every row has. */
    public <T> T known(String key, @Nullable T value) {
        if (value == null) {
            throw new NoSuchElementException(place + " row " + number + " has no " + key);
        }
        return value;
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
        return kept ? values.of(column.key()) == null : !cells.containsKey(column.key());
    }

    /** Whether the cell could be read, or may be blank: a check need not look at what was refused already. */
    public boolean sound(Column<?> column) {
        return values.of(column.key()) != null || (blank(column) && !column.required());
    }

    /** The value, or what a blank cell stands for; null where it is blank without meaning or was refused. */
    @SuppressWarnings("unchecked") // Only a column's own kind makes the value under its key.
    public <T> @Nullable T find(Column<T> column) {
        Object value = values.of(column.key());
        return value != null ? (T) value : blank(column) ? column.fallback() : null;
    }

    /** The value of a column that is required or stands for something when blank. */
    public <T> T get(Column<T> column) {
        return known(column.key(), find(column));
    }
}
