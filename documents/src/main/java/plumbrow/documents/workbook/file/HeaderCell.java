package plumbrow.documents.workbook.file;

import java.util.List;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.Worksheet;
import plumbrow.documents.workbook.form.CeilingKind;
import plumbrow.documents.workbook.form.Column;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.ListKind;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.Sheet;
import plumbrow.documents.workbook.form.TextKind;
import plumbrow.documents.workbook.form.WholeKind;
import plumbrow.documents.workbook.form.WordKind;

/** A column's name in the first row of a spreadsheet, with its note, its drop-down and the look of its cells. */
final class HeaderCell {
    static final String DATE_FORMAT = "yyyy-mm-dd";

    /** Keeps a spreadsheet program from making a date of a name such as 5-4. */
    static final String TEXT_FORMAT = "@";

    private static final String REQUIRED_FILL = "2F5D50";
    private static final String OPTIONAL_FILL = "DCE8E3";
    private static final int LONGEST_LIST = 255;
    private static final double PROSE_WIDTH = 34;
    private static final double NAME_WIDTH = 22;
    private static final double WORD_WIDTH = 15;
    private static final double NUMBER_WIDTH = 10;

    private HeaderCell() {}

    static void write(Worksheet sheet, int index, Column<?> column) {
        sheet.value(0, index, column.key());
        sheet.style(0, index)
                .bold()
                .fillColor(column.required() ? REQUIRED_FILL : OPTIONAL_FILL)
                .fontColor(column.required() ? "FFFFFF" : "1D3B33")
                .horizontalAlignment(numeric(column) ? "right" : "left")
                .set();
        sheet.comment(0, index, Note.of(column));
        sheet.width(index, Math.max(width(column), column.key().length() + 2));
        format(sheet, index, column);
        dropDown(sheet, index, column);
    }

    private static boolean numeric(Column<?> column) {
        return column.kind() instanceof NumberKind
                || column.kind() instanceof WholeKind
                || column.kind() instanceof CeilingKind;
    }

    private static double width(Column<?> column) {
        if (numeric(column) || column.kind() instanceof DateKind) {
            return NUMBER_WIDTH;
        }
        if (column.kind() instanceof TextKind text) {
            return text.lines() ? PROSE_WIDTH : NAME_WIDTH;
        }
        return column.kind().choices().isEmpty() ? NAME_WIDTH : WORD_WIDTH;
    }

    private static void format(Worksheet sheet, int index, Column<?> column) {
        if (column.kind() instanceof DateKind) {
            sheet.style(index).format(DATE_FORMAT).set();
        } else if (!numeric(column)) {
            sheet.style(index).format(TEXT_FORMAT).set();
        }
    }

    private static void dropDown(Worksheet sheet, int index, Column<?> column) {
        Column.Reference reference = column.reference();
        List<String> choices = column.kind().choices();
        String list;
        if (reference != null && !(column.kind() instanceof ListKind)) {
            list = range(reference);
        } else if (!choices.isEmpty() && String.join(",", choices).length() <= LONGEST_LIST) {
            list = "\"" + String.join(",", choices) + "\"";
        } else {
            return;
        }
        // Units have other spellings that are read too, and a name may be added to its own sheet afterwards.
        boolean strict = reference == null && column.kind() instanceof WordKind;
        sheet.range(1, index, Sheet.MOST_ROWS, index)
                .validateWithListByFormula(list)
                .allowBlank(true)
                .errorStyle(strict ? DataValidationErrorStyle.STOP : DataValidationErrorStyle.WARNING)
                .showErrorMessage(true)
                .errorTitle(column.key())
                .error("Expected " + shortened(column.kind().words()) + ".");
    }

    private static String range(Column.Reference reference) {
        int index = reference.sheet().columns().indexOf(reference.column());
        char letter = (char) ('A' + index);
        return reference.sheet().name() + "!$" + letter + "$2:$" + letter + "$" + (Sheet.MOST_ROWS + 1);
    }

    private static String shortened(String words) {
        return words.length() <= 200 ? words : words.substring(0, 200) + "…";
    }
}
