package plumbrow.advice.ratemap;

/** Why no machine file can be made; its message is a sentence for a farmer. */
public final class NoRateMapException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private final boolean barred;

    NoRateMapException(String sentence) {
        this(sentence, false);
    }

    NoRateMapException(String sentence, boolean barred) {
        super(sentence);
        this.barred = barred;
    }

    /** Whether label or check bar what was asked for, so that nothing but another plan helps. */
    public boolean barred() {
        return barred;
    }
}
