package plumbrow.documents.label;

/** From where a product is put out, as far as a statement says. */
public enum Way {
    GROUND("by ground"),
    AIR("by air"),
    ANY("");

    private final String word;

    Way(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
