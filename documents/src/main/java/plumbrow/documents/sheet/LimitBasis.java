package plumbrow.documents.sheet;

/** Over how long an exposure limit counts. */
public enum LimitBasis {
    TWA("TWA"),
    STEL("STEL"),
    CEILING("ceiling"),
    UNSAID("");

    private final String word;

    LimitBasis(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
