package plumbrow.app.book;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.season.Season;

/**
 * One kind of row of a season: its table, and the way from a season to rows and from a row back to a value. Every table
 * starts with the columns {@code season} and {@code position}, which are not among {@code columns}.
 *
 * @param columns names with blanks between, in the order in which {@code write} and {@code read} go through them
 * @param rows the values of this kind in a season, in order
 */
record RowKind<R>(
        String table, String columns, Function<Season, List<R>> rows, BiConsumer<R, Cells> write, FromRow<R> read) {

    /** The rows of one season for one table. */
    record Filled(RowKind<?> kind, List<Object[]> cells) {}

    /** Reads one row into a value. */
    @FunctionalInterface
    interface FromRow<R> {
        R read(Row row) throws SQLException;
    }

    /** The rows of a season as they go into the table. */
    Filled fill(Season season, Distributions distributions) {
        return fill(season.year(), rows.apply(season), distributions);
    }

    Filled fill(int season, List<R> values, Distributions distributions) {
        List<Object[]> cells = new ArrayList<>(values.size());
        for (R value : values) {
            Cells row = new Cells(table, distributions).whole(season).whole(cells.size() + 1);
            write.accept(value, row);
            cells.add(row.all());
        }
        return new Filled(this, cells);
    }

    String insert() {
        String marks = allColumns().map(column -> "?").collect(Collectors.joining(", "));
        return "INSERT INTO " + table + " (" + names(allColumns()) + ") VALUES (" + marks + ")";
    }

    /** Asks for the columns of {@code read}, in order of entry. */
    String select() {
        return selecting(names(ownColumns()));
    }

    /** Asks for every column, as {@code cells} gives them. */
    String selectAll() {
        return selecting(names(allColumns()));
    }

    String delete() {
        return "DELETE FROM " + table + " WHERE season = ?";
    }

    private String selecting(String names) {
        return "SELECT " + names + " FROM " + table + " WHERE season = ? ORDER BY position";
    }

    private Stream<String> ownColumns() {
        return Arrays.stream(columns.split(" "));
    }

    private Stream<String> allColumns() {
        return Stream.concat(Stream.of("season", "position"), ownColumns());
    }

    private static String names(Stream<String> columns) {
        return columns.collect(Collectors.joining(", "));
    }
}
