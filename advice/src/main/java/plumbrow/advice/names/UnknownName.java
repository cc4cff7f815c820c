package plumbrow.advice.names;

/**
 * A name in a season that refers to nothing there, so that its row would count as nothing.
 *
 * @param sheet the sheet of the workbook on which it stands
 * @param row as a spreadsheet counts the rows of that sheet, the header being row 1
 * @param column its name
 * @param found what stands there
 * @param expected what would be right, in words that follow "expected", with the nearest known name where there is one
 * @param field the field that the row is of; empty where it is of none
 * @param product the product that the row is of; empty where it is of none
 */
public record UnknownName(
        String sheet, int row, String column, String found, String expected, String field, String product) {

    /** In one sentence, as a workbook is told of it: where, what was found, what is expected. */
    public String sentence() {
        return sheet + ", row " + row + ", column " + column + ": found \"" + found + "\", expected " + expected
                + (expected.endsWith("?") ? "" : ".");
    }
}
