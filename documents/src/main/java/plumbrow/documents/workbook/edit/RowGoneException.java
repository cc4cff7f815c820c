package plumbrow.documents.workbook.edit;

/** A row that was to be changed is no longer as it was looked at. Its message is one sentence that says what differs. */
public final class RowGoneException extends RuntimeException {
    private static final long serialVersionUID = 1;

    RowGoneException(String sentence) {
        super(sentence);
    }
}
