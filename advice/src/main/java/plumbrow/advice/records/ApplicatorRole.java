package plumbrow.advice.records;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** As what somebody applies; record duties differ by it (40 CFR 171 and the states' rules). */
public enum ApplicatorRole {
    /** On land that he or his employer farms. */
    PRIVATE("private"),
    /** On somebody else's land, for hire. */
    COMMERCIAL("commercial"),
    /** For a public body or a business on its own land that is no farm. */
    NONCOMMERCIAL("noncommercial");

    private final String word;

    ApplicatorRole(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    static List<String> words() {
        return Arrays.stream(values()).map(ApplicatorRole::word).toList();
    }

    public static Optional<ApplicatorRole> of(String word) {
        return Arrays.stream(values()).filter(role -> role.word.equals(word)).findFirst();
    }
}
