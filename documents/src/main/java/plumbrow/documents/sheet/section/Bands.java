package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.paper.Cell;
import plumbrow.documents.paper.Row;
import plumbrow.documents.paper.Word;

/**
 * Where the columns of a table end, told from the cells that stand in one column alone; by it cells are parted that run into each
 * other for want of room between them.
 */
final class Bands {
    private static final double NEAR = 7;
    private static final double EPSILON = 2;

    private final List<Cell> columns;
    private final double[] ends;

    private Bands(List<Cell> columns, double[] ends) {
        this.columns = columns;
        this.ends = ends;
    }

    static Bands of(List<Row> rows, List<Cell> columns) {
        double[] left = columns.stream().mapToDouble(Cell::left).toArray();
        double[] right = columns.stream().mapToDouble(Cell::right).toArray();
        for (Row row : rows) {
            for (Cell cell : row.cells()) {
                int column = HeaderTable.column(columns, cell);
                if (row.cells().size() > 1 && alone(cell, column, columns)) {
                    left[column] = Math.min(left[column], cell.left());
                    right[column] = Math.max(right[column], cell.right());
                }
            }
        }
        double[] ends = new double[columns.size()];
        for (int i = 0; i + 1 < ends.length; i++) {
            ends[i] = right[i] < left[i + 1] + NEAR ? (right[i] + left[i + 1]) / 2 : Double.NaN;
        }
        return new Bands(columns, ends);
    }

    private static boolean alone(Cell cell, int column, List<Cell> columns) {
        for (int i = 0; i < columns.size(); i++) {
            if (i != column
                    && cell.left() < columns.get(i).right() - EPSILON
                    && cell.right() > columns.get(i).left() + EPSILON) {
                return false;
            }
        }
        return true;
    }

    /** The row with each cell parted where a column ends in it, if a blank stands there. */
    Row parted(Row row) {
        if (row.cells().size() < 2) {
            return row;
        }
        List<Cell> cells = new ArrayList<>();
        row.cells().forEach(cell -> part(cell, cells));
        return new Row(row.page(), cells);
    }

    private void part(Cell cell, List<Cell> into) {
        for (int i = 0; i + 1 < ends.length; i++) {
            if (!(cell.left() < ends[i] - EPSILON && cell.right() > ends[i] + EPSILON)) {
                continue;
            }
            List<Word> words = cell.words();
            int at = -1;
            double widest = 0;
            for (int k = 1; k < words.size(); k++) {
                double before = words.get(k - 1).box().right();
                double behind = words.get(k).box().left();
                if (Math.abs((before + behind) / 2 - ends[i]) < NEAR && behind - before > widest) {
                    widest = behind - before;
                    at = k;
                }
            }
            if (at > 0) {
                Cell before = new Cell(words.subList(0, at));
                Cell behind = new Cell(words.subList(at, words.size()));
                if (HeaderTable.column(columns, before) != HeaderTable.column(columns, behind)) {
                    into.add(before);
                    part(behind, into);
                    return;
                }
            }
        }
        into.add(cell);
    }
}
