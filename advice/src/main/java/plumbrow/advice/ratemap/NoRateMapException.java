package plumbrow.advice.ratemap;

/** Why no machine file can be made; its message is a sentence for a farmer. */
public final class NoRateMapException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    public NoRateMapException(String sentence) {
        super(sentence);
    }
}
