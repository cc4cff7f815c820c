package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.paper.Box;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Row;

/**
 * Straightens tables of two columns whose labels stand in the middle of their row's height: the first line of the label
 * beside the first line of the value, as if both had been printed from the top.
 *
 * Lines that stand close to each other in a column are one block; a label's block and a value's block with the same middle
 * belong together.
 */
final class Centred {
    private static final double CLOSE = 1.45;
    private static final double SAME_LEFT = 4;
    private static final double SAME_MIDDLE = 3.5;
    private static final double APART = 36;
    private static final int MOST_LABEL_LINES = 4;

    private Centred() {}

    /** A cell and the row it stands in. */
    private record Line(int row, int page, Cell cell) {
        Box box() {
            return cell.box();
        }
    }

    static List<Row> straightened(List<Row> rows) {
        double left = rows.stream().mapToDouble(row -> row.first().left()).min().orElse(0);
        double values = valueLeft(rows, left);
        if (Double.isNaN(values)) {
            return rows;
        }
        List<Line> labels = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            Cell last = row.cells().get(row.cells().size() - 1);
            if (row.cells().size() <= 2 && Math.abs(last.left() - values) <= SAME_LEFT) {
                lines.add(new Line(i, row.page(), last));
            }
            boolean besideValue = row.cells().size() == 1 || Math.abs(last.left() - values) <= SAME_LEFT;
            if (Math.abs(row.first().left() - left) <= SAME_LEFT
                    && besideValue
                    && row.first().right() < values) {
                labels.add(new Line(i, row.page(), row.first()));
            }
        }
        Set<Integer> labelled = labels.stream().map(Line::row).collect(Collectors.toSet());
        return rebuilt(rows, blocks(labels), blocks(lines), labelled);
    }

    /** Where most second cells begin, or lines that stand well in from the left. */
    private static double valueLeft(List<Row> rows, double left) {
        TreeMap<Long, Integer> counts = new TreeMap<>();
        for (Row row : rows) {
            Cell last = row.cells().get(row.cells().size() - 1);
            if (row.cells().size() <= 2 && last.left() > left + APART) {
                counts.merge(Math.round(last.left()), 1, Integer::sum);
            }
        }
        return counts.entrySet().stream()
                .filter(entry -> entry.getValue() > 1)
                .max(Comparator.comparingInt(Map.Entry::getValue))
                .map(entry -> (double) entry.getKey())
                .orElse(Double.NaN);
    }

    private static List<List<Line>> blocks(List<Line> lines) {
        List<List<Line>> blocks = new ArrayList<>();
        for (Line line : lines) {
            List<Line> last = blocks.isEmpty() ? List.of() : blocks.get(blocks.size() - 1);
            Line before = last.isEmpty() ? null : last.get(last.size() - 1);
            boolean close = before != null
                    && before.page == line.page
                    && line.box().top() > before.box().top()
                    && line.box().top() - before.box().top()
                            < CLOSE * line.box().height();
            if (close) {
                last.add(line);
            } else {
                blocks.add(new ArrayList<>(List.of(line)));
            }
        }
        return blocks;
    }

    private static List<Row> rebuilt(
            List<Row> rows, List<List<Line>> labels, List<List<Line>> values, Set<Integer> labelled) {
        List<@Nullable Row> straight = new ArrayList<>(rows);
        for (List<Line> label : labels) {
            for (List<Line> value : values) {
                if (belong(label, value)
                        && label.get(0).row != value.get(0).row
                        && !othersWithin(label, value, labelled)) {
                    pair(straight, label, value);
                }
            }
        }
        List<Row> kept = new ArrayList<>();
        for (Row row : straight) {
            if (row != null) {
                kept.add(row);
            }
        }
        return kept;
    }

    private static boolean belong(List<Line> label, List<Line> value) {
        return label.get(0).page == value.get(0).page
                && label.size() <= MOST_LABEL_LINES
                && Math.abs(middle(label) - middle(value)) <= SAME_MIDDLE;
    }

    /** Whether lines of the value's block have labels of their own: then the block is many values, closely set. */
    private static boolean othersWithin(List<Line> label, List<Line> value, Set<Integer> labelled) {
        return value.stream()
                .anyMatch(line -> labelled.contains(line.row) && label.stream().noneMatch(own -> own.row == line.row));
    }

    private static double middle(List<Line> block) {
        return (block.get(0).box().top() + block.get(block.size() - 1).box().bottom()) / 2;
    }

    /** Puts the lines of both, pair by pair, where the rows of both have been. */
    private static void pair(List<@Nullable Row> rows, List<Line> label, List<Line> value) {
        List<Integer> taken = IntStream.concat(
                        label.stream().mapToInt(Line::row), value.stream().mapToInt(Line::row))
                .distinct()
                .sorted()
                .boxed()
                .toList();
        taken.forEach(row -> rows.set(row, null));
        int lines = Math.max(label.size(), value.size());
        for (int i = 0; i < lines; i++) {
            List<Cell> cells = new ArrayList<>();
            if (i < label.size()) {
                cells.add(label.get(i).cell);
            }
            if (i < value.size()) {
                cells.add(value.get(i).cell);
            }
            rows.set(taken.get(i), new Row(label.get(0).page, cells));
        }
    }
}
