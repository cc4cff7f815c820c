package plumbrow.documents.workbook.form;

import java.util.List;

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

    /** A row of cells and its number as a spreadsheet counts: the header is row 1. */
    public record Line(int number, List<Cell> cells) {
        public Line {
            cells = List.copyOf(cells);
        }

        public Cell cell(int index) {
            return index >= 0 && index < cells.size() ? cells.get(index) : Cell.BLANK;
        }
    }
}
