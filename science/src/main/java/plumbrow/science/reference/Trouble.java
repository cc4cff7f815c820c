package plumbrow.science.reference;

/**
 * What is wrong in a file, for the person who keeps it.
 *
 * @param row counted from the header as 1; 0 for the file as a whole
 * @param column empty where the row as a whole is wrong
 */
public record Trouble(String file, int row, String column, String found, String expected) {
    /** "weeds.csv row 12, value: found '-3'; expected 0 or more." */
    public String sentence() {
        return file + (row > 0 ? " row " + row : "") + (column.isEmpty() ? "" : ", " + column) + ": found '" + found
                + "'; expected " + expected + ".";
    }
}
