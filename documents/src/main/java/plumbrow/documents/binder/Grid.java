package plumbrow.documents.binder;

import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/** One sheet filled row by row under a header that stays in sight. Numbers are numbers; what is not known is empty. */
final class Grid {
    /** Most characters that a cell of the file format holds; longer text is cut there and ends in "…". */
    private static final int LONGEST_TEXT = 32_767;

    private final Worksheet sheet;
    private final List<Column> columns;
    private int row;

    Grid(Workbook workbook, String name, List<Column> columns) {
        sheet = workbook.newWorksheet(name);
        this.columns = columns;
        for (int i = 0; i < columns.size(); i++) {
            sheet.value(0, i, columns.get(i).head());
            sheet.style(0, i).bold().wrapText(true).verticalAlignment("bottom").set();
            sheet.width(i, columns.get(i).width());
        }
        sheet.freezePane(0, 1);
    }

    /** Adds a row; one value for each column: text, a number, true or false, or null. */
    Grid row(@Nullable Object... values) {
        if (values.length != columns.size()) {
            throw new IllegalArgumentException(values.length + " values for " + columns.size() + " columns");
        }
        row++;
        for (int i = 0; i < values.length; i++) {
            cell(i, values[i]);
        }
        return this;
    }

    private void cell(int column, @Nullable Object value) {
        if (value instanceof Number number) {
            sheet.value(row, column, number);
            sheet.style(row, column)
                    .format(columns.get(column).format())
                    .verticalAlignment("top")
                    .set();
        } else if (value != null) {
            sheet.value(row, column, fitting(value.toString()));
            sheet.style(row, column).wrapText(true).verticalAlignment("top").set();
        }
    }

    private static String fitting(String text) {
        return text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT - 1) + "…";
    }

    /**
     * A column of a sheet.
     *
     * @param head what stands in it, with its unit
     * @param width in characters
     * @param format number format, for numbers
     */
    record Column(String head, double width, String format) {
        static Column words(String head, double width) {
            return new Column(head, width, "General");
        }

        static Column dollars(String head) {
            return new Column(head, 14, "#,##0.00");
        }

        static Column number(String head, String format) {
            return new Column(head, 14, format);
        }
    }
}
