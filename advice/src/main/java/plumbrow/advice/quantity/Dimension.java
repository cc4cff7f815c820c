package plumbrow.advice.quantity;

/** What a unit measures. Amounts convert within one of these and never across. */
public enum Dimension {
    /** Liquid volume; base unit US gallon. */
    VOLUME("a liquid volume"),
    /** Mass; base unit avoirdupois pound. */
    MASS("a weight"),
    /** Single seeds; base unit one seed. */
    SEEDS("a number of seeds"),
    /** Bags or other sales units; base unit one unit, whose content the product states. */
    UNITS("bags or units"),
    /** US bushels; the weight of one depends on the crop. */
    BUSHELS("bushels");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
