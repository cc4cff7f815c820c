package plumbrow.app.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature.Shape;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.documents.workbook.form.Storage;

/**
 * Where a value of a row stands in the book: columns of the row's table, and a table of its own where it is a list or an outline.
 *
 * @param <T> the value
 */
interface Slot<T> {
    /** Its columns in the row's table, in order; there may be none. */
    List<StoredTable.Column> columns();

    /** The table of its entries, where it has one. */
    default List<StoredTable> tables() {
        return List.of();
    }

    /** Fills its columns from {@code at} on. */
    void write(@Nullable T value, @Nullable Object[] row, int at, Distributions distributions);

    /** Adds the rows of its own table for a value. */
    default void entries(@Nullable T value, Object owner, List<@Nullable Object[]> rows) {}

    /**
     * The value of a row; null where it has none.
     *
     * @param entries the rows of its own table that belong to the row
     */
    @Nullable
    T read(@Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions);

    /** The rows of its own table by the row they belong to, which stands in their first column. */
    default Map<Object, List<@Nullable Object[]>> entries(JdbcOperations sql, int season) {
        return tables().isEmpty()
                ? Map.of()
                : Grouped.by(
                        (@Nullable Object[] row) -> java.util.Objects.requireNonNull(row[0]),
                        tables().get(0).rows(sql, season));
    }

    /** One column. */
    record One<T>(String column, Storage.Plain<T> storage) implements Slot<T> {
        @Override
        public List<StoredTable.Column> columns() {
            return List.of(new StoredTable.Column(column, storage.type()));
        }

        @Override
        public void write(@Nullable T value, @Nullable Object[] row, int at, Distributions distributions) {
            row[at] = value == null ? null : storage.put().apply(value);
        }

        @Override
        public @Nullable T read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            Object cell = row[at];
            return cell == null ? storage.ofBlank() : storage.take().apply(cell);
        }
    }

    /** A number and its unit. */
    record Two(String column) implements Slot<Amount> {
        private static final Storage.Plain<FarmUnit> UNIT = Storage.word(FarmUnit.class);

        @Override
        public List<StoredTable.Column> columns() {
            return List.of(
                    new StoredTable.Column(column, Storage.Type.REAL),
                    new StoredTable.Column(column + "_unit", Storage.Type.TEXT));
        }

        @Override
        public void write(@Nullable Amount value, @Nullable Object[] row, int at, Distributions distributions) {
            if (value != null) {
                row[at] = value.value();
                row[at + 1] = UNIT.put().apply(value.unit());
            }
        }

        @Override
        public @Nullable Amount read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            Object number = row[at];
            Object unit = row[at + 1];
            return number == null || unit == null
                    ? null
                    : new Amount((Double) number, UNIT.take().apply(unit));
        }
    }

    /** The number of a distribution of the season. */
    record Spread(String column) implements Slot<Distribution> {
        @Override
        public List<StoredTable.Column> columns() {
            return List.of(new StoredTable.Column(column, Storage.Type.INTEGER));
        }

        @Override
        public void write(@Nullable Distribution value, @Nullable Object[] row, int at, Distributions distributions) {
            row[at] = value == null ? null : distributions.number(value);
        }

        @Override
        public @Nullable Distribution read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            Object number = row[at];
            return number == null ? null : distributions.distribution((Integer) number);
        }
    }

    /**
     * A quantity that an older book knew as one number: that number, and beside it a distribution where it is spread.
     *
     * @param of the one number of a distribution
     */
    record NumberOrSpread(String column, String spread, ToDoubleFunction<Distribution> of)
            implements Slot<Distribution> {
        @Override
        public List<StoredTable.Column> columns() {
            return List.of(
                    new StoredTable.Column(column, Storage.Type.REAL),
                    new StoredTable.Column(spread, Storage.Type.INTEGER));
        }

        @Override
        public void write(@Nullable Distribution value, @Nullable Object[] row, int at, Distributions distributions) {
            if (value != null) {
                row[at] = of.applyAsDouble(value);
                row[at + 1] = value instanceof Distribution.Fixed ? null : distributions.number(value);
            }
        }

        @Override
        public @Nullable Distribution read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            Object number = row[at];
            Object spread = row[at + 1];
            return spread != null
                    ? distributions.distribution((Integer) spread)
                    : number == null ? null : new Distribution.Fixed((Double) number);
        }
    }

    /** Entries in one column, parted by semicolons, which no entry holds; empty text for none, blank where nobody has looked. */
    record Joined<T, E>(String column, Storage.Many<T, E> storage) implements Slot<T> {
        private static final String BETWEEN = "; ";

        @Override
        public List<StoredTable.Column> columns() {
            return List.of(new StoredTable.Column(column, Storage.Type.TEXT));
        }

        @Override
        public void write(@Nullable T value, @Nullable Object[] row, int at, Distributions distributions) {
            List<E> entries = value == null ? null : storage.entries().apply(value);
            row[at] = entries == null
                    ? null
                    : String.join(
                            BETWEEN,
                            entries.stream()
                                    .map(entry ->
                                            String.valueOf(storage.entry().put().apply(entry)))
                                    .toList());
        }

        @Override
        public @Nullable T read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            Object text = row[at];
            return storage.of()
                    .apply(
                            text == null
                                    ? null
                                    : text.toString().isEmpty()
                                            ? List.of()
                                            : List.of(text.toString().split(BETWEEN, -1)).stream()
                                                    .map(each -> storage.entry()
                                                            .take()
                                                            .apply(each))
                                                    .toList());
        }
    }

    /**
     * Entries in rows of a table of their own.
     *
     * @param known the column that says whether there is a list, which may be empty; empty where there always is
     * @param whenThere what it says then, 1 or 0
     */
    record Listed<T, E>(String known, int whenThere, StoredTable table, Storage.Many<T, E> storage) implements Slot<T> {
        @Override
        public List<StoredTable.Column> columns() {
            return known.isEmpty() ? List.of() : List.of(new StoredTable.Column(known, Storage.Type.INTEGER));
        }

        @Override
        public List<StoredTable> tables() {
            return List.of(table);
        }

        @Override
        public void write(@Nullable T value, @Nullable Object[] row, int at, Distributions distributions) {
            if (!known.isEmpty()) {
                row[at] = value == null || storage.entries().apply(value) == null ? 1 - whenThere : whenThere;
            }
        }

        @Override
        public void entries(@Nullable T value, Object owner, List<@Nullable Object[]> rows) {
            List<E> entries = value == null ? null : storage.entries().apply(value);
            if (entries != null) {
                entries.forEach(entry -> rows.add(
                        new @Nullable Object[] {owner, storage.entry().put().apply(entry)}));
            }
        }

        @Override
        public @Nullable T read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            boolean there = known.isEmpty() || Integer.valueOf(whenThere).equals(row[at]);
            List<E> list = new ArrayList<>();
            for (@Nullable Object[] entry : entries) {
                list.add(storage.entry().take().apply(java.util.Objects.requireNonNull(entry[1])));
            }
            return storage.of().apply(there ? List.copyOf(list) : null);
        }
    }

    /**
     * Points of an outline or a place in rows of a table of their own.
     *
     * @param form the column with what they make; empty where they always make an outline
     */
    record Points<T>(String form, StoredTable table, Function<T, Outlines.Drawn> drawn, Function<Outlines.Drawn, T> of)
            implements Slot<T> {
        static Points<Boundary> outline(StoredTable table) {
            return new Points<>("", table, Outlines::drawn, Outlines::boundary);
        }

        static Points<Shape> place(String form, StoredTable table) {
            return new Points<>(form, table, Outlines::drawn, Outlines::shape);
        }

        @Override
        public List<StoredTable.Column> columns() {
            return form.isEmpty() ? List.of() : List.of(new StoredTable.Column(form, Storage.Type.TEXT));
        }

        @Override
        public List<StoredTable> tables() {
            return List.of(table);
        }

        @Override
        public void write(@Nullable T value, @Nullable Object[] row, int at, Distributions distributions) {
            if (!form.isEmpty()) {
                row[at] = value == null ? null : Storage.word(drawn.apply(value).form());
            }
        }

        @Override
        public void entries(@Nullable T value, Object owner, List<@Nullable Object[]> rows) {
            if (value != null) {
                drawn.apply(value).marks().forEach(mark -> rows.add(mark.row(owner)));
            }
        }

        @Override
        public @Nullable T read(
                @Nullable Object[] row, int at, List<@Nullable Object[]> entries, Distributions distributions) {
            List<Outlines.Mark> marks = entries.stream().map(Outlines.Mark::of).toList();
            if (form.isEmpty()) {
                return marks.isEmpty() ? null : of.apply(new Outlines.Drawn(Outlines.Form.AREA, marks));
            }
            Object drawnAs = row[at];
            return drawnAs == null
                    ? null
                    : of.apply(new Outlines.Drawn(Outlines.Form.STORAGE.take().apply(drawnAs), marks));
        }
    }
}
