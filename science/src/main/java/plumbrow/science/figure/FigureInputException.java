package plumbrow.science.figure;

/** A figure was asked with an input it can't use. The message is one sentence for the person who typed it. */
public final class FigureInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String key;

    public FigureInputException(String key, String message) {
        super(message);
        this.key = key;
    }

    /** The input at fault, or an empty text where the fault is of the inputs together. */
    public String key() {
        return key;
    }
}
