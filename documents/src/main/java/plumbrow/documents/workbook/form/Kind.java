package plumbrow.documents.workbook.form;

import java.util.List;

/** What a column holds: how a cell becomes a value, and a value a cell. */
public interface Kind<T> {
    /** What belongs in the cell, in words that follow "expected": "a number above 0". */
    String words();

    /** The words that may stand in the cell where only some may; empty where it is open. */
    default List<String> choices() {
        return List.of();
    }

    /** The value of a cell that is not blank. */
    T read(Cell cell) throws Misread;

    /** The cell for a value, such that reading it gives the value again. */
    Cell show(T value);

    /** How a database holds such a value. */
    Storage<T> storage();
}
