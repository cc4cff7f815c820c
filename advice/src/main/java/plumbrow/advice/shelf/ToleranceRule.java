package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * A stage of a crop at which a label allows a herbicide in it, and the tolerance that the crop must have then. A label that
 * may go before the crop is up, and over the top of tolerant seed only, has two rows. A crop and product without a row was
 * not read for it: unknown.
 *
 * @param trait the tolerance the seed must carry, as the seed's tag names it; null where the label asks for none
 * @param earliestStage the row holds from this stage on; null for from the first
 * @param latestStage the row holds up to this stage; null for up to the last
 * @param source the page of the label
 */
public record ToleranceRule(
        String product,
        Crop crop,
        @Nullable String trait,
        @Nullable String earliestStage,
        @Nullable String latestStage,
        String source) {}
