package plumbrow.app.book;

/**
 * Somebody else changed what a change was made from, after it was looked at and before the change arrived. Nothing was
 * written; the message says what differs now.
 */
public final class MeanwhileException extends BookException {
    private static final long serialVersionUID = 1L;

    public MeanwhileException(String sentence) {
        super(sentence);
    }
}
