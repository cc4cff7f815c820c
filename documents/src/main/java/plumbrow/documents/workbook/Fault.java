package plumbrow.documents.workbook;

/**
 * One thing that is wrong with a workbook, and where.
 *
 * @param sheet the sheet, the CSV file, or the workbook's file where the fault is of the whole file
 * @param row as a spreadsheet counts, the header being row 1; 0 for the whole sheet
 * @param column name of the column; empty for the whole row
 * @param found what stands there; empty for nothing
 * @param expected what would be right, in words that follow "expected"
 */
public record Fault(String sheet, int row, String column, String found, String expected) {
    private static final int LONGEST_FOUND = 60;

    /** The fault in one sentence: where, what was found, what would be right. */
    public String sentence() {
        String place = sheet + (row > 0 ? ", row " + row : "") + (column.isEmpty() ? "" : ", column " + column);
        return place + ": " + words();
    }

    /** The fault as it stands beside its cell: what was found, what would be right. */
    public String words() {
        String end = expected.endsWith("?") ? "" : ".";
        return (found.isEmpty() ? "nothing there" : "found " + quoted()) + ", expected " + expected + end;
    }

    private String quoted() {
        String oneLine = found.replaceAll("\\s+", " ");
        return oneLine.length() <= LONGEST_FOUND
                ? "\"" + oneLine + "\""
                : "\"" + oneLine.substring(0, LONGEST_FOUND) + "…\"";
    }
}
