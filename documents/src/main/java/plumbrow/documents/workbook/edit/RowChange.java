package plumbrow.documents.workbook.edit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * One row of a table of the season that comes, goes or becomes another. A row is the texts of its cells by column key, as a
 * workbook shows them; blank cells are left out.
 *
 * @param table name of the sheet in the workbook
 * @param at where it stands in the table, or is to come, counted from 0; {@link #LAST} for the end
 * @param before the row as it was; null where it comes new
 * @param after the row as it is to be; null where it goes
 */
public record RowChange(
        String table,
        int at,
        @Nullable Map<String, String> before,
        @Nullable Map<String, String> after) {
    /** At the end of the table. */
    public static final int LAST = -1;

    public RowChange {
        before = before == null ? null : Collections.unmodifiableMap(new LinkedHashMap<>(before));
        after = after == null ? null : Collections.unmodifiableMap(new LinkedHashMap<>(after));
        if (before == null && after == null) {
            throw new IllegalArgumentException("a change has a row before it or after it");
        }
    }

    public static RowChange add(String table, Map<String, String> row) {
        return new RowChange(table, LAST, null, row);
    }

    public static RowChange change(String table, int at, Map<String, String> before, Map<String, String> after) {
        return new RowChange(table, at, before, after);
    }

    public static RowChange remove(String table, int at, Map<String, String> before) {
        return new RowChange(table, at, before, null);
    }

    /** The change that takes this one back. */
    public RowChange inverse() {
        return new RowChange(table, at, after, before);
    }

    /** The columns whose cells differ, in the order in which the row has them; all filled ones of a row that comes or goes. */
    public List<String> columns() {
        Map<String, String> was = before == null ? Map.of() : before;
        Map<String, String> is = after == null ? Map.of() : after;
        LinkedHashMap<String, String> all = new LinkedHashMap<>(is);
        new TreeSet<>(was.keySet()).forEach(key -> all.putIfAbsent(key, ""));
        return all.keySet().stream()
                .filter(key -> !was.getOrDefault(key, "").equals(is.getOrDefault(key, "")))
                .toList();
    }
}
