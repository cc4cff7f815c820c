package plumbrow.advice.field;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is meant to grow on a field after this season's crop, or in its place if that fails.
 *
 * @param crop as written; any crop
 * @param planted the day it is to be planted, where planned
 * @param use whether it follows, covers the ground between, or replaces a failed stand
 * @param fed whether it is grazed or fed; null is unknown
 */
public record NextCrop(
        String field,
        String crop,
        @Nullable LocalDate planted,
        Use use,
        @Nullable Boolean fed) {

    /** Why it is planted. */
    public enum Use {
        NEXT("next crop"),
        COVER("cover crop"),
        ESCAPE("if this crop fails");

        private final String word;

        Use(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
