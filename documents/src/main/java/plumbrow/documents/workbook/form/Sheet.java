package plumbrow.documents.workbook.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.documents.workbook.form.Attribute.Getter;

/**
 * One sheet: its columns in order, and the way from a row to a value and back.
 *
 * @param name its name in the spreadsheet, and that of its CSV file
 * @param former the name that older workbooks have for it; empty where it always had this one
 * @param purpose what it holds, one sentence
 * @param optional whether a workbook may do without it, which means that nothing of it is known
 * @param fewest fewest rows it may have
 * @param most most rows it may have
 * @param attributes the values of a row as they are, of which the columns show each in one cell or several
 * @param unique sets of columns in which no two rows may be the same
 * @param checks what must hold within a row
 * @param build the value of a row in which nothing is wrong
 * @param list the values of a season that stand on this sheet
 * @param show fills the cells for a value
 */
public record Sheet<R>(
        String name,
        String former,
        String purpose,
        boolean optional,
        int fewest,
        int most,
        List<Column<?>> columns,
        List<Attribute<R, ?>> attributes,
        List<List<Column<?>>> unique,
        List<RowCheck> checks,
        Function<Row, R> build,
        Function<Season, List<R>> list,
        BiConsumer<R, Entry> show) {
    /** Most rows of any sheet. */
    public static final int MOST_ROWS = 20_000;

    /** Whether a sheet of this name is this one, by today's name or the former one; in lower case. */
    public boolean isCalled(String tidy) {
        return name.equals(tidy) || (!former.isEmpty() && former.equals(tidy));
    }

    /** The value of a row under a key. */
    public Attribute<R, ?> attribute(String key) {
        return attributes.stream()
                .filter(attribute -> attribute.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the table " + name + " has no " + key));
    }

    /**
     * The row of values under the keys of its attributes.
     *
     * @throws java.util.NoSuchElementException where a value that every row has is missing
     */
    public R made(Row.Values values) {
        return build.apply(Row.kept(name, 0, values));
    }

    /** The row with other values under some keys; the others stay. */
    public R with(R value, Map<String, Object> others) {
        return made(key -> others.containsKey(key)
                ? others.get(key)
                : attribute(key).getter().of(value));
    }

    /** The rows of this sheet for a season. */
    public List<List<Cell>> cells(Season season) {
        return list.apply(season).stream().map(this::cells).toList();
    }

    private List<Cell> cells(R value) {
        Entry entry = new Entry();
        show.accept(value, entry);
        return columns.stream().map(entry::cell).toList();
    }

    public static <R> Maker<R> named(String name, String purpose, Function<Season, List<R>> list) {
        return new Maker<>(name, purpose, list);
    }

    /** Collects a sheet column by column. */
    public static final class Maker<R> {
        private final String name;
        private final String purpose;
        private final Function<Season, List<R>> list;
        private final List<Column<?>> columns = new ArrayList<>();
        private final List<Attribute<R, ?>> attributes = new ArrayList<>();
        private final List<List<Column<?>>> unique = new ArrayList<>();
        private final List<RowCheck> checks = new ArrayList<>();
        private BiConsumer<R, Entry> show = (value, entry) -> {};
        private String former = "";
        private boolean optional;
        private int fewest;
        private int most = MOST_ROWS;

        private Maker(String name, String purpose, Function<Season, List<R>> list) {
            this.name = name;
            this.purpose = purpose;
            this.list = list;
        }

        /** A value that stands in one cell. */
        public <T> Maker<R> column(Column<T> column, Getter<R, T> getter) {
            attributes.add(new Attribute<>(column.key(), column.kind().storage(), column, getter));
            return shown(column, getter);
        }

        /** A cell that says in other words what other cells of the row say: a database does without it. */
        public <T> Maker<R> shown(Column<T> column, Getter<R, T> getter) {
            return cells(List.of(column), (value, entry) -> entry.put(column, getter.of(value)));
        }

        public Maker<R> distribution(DistributionColumns distribution, Getter<R, Distribution> getter) {
            checks.add(distribution);
            return whole(
                    distribution.key(),
                    new Storage.Spread(),
                    getter,
                    distribution.columns(),
                    (value, entry) -> distribution.show(getter.of(value), entry));
        }

        public Maker<R> amount(AmountColumns<?> amount, Getter<R, Amount> getter) {
            return whole(
                    amount.key(),
                    new Storage.AmountAndUnit(),
                    getter,
                    amount.columns(),
                    (value, entry) -> amount.show(getter.of(value), entry));
        }

        public Maker<R> rates(RateRange rates, Getter<R, Amount> low, Getter<R, Amount> high) {
            attributes.add(new Attribute<>(rates.low().key(), new Storage.AmountAndUnit(), rates.low(), low));
            attributes.add(new Attribute<>(rates.high().key(), new Storage.AmountAndUnit(), rates.high(), high));
            return cells(rates.columns(), (value, entry) -> rates.show(low.of(value), high.of(value), entry));
        }

        /** A value that stands in several cells. */
        public <T> Maker<R> whole(
                String key, Storage<T> storage, Getter<R, T> getter, List<Column<?>> shown, BiConsumer<R, Entry> fill) {
            attributes.add(new Attribute<>(key, storage, shown.get(0), getter));
            return cells(shown, fill);
        }

        private Maker<R> cells(List<Column<?>> shown, BiConsumer<R, Entry> fill) {
            columns.addAll(shown);
            show = show.andThen(fill);
            return this;
        }

        /** Older workbooks call it otherwise; they are read all the same. */
        public Maker<R> formerly(String name) {
            former = name;
            return this;
        }

        /** A workbook may do without this sheet. */
        public Maker<R> optional() {
            optional = true;
            return this;
        }

        /** Adds columns that are described elsewhere. */
        public Maker<R> also(UnaryOperator<Maker<R>> more) {
            return more.apply(this);
        }

        public Maker<R> rows(int atLeast, int atMost) {
            fewest = atLeast;
            most = atMost;
            return this;
        }

        public Maker<R> once(Column<?>... together) {
            unique.add(Arrays.asList(together));
            return this;
        }

        public Maker<R> check(RowCheck check) {
            checks.add(check);
            return this;
        }

        public Sheet<R> build(Function<Row, R> build) {
            return new Sheet<>(
                    name,
                    former,
                    purpose,
                    optional,
                    fewest,
                    most,
                    List.copyOf(columns),
                    List.copyOf(attributes),
                    List.copyOf(unique),
                    List.copyOf(checks),
                    build,
                    list,
                    show);
        }
    }
}
