package plumbrow.app.desk.door;

/** What was asked for is not in the book. The message is a sentence for the person at the desk. */
public final class NotHereException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NotHereException(String sentence) {
        super(sentence);
    }
}
