package plumbrow.app.desk.weighing;

import plumbrow.advice.weighing.Comparison;

/** What dominance means to the person who decides. */
public final class Preference {
    private static final String NONE = "none";

    private Preference() {}

    /** Which of the two is ahead at every level of luck, which any risk-averse person prefers, or neither. */
    public static String words(Comparison comparison) {
        if (!comparison.firstDegree().equals(NONE)) {
            return comparison.firstDegree() + ": ahead at every level of luck";
        }
        return comparison.secondDegree().equals(NONE)
                ? "neither"
                : comparison.secondDegree() + ": preferred by any risk-averse person";
    }
}
