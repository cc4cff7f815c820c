package plumbrow.science.figure;

/**
 * The numbers an input may take.
 *
 * @param low lower end, may be −∞
 * @param lowOpen whether the lower end itself is refused
 * @param high upper end, may be +∞
 * @param highOpen whether the upper end itself is refused
 */
public record Range(double low, boolean lowOpen, double high, boolean highOpen) {
    /** Any finite number. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, true, Double.POSITIVE_INFINITY, true);
    /** Zero or more. */
    public static final Range NOT_NEGATIVE = new Range(0, false, Double.POSITIVE_INFINITY, true);
    /** More than zero. */
    public static final Range POSITIVE = new Range(0, true, Double.POSITIVE_INFINITY, true);
    /** A share, 0 to 1. */
    public static final Range SHARE = new Range(0, false, 1, false);
    /** A percentage, 0 to 100. */
    public static final Range PERCENT = new Range(0, false, 100, false);

    /** Both ends allowed. */
    public static Range closed(double low, double high) {
        return new Range(low, false, high, false);
    }

    /** Neither end allowed. */
    public static Range open(double low, double high) {
        return new Range(low, true, high, true);
    }

    /** More than {@code low}, up to and including {@code high}. */
    public static Range above(double low, double high) {
        return new Range(low, true, high, false);
    }

    /** From {@code low}, itself allowed, to just below {@code high}. */
    public static Range below(double low, double high) {
        return new Range(low, false, high, true);
    }

    public boolean holds(double value) {
        return Double.isFinite(value)
                && (lowOpen ? value > low : value >= low)
                && (highOpen ? value < high : value <= high);
    }

    /** The range in words: "more than 0", "0 to 100", "any number". */
    public String words() {
        boolean noLow = low == Double.NEGATIVE_INFINITY;
        boolean noHigh = high == Double.POSITIVE_INFINITY;
        if (noLow && noHigh) {
            return "any number";
        }
        if (noHigh) {
            return lowOpen ? "more than " + Numbers.plain(low) : Numbers.plain(low) + " or more";
        }
        if (noLow) {
            return highOpen ? "less than " + Numbers.plain(high) : Numbers.plain(high) + " or less";
        }
        if (!lowOpen && !highOpen) {
            return Numbers.plain(low) + " to " + Numbers.plain(high);
        }
        return (lowOpen ? "more than " : "from ")
                + Numbers.plain(low)
                + (highOpen ? " to less than " : " up to ")
                + Numbers.plain(high);
    }
}
