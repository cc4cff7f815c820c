package plumbrow.documents.workbook.form;

/** Takes down what is wrong with a workbook, and where. */
public interface Objections {
    /**
     * Takes down one objection.
     *
     * @param place the sheet or file as a person finds it
     * @param row as a spreadsheet counts, from 1; 0 for the whole sheet
     * @param column its name; empty for the whole row
     * @param found what stands there; empty for nothing
     * @param expected what would be right, in words that follow "expected"
     */
    void at(String place, int row, String column, String found, String expected);

    /** An objection to one cell of a row. */
    default void at(Row row, Column<?> column, String expected) {
        at(row.place(), row.number(), column.key(), row.found(column), expected);
    }
}
