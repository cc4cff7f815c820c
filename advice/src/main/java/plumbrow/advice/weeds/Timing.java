package plumbrow.advice.weeds;

/** Where a herbicide meets a weed. */
public enum Timing {
    /** In the soil, before the weed is up. */
    SOIL("soil"),
    /** On the leaves of what is up. */
    LEAF("leaf");

    private final String word;

    Timing(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
