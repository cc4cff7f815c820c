package plumbrow.documents.sheet;

/** How a substance gets into or onto a person. */
public enum Route {
    SWALLOWED("swallowed"),
    SKIN("skin"),
    EYES("eyes"),
    INHALED("inhaled"),
    UNSAID("route not said");

    private final String word;

    Route(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
