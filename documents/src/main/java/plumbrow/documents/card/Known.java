package plumbrow.documents.card;

/** How a line of the card is known. */
public enum Known {
    /** Read on a paper of this product. */
    READ("read"),
    /** Kept in the reference data for an ingredient: not of this product. */
    KEPT("reference data"),
    /** Worked out from values read or kept. */
    WORKED("worked out"),
    /** A rule that holds whatever the product. */
    RULE("rule"),
    /** Two things that should agree do not. */
    DIFFERS("differs"),
    /** Nobody has looked it up, or it can't be read: never "none". */
    UNKNOWN("unknown");

    private final String word;

    Known(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
