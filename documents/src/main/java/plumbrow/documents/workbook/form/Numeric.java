package plumbrow.documents.workbook.form;

import java.util.regex.Pattern;

/** Reads the number in a cell, and says what is wrong where a person would know: a decimal comma, a unit, text. */
final class Numeric {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?[\\d,]*,\\d+(\\.\\d+)?");
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?\\d{1,3}(,\\d{3})+(\\.\\d+)?");

    private Numeric() {}

    static double read(Cell cell, String words) throws Misread {
        if (cell instanceof Cell.Numeral numeral) {
            if (numeral.percent()) {
                throw new Misread(words + ", in a cell without the % format");
            }
            return numeral.value();
        }
        if (cell instanceof Cell.Broken broken) {
            throw new Misread(broken.expected());
        }
        String text = cell.found();
        if (cell instanceof Cell.Written && NUMBER.matcher(text).matches()) {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        }
        throw new Misread(words + advice(cell, text));
    }

    private static String advice(Cell cell, String text) {
        if (THOUSANDS.matcher(text).matches()) {
            return ", without a comma: " + text.replace(",", "");
        }
        if (WITH_COMMA.matcher(text).matches()) {
            return ", with a point and not a comma: " + text.replace(',', '.');
        }
        if (cell instanceof Cell.Text && NUMBER.matcher(text).matches()) {
            return "; this cell holds text that looks like one, type it again in a cell with a number format";
        }
        if (cell instanceof Cell.Day) {
            return "; the spreadsheet turned this cell into a date, set its format to number and type it again";
        }
        return "";
    }
}
