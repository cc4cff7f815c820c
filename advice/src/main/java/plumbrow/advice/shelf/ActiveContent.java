package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.FarmUnit;

/**
 * How much of an active ingredient a product holds.
 *
 * @param ingredient ISO common name
 * @param pounds active ingredient [lb] in one {@code per}
 * @param per the unit it is stated for: gallon of a liquid, pound of a dry product
 * @param acidEquivalentRatio pounds of acid in a pound of active [lb ae/lb ai]; null where not stated
 */
public record ActiveContent(
        String product,
        String ingredient,
        double pounds,
        FarmUnit per,
        @Nullable Double acidEquivalentRatio) {
    /** The same with its ingredient in the one spelling by which ingredients are compared. */
    public ActiveContent plain() {
        return new ActiveContent(product, ActiveName.plain(ingredient), pounds, per, acidEquivalentRatio);
    }
}
