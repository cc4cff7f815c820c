package plumbrow.app.desk.door;

/** More was asked for than is answered in one go. The message is a sentence for the person at the desk. */
public final class TooManyException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public TooManyException(String sentence) {
        super(sentence);
    }
}
