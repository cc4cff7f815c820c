package plumbrow.app.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import plumbrow.documents.workbook.form.Storage;

/**
 * A table of the book that holds rows of seasons: all SQL for it follows from its columns. Before these it has {@code season} and
 * {@code position}, the place of a row in the season, counted from 1.
 */
record StoredTable(String name, List<Column> columns) {
    /** A column of its own. */
    record Column(String name, Storage.Type type) {}

    /** The rows of a season as they go into a table: season, position, then its own columns. */
    record Filled(StoredTable table, List<@Nullable Object[]> rows) {}

    StoredTable {
        columns = List.copyOf(columns);
    }

    static StoredTable of(String name, Column... columns) {
        return new StoredTable(name, List.of(columns));
    }

    /** The cells of rows with season and position before them. */
    Filled fill(int season, List<@Nullable Object[]> rows) {
        List<@Nullable Object[]> filled = new java.util.ArrayList<>(rows.size());
        for (@Nullable Object[] row : rows) {
            @Nullable Object[] cells = new @Nullable Object[row.length + 2];
            cells[0] = season;
            cells[1] = filled.size() + 1;
            for (int i = 0; i < row.length; i++) {
                cells[i + 2] = Cells.kept(name, row[i]);
            }
            filled.add(cells);
        }
        return new Filled(this, filled);
    }

    String insert() {
        String marks = allNames().map(column -> "?").collect(Collectors.joining(", "));
        return "INSERT INTO " + name + " (" + allNames().collect(Collectors.joining(", ")) + ") VALUES (" + marks + ")";
    }

    /** Asks for every column of a season, as {@link Filled} has them, in order of entry. */
    String selectAll() {
        return select(allNames());
    }

    /** The same with the columns in the order of their names, which no later column changes. */
    String selectByName() {
        return select(allNames().sorted());
    }

    String delete() {
        return "DELETE FROM " + name + " WHERE season = ?";
    }

    /** The rows of a season in order of entry, each with its own columns: texts, {@code Integer}s and {@code Double}s. */
    List<@Nullable Object[]> rows(JdbcOperations sql, int season) {
        return sql.query(select(columns.stream().map(Column::name)), (cells, number) -> row(cells), season);
    }

    private @Nullable Object[] row(ResultSet cells) throws SQLException {
        @Nullable Object[] row = new @Nullable Object[columns.size()];
        for (int i = 0; i < row.length; i++) {
            Object cell = switch (columns.get(i).type()) {
                case TEXT -> cells.getString(i + 1);
                case INTEGER -> cells.getInt(i + 1);
                case REAL -> cells.getDouble(i + 1);
            };
            row[i] = cells.wasNull() ? null : cell;
        }
        return row;
    }

    private String select(Stream<String> names) {
        return "SELECT " + names.collect(Collectors.joining(", ")) + " FROM " + name
                + " WHERE season = ? ORDER BY position";
    }

    private Stream<String> allNames() {
        return Stream.concat(Stream.of("season", "position"), columns.stream().map(Column::name));
    }
}
