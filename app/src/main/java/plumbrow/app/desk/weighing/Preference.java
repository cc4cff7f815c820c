package plumbrow.app.desk.weighing;

import plumbrow.advice.weighing.Comparison;

/** What dominance means to the person who decides. */
public final class Preference {
    private static final String NONE = "none";

    private Preference() {}

    /** Whom these draws settle it for: everybody, whoever shuns risk, or nobody. */
    public static String words(Comparison comparison) {
        if (!comparison.firstDegree().equals(NONE)) {
            return comparison.firstDegree() + ", and so does anybody: it is ahead at every level of luck";
        }
        return comparison.secondDegree().equals(NONE) ? "either, by how far he shuns it" : comparison.secondDegree();
    }
}
