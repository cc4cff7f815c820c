package plumbrow.documents.confirm;

/** Something typed that can't be what the label says; the message is one sentence for whoever typed it. */
public final class NotSoException extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NotSoException(String sentence) {
        super(sentence);
    }
}
