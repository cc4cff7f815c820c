package plumbrow.documents.paper;

/** A file that can't be read as paper. The message is one sentence for the person who gave it. */
public final class PaperTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    public PaperTrouble(String sentence) {
        super(sentence);
    }

    public PaperTrouble(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
