package plumbrow.documents.workbook.file;

/** Counts the filled cells of a whole workbook down. */
final class CellBudget {
    private int left = Limits.CELLS;

    /** Takes one; false where none is left. */
    boolean take() {
        return --left >= 0;
    }
}
