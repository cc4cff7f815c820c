package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;

/**
 * A table in which every line with a value is a record of its own, and a name in the first column holds for the lines from it
 * to the next name; or, where the first line has no name, for the lines around it, as names stand in the middle of their block.
 */
public final class RowTable {
    private static final double CLOSE = 1.7;
    private static final double EPSILON = 2;
    private static final double HALF = .2;
    private static final double BETWEEN = 6;
    private static final int MOST_HEADER_LINES = 5;

    private final List<String> heads;
    private final List<Entry> entries;
    private final List<Row> rows;

    /**
     * A line with a value.
     *
     * @param name what stands in the first column for it; empty for nothing
     * @param cells one passage for every column
     */
    public record Entry(String name, List<Passage> cells) {
        public Entry {
            cells = List.copyOf(cells);
        }

        /** The line without its name, columns parted by tabs. */
        public Passage line() {
            Passage.Builder all = new Passage.Builder();
            cells.subList(1, cells.size()).forEach(all::cell);
            return all.build();
        }
    }

    private RowTable(List<String> heads, List<Entry> entries, List<Row> rows) {
        this.heads = heads;
        this.entries = entries;
        this.rows = rows;
    }

    public List<String> heads() {
        return heads;
    }

    public List<Entry> entries() {
        return entries;
    }

    /** The rows it is made of, header and all. */
    public List<Row> rows() {
        return rows;
    }

    /**
     * Tables of some rows.
     *
     * @param header whether a row is the header
     * @param value whether a row holds a value
     * @param goesOn whether a name goes on with the words of the next line
     */
    public static List<RowTable> in(
            List<Row> rows, Predicate<Row> header, Predicate<Row> value, BiPredicate<String, String> goesOn) {
        List<RowTable> tables = new ArrayList<>();
        RowTable last = null;
        for (int i = 0; i < rows.size(); i++) {
            if (header.test(rows.get(i))) {
                RowTable table = read(rows, i, header, value, goesOn, last);
                if (!table.entries.isEmpty()) {
                    tables.add(table);
                    last = table;
                    i += table.rows.size() - 1;
                }
            }
        }
        return tables;
    }

    private static RowTable read(
            List<Row> rows,
            int at,
            Predicate<Row> header,
            Predicate<Row> value,
            BiPredicate<String, String> goesOn,
            @Nullable RowTable before) {
        List<Cell> columns = new ArrayList<>(rows.get(at).cells());
        List<StringBuilder> heads = new ArrayList<>();
        columns.forEach(cell -> heads.add(new StringBuilder(cell.text())));
        int body = at + 1;
        while (body < rows.size() && body <= at + MOST_HEADER_LINES && headerGoesOn(rows, body, columns, value)) {
            for (Cell cell : rows.get(body).cells()) {
                heads.get(HeaderTable.column(columns, cell)).append(' ').append(cell.text());
            }
            body++;
        }
        int end = body;
        while (end < rows.size() && !header.test(rows.get(end)) && belongs(rows.get(end), columns, value)) {
            end++;
        }
        List<Row> bodyRows = wholeLines(rows.subList(body, end), value);
        unheaded(bodyRows, columns, heads);
        Bands bands = Bands.of(bodyRows, columns);
        bodyRows = new ArrayList<>(bodyRows.stream().map(bands::parted).toList());
        List<List<Passage>> lines = new ArrayList<>();
        for (Row row : bodyRows) {
            lines.add(cells(row, columns));
        }
        int first = 0;
        while (first < bodyRows.size() && !value.test(bodyRows.get(first))) {
            first++;
        }
        String carried = carried(rows, at, before);
        boolean centred = carried.isEmpty()
                && first < lines.size()
                && lines.get(first).get(0).isEmpty()
                && first == 0;
        List<String> names = centred ? centred(bodyRows, lines) : fromTop(bodyRows, lines, carried, value, goesOn);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (value.test(bodyRows.get(i))) {
                entries.add(new Entry(names.get(i), lines.get(i)));
            }
        }
        return new RowTable(heads.stream().map(StringBuilder::toString).toList(), entries, rows.subList(at, end));
    }

    /** The last name of the same table on the page before, whose header comes again on this one. */
    private static String carried(List<Row> rows, int at, @Nullable RowTable before) {
        if (before == null || before.entries.isEmpty() || at == 0) {
            return "";
        }
        Row last = before.rows.get(before.rows.size() - 1);
        boolean nextPage = last.page() + 1 == rows.get(at).page();
        boolean same = before.rows.get(0).text().equals(rows.get(at).text());
        return nextPage && same ? before.entries.get(before.entries.size() - 1).name() : "";
    }

    /** Puts together lines that stand half a line apart: a cell of two lines beside the middle of its row. */
    private static List<Row> wholeLines(List<Row> rows, Predicate<Row> value) {
        List<Row> whole = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Row last = whole.isEmpty() ? null : whole.get(whole.size() - 1);
            boolean half = last != null
                    && last.page() == row.page()
                    && row.top() - last.bottom() < -HALF * (row.bottom() - row.top())
                    && !(value.test(last) && value.test(row));
            if (last != null && half) {
                List<Cell> cells = new ArrayList<>(last.cells());
                cells.addAll(row.cells());
                cells.sort(java.util.Comparator.comparingDouble(Cell::left));
                whole.set(whole.size() - 1, new Row(row.page(), cells));
            } else {
                whole.add(row);
            }
        }
        return whole;
    }

    /** A column without a head of its own, between two that have one. */
    private static void unheaded(List<Row> rows, List<Cell> columns, List<StringBuilder> heads) {
        for (int i = 0; i + 1 < columns.size(); i++) {
            Cell before = columns.get(i);
            Cell next = columns.get(i + 1);
            List<Cell> between = rows.stream()
                    .filter(row -> row.cells().size() > 1)
                    .flatMap(row -> row.cells().stream())
                    .filter(cell -> cell.left() > before.right() + BETWEEN && cell.right() < next.left() - BETWEEN)
                    .toList();
            if (between.size() > 1) {
                columns.add(i + 1, between.get(0));
                heads.add(i + 1, new StringBuilder());
                i++;
            }
        }
    }

    private static boolean headerGoesOn(List<Row> rows, int at, List<Cell> columns, Predicate<Row> value) {
        Row row = rows.get(at);
        Row above = rows.get(at - 1);
        boolean close = row.page() == above.page() && row.top() - above.top() < 1.5 * (above.bottom() - above.top());
        return close
                && !value.test(row)
                && row.first().left() > columns.get(0).right()
                && row.cells().size() < columns.size() + 1;
    }

    /** A line across the columns is no more of the table. */
    private static boolean belongs(Row row, List<Cell> columns, Predicate<Row> value) {
        if (value.test(row) && row.cells().size() > 1) {
            return true;
        }
        Cell only = row.first();
        boolean across = only.left() < columns.get(0).right()
                && only.right() > columns.get(1).left() + EPSILON
                && HeaderTable.parted(only, columns).size() == 1;
        return !across && !only.text().endsWith(":");
    }

    private static List<Passage> cells(Row row, List<Cell> columns) {
        List<Passage.Builder> passages = new ArrayList<>();
        columns.forEach(column -> passages.add(new Passage.Builder()));
        for (Cell cell : row.cells()) {
            for (Cell part : HeaderTable.parted(cell, columns)) {
                passages.get(HeaderTable.column(columns, part)).line(row.page(), part);
            }
        }
        return passages.stream().map(Passage.Builder::build).toList();
    }

    /** Names that stand beside the first line of their block, and may run on below it. */
    private static List<String> fromTop(
            List<Row> rows,
            List<List<Passage>> lines,
            String carried,
            Predicate<Row> value,
            BiPredicate<String, String> goesOn) {
        List<String> names = new ArrayList<>();
        int begun = 0;
        String name = carried;
        for (int i = 0; i < rows.size(); i++) {
            Passage cell = lines.get(i).get(0);
            if (!cell.isEmpty()) {
                boolean more =
                        !name.isEmpty() && goesOn.test(name, cell.text()) && (!value.test(rows.get(i)) || open(name));
                if (more) {
                    name = name + " " + cell.text();
                    for (int k = begun; k < i; k++) {
                        names.set(k, name);
                    }
                } else {
                    name = cell.text();
                    begun = i;
                }
            }
            names.add(name);
        }
        return names;
    }

    private static boolean open(String name) {
        return name.endsWith("-") || name.endsWith(",") || name.lastIndexOf('(') > name.lastIndexOf(')');
    }

    /** Names that stand beside the middle of their block: each block ends as far below its name as it began above. */
    private static List<String> centred(List<Row> rows, List<List<Passage>> lines) {
        List<String> names = new ArrayList<>();
        int from = 0;
        int at = 0;
        while (at < rows.size()) {
            while (at < rows.size() && lines.get(at).get(0).isEmpty()) {
                at++;
            }
            if (at == rows.size()) {
                break;
            }
            int last = at;
            StringBuilder name = new StringBuilder(lines.get(at).get(0).text());
            while (last + 1 < rows.size()
                    && !lines.get(last + 1).get(0).isEmpty()
                    && rows.get(last + 1).top() - rows.get(last).top()
                            < CLOSE * (rows.get(last).bottom() - rows.get(last).top())) {
                last++;
                name.append(' ').append(lines.get(last).get(0).text());
            }
            double middle = (rows.get(at).top() + rows.get(last).bottom()) / 2;
            double bottom = 2 * middle - rows.get(from).top();
            int to = last;
            while (to + 1 < rows.size()
                    && rows.get(to + 1).page() == rows.get(last).page()
                    && rows.get(to + 1).bottom() <= bottom + EPSILON) {
                to++;
            }
            while (names.size() <= to) {
                names.add(name.toString());
            }
            from = to + 1;
            at = to + 1;
        }
        while (names.size() < rows.size()) {
            names.add("");
        }
        return names;
    }
}
