package plumbrow.advice.shelf;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a label asks of whoever handles a product, on any crop. Null, or {@link Ask#UNKNOWN}, is not read.
 *
 * @param confirmed the day a person held the values read against the label; null where nobody has
 * @param restrictedUse whether only certified applicators may use it
 * @param bulletin whether it sends the user to an endangered-species bulletin for place and month
 * @param groundwater whether it warns of ground water on sandy ground or high water table
 * @param bees whether it forbids spraying on bloom or where bees forage
 * @param saturatedSoil whether it forbids saturated or frozen ground
 * @param rainAheadHours hours of rain forecast ahead for which it must not be applied [h]; 0 for none
 * @param wear what handlers must wear, word by word as the label lists it
 * @param source the page of the label
 */
public record ProductCare(
        String product,
        @Nullable LocalDate confirmed,
        Ask restrictedUse,
        Ask bulletin,
        Ask groundwater,
        Ask bees,
        Ask saturatedSoil,
        @Nullable Integer rainAheadHours,
        @Nullable Set<String> wear,
        String source) {
    public ProductCare {
        wear = wear == null ? null : Set.copyOf(wear);
    }
}
