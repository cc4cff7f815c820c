package plumbrow.advice.field;

/** The crops Plumbrow advises on, with the weight of a US bushel. */
public enum Crop {
    CORN("corn", 56),
    SOYBEAN("soybean", 60),
    WHEAT("wheat", 60);

    private final String word;
    private final double poundsPerBushel;

    Crop(String word, double poundsPerBushel) {
        this.word = word;
        this.poundsPerBushel = poundsPerBushel;
    }

    public String word() {
        return word;
    }

    /** Weight of one US bushel [lb/bu]. */
    public double poundsPerBushel() {
        return poundsPerBushel;
    }
}
