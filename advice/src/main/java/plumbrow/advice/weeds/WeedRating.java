package plumbrow.advice.weeds;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;

/**
 * How well a product controls a weed, in the adviser's own book. It comes before what is published.
 *
 * @param rate per acre at which it was seen
 * @param heightIn height of the weed that was sprayed [in]; null on soil or where not written down
 * @param seenDays days after application on which it was seen [d]; null for four weeks
 * @param control share of the plants killed [0 to 1]
 * @param asFor the weed that it was really seen on, where it is borrowed; null where seen on this one
 */
public record WeedRating(
        String product,
        String weed,
        Timing timing,
        Amount rate,
        @Nullable Double heightIn,
        @Nullable Integer seenDays,
        Distribution control,
        Basis basis,
        @Nullable String asFor,
        String source) {}
