package plumbrow.advice.weighing;

/** A chance as a count of a hundred simulated seasons: one denominator everywhere. */
public final class Odds {
    /** What stands in place of odds where every input is a single value. */
    public static final String NO_DOUBT = "no doubt entered";

    private Odds() {}

    /** "74 of 100"; near the ends "fewer than 1 of 100", "more than 99 of 100". */
    public static String words(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("a chance is 0 to 1, not " + chance);
        }
        if (chance > 0 && chance < 0.005) {
            return "fewer than 1 of 100";
        }
        if (chance < 1 && chance > 0.995) {
            return "more than 99 of 100";
        }
        return Math.round(chance * 100) + " of 100";
    }
}
