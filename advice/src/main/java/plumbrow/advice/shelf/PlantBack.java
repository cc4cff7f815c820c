package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;

/**
 * How long a label keeps a crop off treated ground.
 *
 * @param nextCrop the crop as the label names it; "any other" for every crop it doesn't name
 * @param days plant-back interval from the application [d]; null where it was not read
 * @param forPhFrom the row holds from this pH on, itself included; null for any
 * @param forPhBelow the row holds below this pH; null for any
 * @param condition what else the label asks, such as rain or a field bioassay; empty for nothing
 * @param source the page of the label
 */
public record PlantBack(
        String product,
        String nextCrop,
        @Nullable Integer days,
        @Nullable Double forPhFrom,
        @Nullable Double forPhBelow,
        String condition,
        String source) {
    /** The crop of a row that speaks of every crop the label doesn't name. */
    public static final String ANY_OTHER = "any other";
}
