package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;

/**
 * A table with a header row: each record as one passage for each column.
 *
 * A row that holds what every record must hold begins a record; rows without it belong to the nearer record above or below,
 * as where names run over several lines or stand in the middle of their row.
 */
public final class HeaderTable {
    private static final int ACROSS_WORDS = 7;
    private static final double FAR = 2.2;
    private static final double CLOSE = 1.6;
    private static final double NEARER = .8;
    /** The unit of a number that stands in the line above. */
    private static final Pattern UNIT = Pattern.compile(
            "(?i)(?:lbs?|fl\\.?|oz|gals?|gallons?|pints?|pts?|quarts?|qts?|pounds?|ounces?)\\.?\\s?(?:oz\\.?\\s?)?(?:/|per)\\s?.{1,20}|1,?000\\s?sq.{1,12}");

    private static final Pattern LONG_NUMBER = Pattern.compile("\\d{3,}|\\d[.,]\\d");

    private final List<String> heads;
    private final List<List<Passage>> records;

    private final List<Row> rows;

    private HeaderTable(List<String> heads, List<List<Passage>> records, List<Row> rows) {
        this.heads = heads;
        this.records = records;
        this.rows = rows;
    }

    /** The rows it is made of, header and all. */
    public List<Row> rows() {
        return rows;
    }

    /** The header's words, column by column. */
    public List<String> heads() {
        return heads;
    }

    /** The records; each has a passage, maybe an empty one, for every column. */
    public List<List<Passage>> records() {
        return records;
    }

    /**
     * Tables of some rows.
     *
     * @param header whether a row is the header
     * @param anchor whether a row holds what each record must hold
     */
    public static List<HeaderTable> in(List<Row> rows, Predicate<Row> header, Predicate<Row> anchor) {
        return in(rows, header, anchor, row -> false);
    }

    /**
     * Tables of some rows.
     *
     * @param once whether a row holds what a record has once, so that it begins one even without a name
     */
    public static List<HeaderTable> in(
            List<Row> rows, Predicate<Row> header, Predicate<Row> anchor, Predicate<Row> once) {
        return in(rows, header, anchor, once, (name, next) -> false);
    }

    /**
     * Tables of some rows.
     *
     * @param goesOn whether a name goes on with the words of the next line, which then begins no record
     */
    public static List<HeaderTable> in(
            List<Row> rows,
            Predicate<Row> header,
            Predicate<Row> anchor,
            Predicate<Row> once,
            BiPredicate<String, String> goesOn) {
        List<HeaderTable> tables = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (header.test(rows.get(i))) {
                int end = i + 1;
                while (end < rows.size() && !header.test(rows.get(end))) {
                    end++;
                }
                HeaderTable table = read(rows.subList(i, end), new Ways(anchor, once, goesOn));
                if (!table.records.isEmpty()) {
                    tables.add(table);
                }
                i = end - 1;
            }
        }
        return tables;
    }

    /** How the rows of a record are told. */
    private record Ways(Predicate<Row> anchor, Predicate<Row> once, BiPredicate<String, String> goesOn) {}

    private static HeaderTable read(List<Row> all, Ways ways) {
        List<Row> rows = all;
        Predicate<Row> anchor = ways.anchor;
        int first = 1;
        while (first < rows.size() && !anchor.test(rows.get(first)) && first < 5) {
            first++;
        }
        if (first >= rows.size() || !anchor.test(rows.get(first))) {
            return new HeaderTable(List.of(), List.of(), List.of());
        }
        List<Cell> columns = new ArrayList<>(rows.get(0).cells());
        List<StringBuilder> heads = new ArrayList<>();
        columns.forEach(cell -> heads.add(new StringBuilder(cell.text())));
        Optional<Row> more = rows.subList(first, rows.size()).stream()
                .filter(row -> row.cells().size() > columns.size())
                .findFirst();
        Cell stub = more.orElse(rows.get(first)).first();
        if (more.isPresent() && stub.right() < columns.get(0).left()) {
            columns.add(0, stub);
            heads.add(0, new StringBuilder());
        }
        int last = beforeAcross(rows, first, columns);
        rows = rows.subList(0, last);
        int body = 1;
        while (body < first && headerGoesOn(rows, body, columns)) {
            for (Cell cell : rows.get(body).cells()) {
                heads.get(column(columns, cell)).append(' ').append(cell.text());
            }
            body++;
        }
        List<Row> parted = rows.subList(body, rows.size()).stream()
                .map(row -> new Row(
                        row.page(),
                        row.cells().stream()
                                .flatMap(cell -> parted(cell, columns).stream())
                                .toList()))
                .toList();
        Bands bands = Bands.of(parted, columns);
        parted = parted.stream().map(bands::parted).toList();
        List<List<Row>> groups = groups(parted, ways, columns);
        List<List<Passage>> records =
                groups.stream().map(group -> record(group, columns)).toList();
        int used = body + groups.stream().mapToInt(List::size).sum();
        return new HeaderTable(heads.stream().map(StringBuilder::toString).toList(), records, rows.subList(0, used));
    }

    /** Where a line of running text across the columns ends the table. */
    private static int beforeAcross(List<Row> rows, int from, List<Cell> columns) {
        double widest = widest(columns);
        for (int i = from + 1; i < rows.size(); i++) {
            Cell only = rows.get(i).first();
            if (rows.get(i).cells().size() == 1
                    && only.box().width() > widest * 1.3
                    && only.right() > columns.get(columns.size() > 1 ? 1 : 0).right()
                    && only.left() < columns.get(0).right()
                    && only.words().size() > ACROSS_WORDS) {
                return i;
            }
        }
        return rows.size();
    }

    private static double widest(List<Cell> columns) {
        double widest = columns.size() > 1 ? 0 : Double.MAX_VALUE;
        for (int i = 1; i < columns.size(); i++) {
            widest = Math.max(widest, columns.get(i).left() - columns.get(i - 1).left());
        }
        return widest;
    }

    /** A second line of the header stands close under the first, all of it below its columns. */
    private static boolean headerGoesOn(List<Row> rows, int at, List<Cell> columns) {
        Row row = rows.get(at);
        Row above = rows.get(at - 1);
        double height = above.bottom() - above.top();
        boolean close = row.page() == above.page() && row.top() - above.top() < 1.5 * height;
        boolean values = LONG_NUMBER.matcher(row.text()).find();
        return close && !values && row.cells().size() <= columns.size() && !startsFirst(row, columns);
    }

    private static boolean startsFirst(Row row, List<Cell> columns) {
        return row.cells().size() == 1
                && column(columns, row.first()) == 0
                && row.first().text().length() > 12;
    }

    private static List<List<Row>> groups(List<Row> rows, Ways ways, List<Cell> columns) {
        Predicate<Row> anchor = ways.anchor;
        Predicate<Row> once = ways.once;
        double line = line(rows);
        List<List<Row>> groups = new ArrayList<>();
        List<Row> waiting = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            boolean named = column(columns, row.first()) == 0;
            if (named && waiting.isEmpty() && nameGoesOn(groups, row, line, ways.goesOn, columns)) {
                groups.get(groups.size() - 1).add(row);
                continue;
            }
            boolean bare = named && !anchor.test(row) && besideOnce(rows, i, once);
            if (once.test(row) || (named && !bare && (anchor.test(row) || full(row, columns) || opens(rows, i)))) {
                List<Row> group = new ArrayList<>();
                Row last = groups.isEmpty() ? null : last(groups);
                for (Row wait : waiting) {
                    boolean above = last != null && distance(last, wait) <= distance(wait, row) + .5;
                    if (above) {
                        groups.get(groups.size() - 1).add(wait);
                        last = wait;
                    } else {
                        group.add(wait);
                    }
                }
                waiting.clear();
                group.add(row);
                groups.add(group);
            } else {
                waiting.add(row);
            }
        }
        for (Row wait : waiting) {
            if (groups.isEmpty() || !(follows(last(groups), wait, line, columns) || within(last(groups), wait))) {
                break;
            }
            groups.get(groups.size() - 1).add(wait);
        }
        return groups;
    }

    private static boolean nameGoesOn(
            List<List<Row>> groups, Row row, double line, BiPredicate<String, String> goesOn, List<Cell> columns) {
        double near = Math.max(CLOSE * (row.bottom() - row.top()), 1.3 * line);
        if (groups.isEmpty() || distance(last(groups), row) > near) {
            return false;
        }
        String name = groups.get(groups.size() - 1).stream()
                .map(Row::first)
                .filter(cell -> column(columns, cell) == 0)
                .map(Cell::text)
                .collect(Collectors.joining(" "));
        return goesOn.test(name, row.first().text());
    }

    /** Half a line below: the other lines of cells whose text stands in the middle of the record's height. */
    private static boolean within(Row last, Row row) {
        return distance(last, row) < .9 * (last.bottom() - last.top());
    }

    /** A name on a line of its own, close to the line that has its number. */
    private static boolean besideOnce(List<Row> rows, int at, Predicate<Row> once) {
        Row row = rows.get(at);
        double close = CLOSE * (row.bottom() - row.top());
        return (at > 0 && once.test(rows.get(at - 1)) && distance(rows.get(at - 1), row) < close)
                || (at + 1 < rows.size() && once.test(rows.get(at + 1)) && distance(row, rows.get(at + 1)) < close);
    }

    /** The first line of a name that stands beside the middle of its values: nearer to what follows than to what was. */
    private static boolean opens(List<Row> rows, int at) {
        return at > 0
                && at + 1 < rows.size()
                && distance(rows.get(at), rows.get(at + 1)) < NEARER * distance(rows.get(at - 1), rows.get(at));
    }

    /** A row with something in every column, and not the rest of one in brackets. */
    private static boolean full(Row row, List<Cell> columns) {
        return row.cells().size() == columns.size()
                && row.cells().stream()
                        .noneMatch(cell -> cell.text().startsWith("(")
                                || UNIT.matcher(cell.text()).matches());
    }

    private static Row last(List<List<Row>> groups) {
        List<Row> group = groups.get(groups.size() - 1);
        return group.get(group.size() - 1);
    }

    private static double distance(Row above, Row below) {
        return above.page() == below.page() ? below.top() - above.top() : Double.MAX_VALUE / 2;
    }

    /** After the last record: a row close below it and under the columns. */
    private static boolean follows(Row last, Row row, double line, List<Cell> columns) {
        boolean close = last.page() == row.page()
                && row.top() - last.top() < Math.max(FAR * .8 * (last.bottom() - last.top()), 1.3 * line);
        boolean under = row.cells().stream()
                .allMatch(cell -> columns.stream()
                        .anyMatch(column -> Math.abs(column.left() - cell.left()) < 8
                                || Math.abs(column.right() - cell.right()) < 8
                                || (cell.left() < column.right() && cell.right() > column.left())));
        double widest = widest(columns);
        return close
                && under
                && row.cells().stream().allMatch(cell -> cell.box().width() <= widest * 1.3);
    }

    /** How far the lines of the table stand apart where they stand closest, half lines aside. */
    private static double line(List<Row> rows) {
        double closest = Double.MAX_VALUE;
        for (int i = 1; i < rows.size(); i++) {
            double distance = distance(rows.get(i - 1), rows.get(i));
            double height = rows.get(i).bottom() - rows.get(i).top();
            closest = distance > height ? Math.min(closest, distance) : closest;
        }
        return closest == Double.MAX_VALUE ? 0 : closest;
    }

    private static List<Passage> record(List<Row> group, List<Cell> columns) {
        List<Passage.Builder> passages = new ArrayList<>();
        columns.forEach(column -> passages.add(new Passage.Builder()));
        for (Row row : group) {
            for (Cell cell : row.cells()) {
                parted(cell, columns)
                        .forEach(part -> passages.get(column(columns, part)).line(row.page(), part));
            }
            passages.forEach(Passage.Builder::endLine);
        }
        return passages.stream().map(Passage.Builder::build).toList();
    }

    /** A cell so close to the next that no gap parts them is parted where a column begins. */
    static List<Cell> parted(Cell cell, List<Cell> columns) {
        List<Cell> parts = new ArrayList<>();
        List<Word> words = new ArrayList<>();
        for (int i = 0; i < cell.words().size(); i++) {
            Word word = cell.words().get(i);
            boolean begins = columns.stream()
                    .skip(1)
                    .anyMatch(column -> Math.abs(column.left() - word.box().left()) < 1
                            || (Math.abs(column.left() - word.box().left()) < 4
                                    && Character.isDigit(word.text().charAt(0))));
            if (begins
                    && !words.isEmpty()
                    && otherColumn(
                            columns, words, cell.words().subList(i, cell.words().size()))) {
                parts.add(new Cell(words));
                words = new ArrayList<>();
            }
            words.add(word);
        }
        parts.add(new Cell(words));
        return parts;
    }

    /** Whether what stands before a column's beginning stands under another one: a centred value may have a word there by chance. */
    private static boolean otherColumn(List<Cell> columns, List<Word> before, List<Word> behind) {
        return column(columns, new Cell(before)) != column(columns, new Cell(behind));
    }

    /** The column whose left end, middle or right end a cell stands under. */
    static int column(List<Cell> columns, Cell cell) {
        int best = 0;
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i < columns.size(); i++) {
            Cell head = columns.get(i);
            double middle = Math.abs((head.left() + head.right()) / 2 - (cell.left() + cell.right()) / 2);
            double distance = Math.min(
                    Math.min(Math.abs(head.left() - cell.left()), Math.abs(head.right() - cell.right())), middle);
            if (distance < nearest) {
                nearest = distance;
                best = i;
            }
        }
        return best;
    }
}
