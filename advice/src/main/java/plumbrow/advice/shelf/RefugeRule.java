package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;

/**
 * The refuge that the bag tag or grower agreement asks for. What nobody has read on the tag is null: unknown.
 *
 * @param form how the refuge is kept
 * @param requiredPct refuge as a share of all corn acres [%]
 * @param farthestFt how far a block may lie from the trait corn, edge to edge [ft]; 0 for in the field or adjacent
 * @param fewestRows narrowest strip [rows]
 * @param source where the rule stands
 */
public record RefugeRule(
        Form form,
        @Nullable Double requiredPct,
        @Nullable Double farthestFt,
        @Nullable Integer fewestRows,
        String source) {

    /** How a refuge is kept. */
    public enum Form {
        NONE("no refuge needed"),
        BLEND("in the bag"),
        BLOCK("block or strips"),
        UNKNOWN("unknown");

        private final String word;

        Form(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
