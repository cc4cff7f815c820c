package plumbrow.documents.label.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;
import plumbrow.documents.sheet.section.HeaderTable;

/** Finds tables whose heads say what they hold, and where they end. */
final class Grids {
    private static final int DEEPEST_HEAD = 4;
    private static final double CLOSE = 1.6;
    private static final double APART = 4;
    private static final double PARTED = 1.4;
    private static final double WIDE = 1.2;
    private static final int LONGEST_HEAD = 45;
    private static final int FEWEST_LINES = 6;
    private static final int WORDY = 3;
    private static final double SHIFTED = 40;
    private static final double ALIGNED = 4;
    private static final int LONGEST_VALUE = 3;
    private static final Pattern VALUE = Pattern.compile(
            "(?i)^\\W{0,3}(?:up to |at least |not? |less than )?(?:\\d|\\.\\d|[½¼¾⅓⅔⅛⅜⅝⅞]|(?:one|two|three|four)\\b|none\\b|any ?time|immediately|do not\\b|not\\b|n/?a\\b|[-–—]+$|see\\b).*");
    private static final Pattern GOES_ON = Pattern.compile("(?i).*(?:\\bto|\\bor|[-–,/])$");
    private static final Pattern MEASURED =
            Pattern.compile("(?i)[\\d.]+(?:\\s?[-–]\\s?[\\d.]+)?\\s?(?:lbs?|oz|fl|gal|pts?|qts?|pounds?|ounces?)\\b.*");
    private static final Pattern NUMBER = Pattern.compile("(?i)(?:up to |at least )?[\\d.½¼¾⅓⅔⅛⅜⅝⅞].*");

    /** "(such as the following examples):" under the heads. */
    private static final Pattern NOTE = Pattern.compile("\\([^)]{3,60}\\)\\s?:?");

    private static final Pattern UNFINISHED = Pattern.compile("(?i).*(?:,|\\b(?:and|or|of|such as|as))");
    private static final Pattern BEGINS = Pattern.compile("\\p{Lu}.*", Pattern.DOTALL);
    private static final Pattern SENTENCE = Pattern.compile(".*[.;]");

    private Grids() {}

    /**
     * A table.
     *
     * @param more records that follow at the top of the next column
     * @param body the row after its last under the heads
     * @param end the row after its last
     */
    record Found(HeaderTable table, List<Column> columns, List<List<Passage>> more, int body, int end) {}

    /** The table whose head begins at a row, if one does. */
    static Optional<Found> at(List<Row> rows, int start) {
        Row first = rows.get(start);
        if (first.cells().size() < 2 || !looksLikeHeads(first)) {
            return Optional.empty();
        }
        List<Column> typed = types(heads(rows, start, first.cells()));
        long known = typed.stream().filter(column -> column != Column.OTHER).count();
        if (known < 2
                || typed.stream().noneMatch(Column::isValue)
                || typed.stream().allMatch(Column::isValue)) {
            return Optional.empty();
        }
        int end = end(rows, start, first.cells());
        List<Row> part = rows.subList(start, end);
        List<HeaderTable> tables = HeaderTable.in(
                part, row -> row.equals(first), row -> !row.equals(first) && isAnchor(part, row, first.cells(), typed));
        if (tables.isEmpty()) {
            return Optional.empty();
        }
        HeaderTable table = tables.get(0);
        List<Column> columns = types(table.heads());
        List<List<Passage>> more = new ArrayList<>();
        int after = columns.size() == first.cells().size() ? goesOn(rows, end, first.cells(), columns, more) : end;
        return Optional.of(new Found(table, columns, more, end, after));
    }

    /** Rows at the top of the next column that stand under heads which stayed in the last; the row after them. */
    private static int goesOn(
            List<Row> rows, int end, List<Cell> heads, List<Column> columns, List<List<Passage>> more) {
        if (end == 0 || end >= rows.size()) {
            return end;
        }
        Row above = rows.get(end - 1);
        Row first = rows.get(end);
        boolean jumped = first.page() != above.page() || first.top() < above.top();
        double shift = first.first().left() - heads.get(0).left();
        if (!jumped || Math.abs(shift) < SHIFTED || first.cells().size() < 2) {
            return end;
        }
        int at = end;
        while (at < rows.size()
                && rows.get(at).page() == first.page()
                && rows.get(at).top() >= first.top()) {
            Row row = rows.get(at);
            boolean fits = row.cells().stream().allMatch(cell -> under(heads, cell, shift) >= 0);
            boolean anchor = fits
                    && under(heads, row.first(), shift) == 0
                    && row.cells().stream()
                            .anyMatch(cell ->
                                    columns.get(under(heads, cell, shift)).isValue()
                                            && NUMBER.matcher(cell.text()).matches());
            boolean follows =
                    fits && !more.isEmpty() && row.cells().size() < heads.size() && !apart(rows.get(at - 1), row);
            boolean goesOn = follows
                    && !row.text().endsWith(":")
                    && (under(heads, row.first(), shift) > 0
                            || !BEGINS.matcher(row.text()).matches());
            if (!anchor && !goesOn) {
                break;
            }
            if (anchor) {
                List<Passage> record = new ArrayList<>();
                heads.forEach(head -> record.add(new Passage.Builder().build()));
                more.add(record);
            }
            List<Passage> record = more.get(more.size() - 1);
            for (Cell cell : row.cells()) {
                int column = under(heads, cell, shift);
                Passage.Builder both = new Passage.Builder();
                both.line(record.get(column)).endLine();
                both.line(Passage.of(row.page(), cell));
                record.set(column, both.build());
            }
            at++;
        }
        return at;
    }

    private static int under(List<Cell> heads, Cell cell, double shift) {
        for (int i = 0; i < heads.size(); i++) {
            if (Math.abs(heads.get(i).left() + shift - cell.left()) < ALIGNED) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Whether the cells of a table are running text, as where directions stand in columns: every column then reads on its own.
     * Its lines come column by column.
     */
    static Optional<List<List<Row>>> prose(Found found, List<Row> rows, int start) {
        List<Cell> columns = rows.get(start).cells();
        List<List<Row>> sides = new ArrayList<>();
        columns.forEach(column -> sides.add(new ArrayList<>()));
        for (Row row : rows.subList(start, found.end())) {
            for (Cell cell : row.cells()) {
                sides.get(column(columns, cell)).add(new Row(row.page(), List.of(cell)));
            }
        }
        for (int i = 0; i < columns.size() && i < found.columns().size(); i++) {
            boolean rate = found.columns().get(i) == Column.RATE;
            List<Row> side = sides.get(i);
            long words =
                    side.stream().mapToLong(row -> row.first().words().size()).sum();
            long values = side.stream()
                    .filter(row -> VALUE.matcher(row.text()).matches())
                    .count();
            if (rate
                    && side.size() >= FEWEST_LINES
                    && words >= (long) WORDY * side.size()
                    && 3 * values < side.size()) {
                return Optional.of(sides);
            }
        }
        return Optional.empty();
    }

    private static boolean looksLikeHeads(Row row) {
        return row.cells().stream()
                .allMatch(cell -> cell.text().length() <= LONGEST_HEAD
                        && !SENTENCE.matcher(cell.text().replaceAll("(?i)\\b(?:max|min|no|oz|fl|appl?)\\.", ""))
                                .matches());
    }

    /** Heads with the lines that stand close under them and hold no value. */
    private static List<String> heads(List<Row> rows, int start, List<Cell> columns) {
        List<StringBuilder> heads = new ArrayList<>();
        columns.forEach(cell -> heads.add(new StringBuilder(cell.text())));
        for (int i = start + 1; i < Math.min(rows.size(), start + DEEPEST_HEAD); i++) {
            Row row = rows.get(i);
            Row above = rows.get(i - 1);
            boolean close =
                    row.page() == above.page() && row.top() - above.top() < CLOSE * (above.bottom() - above.top());
            boolean values = row.cells().stream()
                    .skip(1)
                    .anyMatch(cell -> VALUE.matcher(cell.text()).matches());
            if (!close || values || row.cells().size() > columns.size()) {
                break;
            }
            row.cells()
                    .forEach(
                            cell -> heads.get(column(columns, cell)).append(' ').append(cell.text()));
        }
        return heads.stream().map(StringBuilder::toString).toList();
    }

    private static List<Column> types(List<String> heads) {
        return heads.stream().map(head -> Column.of(head).orElse(Column.OTHER)).toList();
    }

    private static boolean isAnchor(List<Row> part, Row row, List<Cell> columns, List<Column> typed) {
        int at = part.indexOf(row);
        for (Cell cell : row.cells()) {
            int column = column(columns, cell);
            if (typed.get(column).isValue()
                    && !cell.text().startsWith("(")
                    && VALUE.matcher(cell.text()).matches()
                    && !goesOn(part, at, column, columns)) {
                return true;
            }
        }
        return false;
    }

    private static boolean goesOn(List<Row> part, int at, int column, List<Cell> columns) {
        return at > 1
                && part.get(at - 1).cells().stream()
                        .anyMatch(cell -> column(columns, cell) == column
                                && GOES_ON.matcher(cell.text()).matches());
    }

    private static boolean apart(Row above, Row row) {
        return row.page() == above.page() && row.top() - above.top() > PARTED * (above.bottom() - above.top());
    }

    /** A short value at the end of a line where a column begins, too near to the words before it to stand in a cell of its own. */
    private static boolean endsInValue(Cell cell, List<Cell> columns) {
        List<Word> words = cell.words();
        for (int i = Math.max(1, words.size() - LONGEST_VALUE); i < words.size(); i++) {
            Word word = words.get(i);
            boolean begins = columns.stream()
                    .skip(1)
                    .anyMatch(column -> Math.abs(column.left() - word.box().left()) < 4);
            String rest = String.join(
                    " ", words.subList(i, words.size()).stream().map(Word::text).toList());
            if (begins && MEASURED.matcher(rest).matches() && words.size() > LONGEST_VALUE) {
                return true;
            }
        }
        return false;
    }

    /** Whether a value stands close under a line that ends with a colon, as under "Water bodies:". */
    private static boolean goesOnBelow(List<Row> rows, int at, List<Cell> columns) {
        Row row = rows.get(at);
        for (int next = at + 1; next < Math.min(rows.size(), at + 3); next++) {
            Row below = rows.get(next);
            Row above = rows.get(next - 1);
            if (below.page() != row.page() || below.top() < above.top() || apart(above, below)) {
                return false;
            }
            boolean value = below.cells().size() > 1
                    ? below.cells().stream()
                            .skip(1)
                            .anyMatch(cell -> NUMBER.matcher(cell.text()).matches())
                    : endsInValue(below.first(), columns);
            if (value && column(columns, below.first()) == 0) {
                return true;
            }
        }
        return false;
    }

    private static int end(List<Row> rows, int start, List<Cell> columns) {
        double from = columns.get(0).left();
        double step = columns.get(1).left() - from;
        int end = start + 1;
        while (end < rows.size()) {
            Row row = rows.get(end);
            Row above = rows.get(end - 1);
            boolean far = row.page() == above.page()
                    && (row.top() - above.top() > APART * (above.bottom() - above.top()) || row.top() < above.top());
            boolean across = row.cells().size() == 1
                    && row.first().left() < from + step / 2
                    && row.first().box().width() > WIDE * step
                    && !endsInValue(row.first(), columns);
            boolean outside = row.cells().stream().anyMatch(cell -> cell.left() < from - step / 2);
            boolean atLeft = row.cells().size() == 1 && Math.abs(row.first().left() - from) < step / 4;
            boolean leadsIn = row.text().endsWith(":") && goesOnBelow(rows, end, columns);
            boolean goesOn = UNFINISHED.matcher(above.first().text()).matches()
                    || (row.text().endsWith(".") && !BEGINS.matcher(row.text()).matches());
            boolean trails = atLeft
                    && ((row.text().endsWith(":") && !leadsIn)
                            || (row.text().endsWith(".") && !goesOn)
                            || (apart(above, row) && !leadsIn));
            boolean heading =
                    row.cells().size() == 1 && (Topics.of(row.text()).isPresent() || Prose.isShout(row.text()));
            boolean note = end - start <= 2 && NOTE.matcher(row.text()).matches();
            if (!note && (far || trails || across || outside || heading)) {
                break;
            }
            end++;
        }
        return end;
    }

    /** The column under whose head a cell stands: nearest by left end, middle or right end. */
    static int column(List<Cell> columns, Cell cell) {
        int best = 0;
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i < columns.size(); i++) {
            Cell head = columns.get(i);
            double middle = Math.abs(head.box().left() + head.box().right() - cell.left() - cell.right()) / 2;
            double distance = Math.min(
                    Math.min(Math.abs(head.left() - cell.left()), Math.abs(head.right() - cell.right())), middle);
            if (distance < nearest) {
                nearest = distance;
                best = i;
            }
        }
        return best;
    }

    /** "Water bodies:" in the first column and nothing beside it. */
    private static boolean leadsIn(List<Passage> record) {
        return record.get(0).text().endsWith(":") && record.stream().skip(1).allMatch(Passage::isEmpty);
    }

    /** A table's cells, with what stands for the rows below written into each. */
    static List<List<Passage>> records(Found found) {
        List<List<Passage>> filled = new ArrayList<>();
        List<Passage> lead = List.of();
        List<List<Passage>> records = new ArrayList<>(found.table().records());
        records.addAll(found.more());
        for (List<Passage> record : records) {
            if (leadsIn(record)) {
                lead = record;
                continue;
            }
            List<Passage> cells = new ArrayList<>(record);
            if (!lead.isEmpty()) {
                Passage.Builder both = new Passage.Builder();
                both.line(lead.get(0)).endLine();
                both.line(cells.get(0));
                cells.set(0, both.build());
                lead = List.of();
            }
            for (int i = 0; i < cells.size(); i++) {
                boolean stands =
                        found.columns().get(i) == Column.CROP || found.columns().get(i) == Column.TEXTURE;
                if (stands && cells.get(i).isEmpty() && !filled.isEmpty()) {
                    cells.set(i, filled.get(filled.size() - 1).get(i));
                }
            }
            filled.add(cells);
        }
        return filled;
    }
}
