package plumbrow.documents.workbook.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One sheet of a file as it was found: cells in rows, before anyone knows what they mean.
 *
 * @param name the sheet's name, or the CSV file's name without its ending
 * @param place the sheet or file as a person finds it
 * @param header the cells of the first row
 * @param rows the rows below it that are not blank
 */
public record Grid(String name, String place, List<Cell> header, List<Line> rows) {
    public Grid {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * A row of cells.
     *
     * @param number as a spreadsheet counts: the header is row 1
     * @param from where a person finds it, if that is not the sheet itself
     */
    public record Line(
            int number, List<Cell> cells, @Nullable String from) {
        public Line {
            cells = List.copyOf(cells);
        }

        /** A row that stands on the sheet itself. */
        public Line(int number, List<Cell> cells) {
            this(number, cells, null);
        }

        /** The sheet or file in which a person finds it. */
        public String place(Grid grid) {
            return from == null ? grid.place() : from;
        }

        public Cell cell(int index) {
            return index >= 0 && index < cells.size() ? cells.get(index) : Cell.BLANK;
        }
    }
}
