package plumbrow.documents.workbook.form;

import org.jspecify.annotations.Nullable;

/**
 * One value of a row: one thing of its record, which a workbook shows in one cell or in several, and the book keeps as it is.
 *
 * @param key its stable name within the table
 * @param storage how a database holds it
 * @param column the cell that shows it, or the first of several
 * @param getter the value of a record; null where it is unknown or there is none
 */
public record Attribute<R, T>(String key, Storage<T> storage, Column<?> column, Getter<R, T> getter) {
    /** A getter whose answer may be unknown. */
    @FunctionalInterface
    public interface Getter<R, T> {
        @Nullable
        T of(R value);
    }
}
