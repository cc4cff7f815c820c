package plumbrow.app.book;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcOperations;
import plumbrow.advice.season.Season;
import plumbrow.app.book.StoredTable.Filled;
import plumbrow.documents.workbook.form.Attribute;
import plumbrow.documents.workbook.form.Row;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.Storage;

/**
 * A table of a season in the book. Which values its rows have, of which kind, and how a record is made of them, its {@link Sheet}
 * declares; here stands only where an older book has them under another name than their key.
 */
final class SeasonTable<R> {
    private final Sheet<R> sheet;
    private final StoredTable table;
    private final Predicate<R> here;
    private final List<Placed<R, ?>> places;
    private final Map<String, Integer> index = new HashMap<>();

    /** A value and its columns, the first of which is the one at {@code at}. */
    private record Placed<R, T>(Attribute<R, T> attribute, Slot<T> slot, int at) {
        void write(R value, @Nullable Object[] row, Distributions distributions) {
            slot.write(attribute.getter().of(value), row, at, distributions);
        }

        void entries(R value, Object owner, List<@Nullable Object[]> rows) {
            slot.entries(attribute.getter().of(value), owner, rows);
        }
    }

    private SeasonTable(Maker<R> maker) {
        this.sheet = maker.sheet;
        this.here = maker.here;
        this.places = new ArrayList<>();
        List<StoredTable.Column> columns = new ArrayList<>();
        for (Attribute<R, ?> attribute : sheet.attributes()) {
            if (!maker.elsewhere.contains(attribute.key())) {
                index.put(attribute.key(), places.size());
                Placed<R, ?> placed = placed(attribute, maker, columns.size());
                places.add(placed);
                columns.addAll(placed.slot().columns());
            }
        }
        this.table = new StoredTable(maker.table, columns);
        maker.slots.keySet().stream().filter(key -> !index.containsKey(key)).forEach(key -> {
            throw new IllegalArgumentException("the table " + sheet.name() + " has no " + key);
        });
    }

    @SuppressWarnings(
            "unchecked") // A slot is given for a key whose values it holds; the tests put in and read every table.
    private static <R, T> Placed<R, T> placed(Attribute<R, T> attribute, Maker<R> maker, int at) {
        Slot<?> given = maker.slots.get(attribute.key());
        return new Placed<>(
                attribute,
                given != null
                        ? (Slot<T>) given
                        : (Slot<T>)
                                slot(attribute.storage(), maker.names.getOrDefault(attribute.key(), attribute.key())),
                at);
    }

    private static Slot<?> slot(Storage<?> storage, String column) {
        if (storage instanceof Storage.Plain<?> plain) {
            return new Slot.One<>(column, plain);
        } else if (storage instanceof Storage.AmountAndUnit) {
            return new Slot.Two(column);
        } else if (storage instanceof Storage.Spread) {
            return new Slot.Spread(column);
        } else if (storage instanceof Storage.Many<?, ?> many) {
            return new Slot.Joined<>(column, many);
        }
        throw new IllegalArgumentException("the table of the points of " + column + " must be named");
    }

    /** The table of a sheet under its name in the book. */
    static <R> Maker<R> of(String table, Sheet<R> sheet) {
        return new Maker<>(table, sheet);
    }

    /** Says where the book has what otherwise than under its key. */
    static final class Maker<R> {
        private final String table;
        private final Sheet<R> sheet;
        private final Map<String, String> names = new HashMap<>();
        private final Map<String, Slot<?>> slots = new HashMap<>();
        private final List<String> elsewhere = new ArrayList<>();
        private Predicate<R> here = row -> true;

        private Maker(String table, Sheet<R> sheet) {
            this.table = table;
            this.sheet = sheet;
        }

        /** The column of a value is called otherwise than its key. */
        Maker<R> as(String key, String column) {
            names.put(key, column);
            return this;
        }

        /** A value stands otherwise than its kind would. */
        Maker<R> in(String key, Slot<?> slot) {
            slots.put(key, slot);
            return this;
        }

        /**
         * A list stands in a table of its own, whose rows name the row they belong to by its first value, or by its position
         * where the table gives {@code Storage.Type.INTEGER}.
         *
         * @param known the column that says whether there is a list; empty where there always is
         */
        Maker<R> listed(
                String key, String known, int whenThere, String table, String owner, Storage.Type type, String entry) {
            for (Attribute<R, ?> attribute : sheet.attributes()) {
                if (attribute.key().equals(key) && attribute.storage() instanceof Storage.Many<?, ?> many) {
                    StoredTable own = StoredTable.of(
                            table,
                            new StoredTable.Column(owner, type),
                            new StoredTable.Column(entry, many.entry().type()));
                    return in(key, new Slot.Listed<>(known, whenThere, own, many));
                }
            }
            throw new IllegalArgumentException("the table " + sheet.name() + " has no list " + key);
        }

        /** Only some rows of the sheet stand in this table, without the values under {@code keys}. */
        Maker<R> only(Predicate<R> rows, String... keys) {
            here = rows;
            elsewhere.addAll(List.of(keys));
            return this;
        }

        SeasonTable<R> make() {
            return new SeasonTable<>(this);
        }
    }

    Sheet<R> sheet() {
        return sheet;
    }

    /** Its own table, then those of its lists and outlines. */
    List<StoredTable> tables() {
        return Stream.concat(Stream.of(table), places.stream().flatMap(placed -> placed.slot().tables().stream()))
                .toList();
    }

    /** The rows of a season as they go into the tables. */
    List<Filled> fill(Season season, Distributions distributions) {
        List<R> values = sheet.list().apply(season).stream().filter(here).toList();
        List<@Nullable Object[]> rows = new ArrayList<>(values.size());
        for (R value : values) {
            @Nullable Object[] row = new @Nullable Object[table.columns().size()];
            places.forEach(placed -> placed.write(value, row, distributions));
            rows.add(row);
        }
        List<Filled> filled = new ArrayList<>();
        filled.add(table.fill(season.year(), rows));
        for (Placed<R, ?> placed : places) {
            for (StoredTable own : placed.slot().tables()) {
                List<@Nullable Object[]> entries = new ArrayList<>();
                for (int i = 0; i < values.size(); i++) {
                    placed.entries(values.get(i), owner(own, rows.get(i), i + 1), entries);
                }
                filled.add(own.fill(season.year(), entries));
            }
        }
        return filled;
    }

    /** By what the rows of a list's table name a row. */
    private static Object owner(StoredTable own, @Nullable Object[] row, int position) {
        return own.columns().get(0).type() == Storage.Type.INTEGER ? position : Objects.requireNonNull(row[0]);
    }

    /** The values of a season, in order. */
    List<R> read(JdbcOperations sql, int season, Distributions distributions) {
        List<Map<Object, List<@Nullable Object[]>>> entries = new ArrayList<>();
        places.forEach(placed -> entries.add(placed.slot().entries(sql, season)));
        List<@Nullable Object[]> rows = table.rows(sql, season);
        List<R> values = new ArrayList<>(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            values.add(value(rows.get(i), i + 1, entries, distributions));
        }
        return values;
    }

    private R value(
            @Nullable Object[] row,
            int position,
            List<Map<Object, List<@Nullable Object[]>>> entries,
            Distributions distributions) {
        try {
            @Nullable Object[] values = new @Nullable Object[places.size()];
            for (int i = 0; i < values.length; i++) {
                Placed<R, ?> placed = places.get(i);
                List<StoredTable> own = placed.slot().tables();
                values[i] = placed.slot()
                        .read(
                                row,
                                placed.at(),
                                own.isEmpty()
                                        ? List.of()
                                        : entries.get(i).getOrDefault(owner(own.get(0), row, position), List.of()),
                                distributions);
            }
            return sheet.build().apply(Row.kept(table.name(), position, key -> {
                Integer at = index.get(key);
                return at == null ? null : values[at];
            }));
        } catch (NoSuchElementException blank) {
            throw new BookException(
                    "The book is damaged: a value that must stand is blank. The table " + blank.getMessage() + ".",
                    blank);
        } catch (IllegalArgumentException | DateTimeException other) {
            throw new BookException(String.valueOf(other.getMessage()), other);
        }
    }
}
