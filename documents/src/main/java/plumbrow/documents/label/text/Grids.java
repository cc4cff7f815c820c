package plumbrow.documents.label.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Row;
import plumbrow.documents.sheet.section.HeaderTable;

/** Finds tables whose heads say what they hold, and where they end. */
final class Grids {
    private static final int DEEPEST_HEAD = 4;
    private static final double CLOSE = 1.6;
    private static final double APART = 4;
    private static final double PARTED = 1.4;
    private static final double WIDE = 1.2;
    private static final int LONGEST_HEAD = 45;
    private static final Pattern VALUE = Pattern.compile(
            "(?i)^\\W{0,3}(?:up to |at least |not? |less than )?(?:\\d|\\.\\d|[½¼¾⅓⅔⅛⅜⅝⅞]|(?:one|two|three|four)\\b|none\\b|any ?time|immediately|do not\\b|not\\b|n/?a\\b|[-–—]+$|see\\b).*");
    private static final Pattern GOES_ON = Pattern.compile("(?i).*(?:\\bto|\\bor|[-–,])$");
    private static final Pattern SENTENCE = Pattern.compile(".*[.;]");

    private Grids() {}

    /** A table and the row after its last. */
    record Found(HeaderTable table, List<Column> columns, int end) {}

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
        return Optional.of(new Found(table, types(table.heads()), end));
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
                    && row.first().box().width() > WIDE * step;
            boolean outside = row.cells().stream().anyMatch(cell -> cell.left() < from - step / 2);
            boolean trails = row.cells().size() == 1
                    && Math.abs(row.first().left() - from) < step / 4
                    && (row.text().endsWith(":") || row.text().endsWith(".") || apart(above, row));
            boolean heading =
                    row.cells().size() == 1 && (Topics.of(row.text()).isPresent() || Prose.isShout(row.text()));
            if (far || trails || across || outside || heading) {
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

    /** A table's cells, with what stands for the rows below written into each. */
    static List<List<Passage>> records(Found found) {
        List<List<Passage>> filled = new ArrayList<>();
        for (List<Passage> record : found.table().records()) {
            List<Passage> cells = new ArrayList<>(record);
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
