package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The cells of a row as plain values that compare alike, whether they come from a table or are about to go into one. */
final class RawRow {
    private RawRow() {}

    static List<Object> of(ResultSet cells) throws SQLException {
        List<Object> row = new ArrayList<>();
        for (int column = 1; column <= cells.getMetaData().getColumnCount(); column++) {
            row.add(cell(cells.getObject(column)));
        }
        return row;
    }

    static List<Object> of(Object[] cells) {
        return Arrays.stream(cells).map(RawRow::cell).toList();
    }

    /** Whole numbers come back as they please, so every number is compared as a double; a blank is an empty list. */
    private static Object cell(@Nullable Object value) {
        if (value == null) {
            return List.of();
        }
        return value instanceof Number number ? (Object) number.doubleValue() : value;
    }
}
