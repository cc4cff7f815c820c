package plumbrow.advice.weighing;

/** A chance as a count of seasons, with no more digits than the draws support. */
public final class Odds {
    private Odds() {}

    /** "7 of 10"; near the ends "3 of 100", "fewer than 1 of 100", "more than 99 of 100". */
    public static String words(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("a chance is 0 to 1, not " + chance);
        }
        if (chance == 0 || chance == 1) {
            return chance == 0 ? "0 of 10" : "10 of 10";
        }
        if (chance < 0.005) {
            return "fewer than 1 of 100";
        }
        if (chance > 0.995) {
            return "more than 99 of 100";
        }
        boolean nearEnd = chance < 0.075 || chance > 0.925;
        return nearEnd ? Math.round(chance * 100) + " of 100" : Math.round(chance * 10) + " of 10";
    }
}
