package plumbrow.advice.weighing;

/** A season lacks what the weighing needs. The message is one sentence that says what, for which field, and where. */
public final class SeasonGapException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public SeasonGapException(String sentence) {
        super(sentence);
    }
}
