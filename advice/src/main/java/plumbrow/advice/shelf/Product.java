package plumbrow.advice.shelf;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;

/**
 * A product on the shelf. What the label doesn't tell stays null: unknown, not allowed.
 *
 * @param name unique in the book
 * @param priceUsd price [$] of one {@code pricedPer}; for saved seed 0, its cost is worked out from the grain
 * @param pricedPer the unit the price is for
 * @param onHand the amount in the shed, where known
 * @param registration registration number on the label, where there is one
 * @param states states in which it is registered, two-letter codes; null where nobody has looked
 * @param excludedCounties counties where the label forbids it, as "IA: Adams"; null where nobody has looked
 * @param labelDate date of the label read, where known
 * @param source where these values stand
 */
public record Product(
        String name,
        ProductKind kind,
        double priceUsd,
        FarmUnit pricedPer,
        @Nullable Amount onHand,
        @Nullable String registration,
        @Nullable List<String> states,
        @Nullable List<String> excludedCounties,
        @Nullable LocalDate labelDate,
        String source) {
    public Product {
        states = states == null ? null : List.copyOf(states);
        excludedCounties = excludedCounties == null ? null : List.copyOf(excludedCounties);
    }
}
