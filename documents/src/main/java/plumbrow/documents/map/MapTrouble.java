package plumbrow.documents.map;

/** A map file that can't be taken in; the message is a sentence for the person at the desk. */
public final class MapTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    public MapTrouble(String sentence) {
        super(sentence, null, false, false);
    }
}
