package plumbrow.documents.workbook.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.season.Season;

/**
 * One sheet: its columns in order, and the way from a row to a value and back.
 *
 * @param name its name in the spreadsheet, and that of its CSV file
 * @param former the name that older workbooks have for it; empty where it always had this one
 * @param purpose what it holds, one sentence
 * @param optional whether a workbook may do without it, which means that nothing of it is known
 * @param fewest fewest rows it may have
 * @param most most rows it may have
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

    /** A getter whose answer may be unknown. */
    @FunctionalInterface
    public interface Getter<R, T> {
        @Nullable
        T of(R value);
    }

    /** Collects a sheet column by column. */
    public static final class Maker<R> {
        private final String name;
        private final String purpose;
        private final Function<Season, List<R>> list;
        private final List<Column<?>> columns = new ArrayList<>();
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

        public <T> Maker<R> column(Column<T> column, Getter<R, T> getter) {
            columns.add(column);
            show = show.andThen((value, entry) -> entry.put(column, getter.of(value)));
            return this;
        }

        public Maker<R> distribution(DistributionColumns distribution, Getter<R, Distribution> getter) {
            columns.addAll(distribution.columns());
            checks.add(distribution);
            show = show.andThen((value, entry) -> distribution.show(getter.of(value), entry));
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
                    List.copyOf(unique),
                    List.copyOf(checks),
                    build,
                    list,
                    show);
        }
    }
}
