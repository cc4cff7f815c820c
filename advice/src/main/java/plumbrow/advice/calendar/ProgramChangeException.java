package plumbrow.advice.calendar;

/** A change that can't be made; the message is a sentence for the person at the desk. */
public final class ProgramChangeException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int pass;

    /** @param pass number of the pass it is about; 0 for the program */
    public ProgramChangeException(int pass, String sentence) {
        super(sentence);
        this.pass = pass;
    }

    public int pass() {
        return pass;
    }
}
