package plumbrow.advice.gates;

import java.util.List;

/** What a gate says, worst first. Unknown is never clear. */
public enum Standing {
    BARRED("barred"),
    UNKNOWN("unknown"),
    CONDITIONAL("conditional"),
    CLEAR("clear"),
    /** No check has anything to ask: not the same as asked and found clear. */
    NOTHING_ASKED("nothing asked");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether a program with this standing may be advised: conditions can be met, unknowns can't be guessed. */
    public boolean advisable() {
        return this == CONDITIONAL || this == CLEAR || this == NOTHING_ASKED;
    }

    /** Those that a finding may have, worst first; that nothing was asked stands of a program. */
    public static List<Standing> ofFindings() {
        return List.of(BARRED, UNKNOWN, CONDITIONAL, CLEAR);
    }

    /** The worse of two. */
    public Standing worse(Standing other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
