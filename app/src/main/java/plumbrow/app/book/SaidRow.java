package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A row of a record as the chain says it: a line {@code column=cell} for each column, in the order of their names. A cell is
 * {@code n} where it is blank, {@code i} and the decimal digits of a whole number, {@code r} and the hexadecimal form of a number
 * (as Java's {@code Double.toHexString}, which is exact), or {@code t} and the text with backslash, line feed, carriage return and
 * NUL as {@code \\\\ \\n \\r \\0}. The bytes of files are not among them: their checksum is.
 *
 * <p>It names its columns. So a column that the tables get later changes nothing about what was said before.
 */
record SaidRow(Map<String, String> cells) {
    static SaidRow of(ResultSet row) throws SQLException {
        Map<String, String> cells = new TreeMap<>();
        for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
            Object value = row.getObject(column);
            if (!(value instanceof byte[])) {
                cells.put(row.getMetaData().getColumnName(column), cell(value));
            }
        }
        return new SaidRow(cells);
    }

    static SaidRow read(String text) {
        Map<String, String> cells = new TreeMap<>();
        text.lines().forEach(line -> {
            int equals = line.indexOf('=');
            if (equals > 0) {
                cells.put(line.substring(0, equals), line.substring(equals + 1));
            }
        });
        return new SaidRow(cells);
    }

    String text() {
        return cells.entrySet().stream()
                .map(cell -> cell.getKey() + "=" + cell.getValue())
                .collect(Collectors.joining("\n"));
    }

    /**
     * What a row says otherwise than was said here, in words; empty where it says the same. A column that came later is blank in
     * the rows of before.
     */
    List<String> differs(SaidRow now) {
        List<String> differences = new ArrayList<>();
        Set<String> columns = new TreeSet<>(cells.keySet());
        columns.addAll(now.cells().keySet());
        columns.forEach(column -> {
            String said = cells.getOrDefault(column, "n");
            String is = now.cells().getOrDefault(column, "n");
            if (!said.equals(is)) {
                differences.add(column.replace('_', ' ') + " was " + words(said) + " and is " + words(is));
            }
        });
        return differences;
    }

    /** "field North 80, rate 1.5". */
    String words() {
        return cells.entrySet().stream()
                .filter(cell -> !cell.getValue().equals("n"))
                .map(cell -> cell.getKey().replace('_', ' ') + " " + words(cell.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String words(String cell) {
        String value = cell.substring(Math.min(1, cell.length()));
        return switch (cell.isEmpty() ? 'n' : cell.charAt(0)) {
            case 'n' -> "blank";
            case 'r' -> number(value);
            case 't' -> "'" + value + "'";
            default -> value;
        };
    }

    private static String number(String hexadecimal) {
        try {
            return String.valueOf(Double.parseDouble(hexadecimal));
        } catch (NumberFormatException damaged) {
            return hexadecimal;
        }
    }

    private static String cell(@Nullable Object value) {
        if (value == null) {
            return "n";
        }
        if (value instanceof Double || value instanceof Float) {
            return "r" + Double.toHexString(((Number) value).doubleValue());
        }
        return value instanceof Number whole
                ? "i" + whole.longValue()
                : "t"
                        + value.toString()
                                .replace("\\", "\\\\")
                                .replace("\n", "\\n")
                                .replace("\r", "\\r")
                                .replace("\0", "\\0");
    }
}
