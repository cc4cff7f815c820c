package plumbrow.documents.paper;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One line of a page or of a column: its cells from left to right, at least one.
 *
 * @param page number of the page, from 1
 */
public record Row(int page, List<Cell> cells) {

    public Row {
        if (cells.isEmpty()) {
            throw new IllegalArgumentException("a row without a cell");
        }
        cells = List.copyOf(cells);
    }

    public String text() {
        return cells.stream().map(Cell::text).collect(Collectors.joining("  "));
    }

    public Cell first() {
        return cells.get(0);
    }

    public double top() {
        return cells.stream().mapToDouble(cell -> cell.box().top()).min().orElseThrow();
    }

    public double bottom() {
        return cells.stream().mapToDouble(cell -> cell.box().bottom()).max().orElseThrow();
    }
}
