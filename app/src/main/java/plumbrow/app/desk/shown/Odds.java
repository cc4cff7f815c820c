package plumbrow.app.desk.shown;

import plumbrow.science.figure.Numbers;

/** Chances as counts: "7 of 10". Finer only near the ends, and never rounded to a certainty that is not there. */
public final class Odds {
    private Odds() {}

    /** The share of draws, 0 to 1, in words. */
    public static String of(double chance) {
        if (chance <= 0) {
            return "0 of 10";
        }
        if (chance >= 1) {
            return "10 of 10";
        }
        if (chance < 0.005) {
            return "under 1 of 100";
        }
        if (chance > 0.995) {
            return "over 99 of 100";
        }
        if (chance < 0.05 || chance > 0.95) {
            return Numbers.fixed(chance * 100, 0) + " of 100";
        }
        return Numbers.fixed(chance * 10, 0) + " of 10";
    }
}
