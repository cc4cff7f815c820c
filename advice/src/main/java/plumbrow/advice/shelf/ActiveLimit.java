package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * The most of an active ingredient that a label allows per acre and season from all products together.
 *
 * @param product the product whose label says so
 * @param seasonMaxPounds [lb/ac per season] on the basis stated; null where the label was not read for it
 * @param basis whether the pounds are of active ingredient or of its acid
 */
public record ActiveLimit(
        String product,
        Crop crop,
        String ingredient,
        @Nullable Double seasonMaxPounds,
        Basis basis,
        String source) {

    /** The same with its ingredient in the one spelling by which ingredients are compared. */
    public ActiveLimit plain() {
        return new ActiveLimit(product, crop, ActiveName.plain(ingredient), seasonMaxPounds, basis, source);
    }

    /** On what the pounds are counted. */
    public enum Basis {
        ACTIVE_INGREDIENT("ai"),
        ACID_EQUIVALENT("ae");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
