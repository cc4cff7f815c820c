package plumbrow.documents.confirm;

import java.util.Arrays;
import java.util.Optional;

/** What a person found when he held a value against the page. */
public enum Verdict {
    /** The page says so. */
    CONFIRMED("confirmed"),
    /** The page says otherwise, and the person typed what. */
    CORRECTED("corrected"),
    /** The page doesn't say it: nothing is known. */
    REJECTED("rejected"),
    /** The label and the workbook differ, and the workbook's value stays. */
    WORKBOOK("workbook kept"),
    /** An earlier word is taken back: the value is open again. */
    TAKEN_BACK("taken back");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether a value enters the shelf by it. */
    public boolean enters() {
        return this == CONFIRMED || this == CORRECTED;
    }

    public static Optional<Verdict> of(String word) {
        return Arrays.stream(values()).filter(each -> each.word.equals(word)).findFirst();
    }
}
