package plumbrow.documents.machine.log;

/** A file of a machine that can't be read; the message is a sentence for the person at the desk. */
public final class LogTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    public LogTrouble(String sentence) {
        super(sentence, null, false, false);
    }
}
