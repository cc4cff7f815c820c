package plumbrow.documents.picture;

/** Chances as a person counts them: "7 of 10". */
public final class Odds {
    private Odds() {}

    /**
     * A chance in words, no finer than tenths except at the two ends, where a tenth would hide the doubt.
     *
     * @param chance share of draws, 0 to 1
     */
    public static String of(double chance) {
        if (chance <= 0) {
            return "none of the draws";
        }
        if (chance >= 1) {
            return "all draws";
        }
        if (chance < 0.05) {
            return "fewer than 1 of 20";
        }
        if (chance > 0.95) {
            return "more than 19 of 20";
        }
        return Math.max(1, Math.min(9, Math.round(chance * 10))) + " of 10";
    }
}
