package plumbrow.advice.shelf;

/** What a product on the shelf is. */
public enum ProductKind {
    SEED("seed"),
    SEED_TREATMENT("seed treatment"),
    INSECTICIDE("insecticide"),
    HERBICIDE("herbicide"),
    FUNGICIDE("fungicide"),
    ADJUVANT("adjuvant");

    private final String word;

    ProductKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether a pesticide label rules its use; adjuvants and plain seed have none. */
    public boolean underLabel() {
        return this == SEED_TREATMENT || this == INSECTICIDE || this == HERBICIDE || this == FUNGICIDE;
    }
}
