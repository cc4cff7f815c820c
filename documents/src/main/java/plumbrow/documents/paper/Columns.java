package plumbrow.documents.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Tells a page printed in two columns from a table, and puts the columns one after the other.
 *
 * Both show a gutter that no cell crosses. It parts columns of text where a landmark, such as the heading of a section,
 * begins right of it on some page, or where both sides are running text that fills its column. Anything else is a table,
 * and stays row by row.
 */
final class Columns {
    private static final double SAME_LEFT = 2.5;
    private static final int FEWEST_ROWS = 4;
    private static final int ENOUGH_PROSE = 8;
    private static final double FULL = .72;
    private static final double MOSTLY = .6;
    private static final double BALANCE = .8;
    private static final double NARROWEST_SHARE = .33;

    private final Predicate<String> landmark;
    private final List<Double> gutters = new ArrayList<>();

    /**
     * Looks for gutters on all pages, whose rows stand from top to bottom.
     *
     * @param landmark whether a line of text can only begin a column's own matter
     */
    Columns(List<List<Row>> pages, Predicate<String> landmark) {
        this.landmark = landmark;
        for (List<Row> page : pages) {
            for (double left : candidates(page)) {
                if (gutters.stream().noneMatch(gutter -> Math.abs(gutter - left) <= SAME_LEFT)
                        && runs(page, left).stream().anyMatch(run -> parts(run, left))) {
                    gutters.add(left);
                }
            }
        }
    }

    /** The page in reading order. */
    List<Row> inOrder(List<Row> page) {
        for (double left : gutters) {
            List<List<Row>> runs = runs(page, left);
            if (!runs.isEmpty()) {
                return split(page, runs, left);
            }
        }
        return page;
    }

    private static List<Row> split(List<Row> page, List<List<Row>> runs, double left) {
        List<Row> ordered = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < page.size(); i++) {
            if (next < runs.size() && page.get(i).equals(runs.get(next).get(0))) {
                List<Row> run = runs.get(next++);
                run.forEach(row -> side(row, left, false, ordered));
                run.forEach(row -> side(row, left, true, ordered));
                i += run.size() - 1;
            } else {
                ordered.add(page.get(i));
            }
        }
        return ordered;
    }

    private static void side(Row row, double left, boolean right, List<Row> ordered) {
        List<Cell> cells = row.cells().stream()
                .filter(cell -> cell.left() >= left - SAME_LEFT == right)
                .toList();
        if (!cells.isEmpty()) {
            ordered.add(new Row(row.page(), cells));
        }
    }

    /** Lefts in the middle of the page at which several cells begin. */
    private static List<Double> candidates(List<Row> page) {
        double from = page.stream().mapToDouble(row -> row.first().left()).min().orElse(0);
        double to = page.stream()
                .flatMap(row -> row.cells().stream())
                .mapToDouble(Cell::right)
                .max()
                .orElse(0);
        double margin = NARROWEST_SHARE * (to - from);
        List<Double> lefts = page.stream()
                .flatMap(row -> row.cells().stream())
                .map(Cell::left)
                .filter(left -> left > from + margin && left < to - margin)
                .sorted(Comparator.naturalOrder())
                .toList();
        List<Double> candidates = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= lefts.size(); i++) {
            if (i == lefts.size() || lefts.get(i) - lefts.get(start) > SAME_LEFT) {
                if (i - start >= FEWEST_ROWS) {
                    candidates.add(lefts.get(start));
                }
                start = i;
            }
        }
        return candidates;
    }

    /** Stretches of rows that no cell carries over the gutter. */
    private static List<List<Row>> runs(List<Row> page, double left) {
        List<List<Row>> runs = new ArrayList<>();
        List<Row> run = new ArrayList<>();
        for (Row row : page) {
            boolean crossed = row.cells().stream()
                    .anyMatch(cell -> cell.left() < left - SAME_LEFT && cell.right() > left - SAME_LEFT);
            if (crossed) {
                close(run, left, runs);
                run = new ArrayList<>();
            } else {
                run.add(row);
            }
        }
        close(run, left, runs);
        return runs;
    }

    private static void close(List<Row> run, double left, List<List<Row>> runs) {
        long right = run.stream().filter(row -> begins(row, left)).count();
        if (right >= FEWEST_ROWS) {
            runs.add(run);
        }
    }

    private static boolean begins(Row row, double left) {
        return row.cells().stream().anyMatch(cell -> Math.abs(cell.left() - left) <= SAME_LEFT);
    }

    private boolean parts(List<Row> run, double left) {
        List<Row> lefts = new ArrayList<>();
        List<Row> rights = new ArrayList<>();
        run.forEach(row -> side(row, left, false, lefts));
        run.forEach(row -> side(row, left, true, rights));
        return rights.stream()
                        .anyMatch(row -> Math.abs(row.first().left() - left) <= SAME_LEFT && landmark.test(row.text()))
                || (balanced(lefts, rights) && prose(lefts) && prose(rights));
    }

    /** Labels of a table stand wider apart than the lines of their values. */
    private static boolean balanced(List<Row> lefts, List<Row> rights) {
        return Math.min(lefts.size(), rights.size()) > BALANCE * Math.max(lefts.size(), rights.size());
    }

    private static boolean prose(List<Row> side) {
        if (side.size() < ENOUGH_PROSE) {
            return false;
        }
        double from = side.stream().mapToDouble(row -> row.first().left()).min().orElse(0);
        double to = side.stream()
                .mapToDouble(row -> row.cells().get(row.cells().size() - 1).right())
                .max()
                .orElse(0);
        long full = side.stream()
                .filter(row -> row.cells().size() == 1 && row.first().box().width() > FULL * (to - from))
                .count();
        return full > MOSTLY * side.size();
    }
}
