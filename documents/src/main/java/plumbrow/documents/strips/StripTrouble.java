package plumbrow.documents.strips;

/** A harvest file that can't be taken in; the message is a sentence for the person. */
public final class StripTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    public StripTrouble(String sentence) {
        super(sentence, null, false, false);
    }

    static StripTrouble line(int line, String found, String expected) {
        String shown = found.length() > 60 ? found.substring(0, 57) + "…" : found;
        return new StripTrouble("Line " + line + " has '" + shown + "'; expected " + expected + ".");
    }
}
