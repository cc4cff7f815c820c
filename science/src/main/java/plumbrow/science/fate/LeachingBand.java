package plumbrow.science.fate;

/**
 * The names that different houses give to a leaching score. Which side a tie falls is our choice: up to and including
 * 2.8 is moderate, 1.8 is moderate, 3 and 4 are High.
 *
 * Source: four classes: npic.orst.edu/envir/gus.html, after Goss & Wauchope 1990 (verified); Gustafson's words and the six
 * ratings of the Oregon State pesticide properties database (Vogue, Kerle & Jenkins 1994): values from memory.
 */
public final class LeachingBand {
    private LeachingBand() {}

    /** Extremely low, low, moderate or high. */
    public static String fourClass(double score) {
        if (score < 0) {
            return "extremely low";
        }
        if (score < 1.8) {
            return "low";
        }
        return score <= 2.8 ? "moderate" : "high";
    }

    /** Nonleacher, transition or leacher. */
    public static String type(double score) {
        if (score < 1.8) {
            return "nonleacher";
        }
        return score <= 2.8 ? "transition" : "leacher";
    }

    /** Extremely Low, Very Low, Low, Moderate, High or Very High. */
    public static String movementRating(double score) {
        if (score < 0.1) {
            return "Extremely Low";
        }
        if (score < 1) {
            return "Very Low";
        }
        if (score < 2) {
            return "Low";
        }
        if (score < 3) {
            return "Moderate";
        }
        return score <= 4 ? "High" : "Very High";
    }
}
