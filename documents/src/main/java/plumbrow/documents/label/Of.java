package plumbrow.documents.label;

/** What pounds or ounces are counted of. */
public enum Of {
    PRODUCT("product"),
    ACTIVE("active ingredient"),
    ACID("acid equivalent"),
    /** An ingredient is named, but not whether its acid or its salt is meant. */
    UNSAID("basis not said");

    private final String word;

    Of(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
