package plumbrow.advice.field;

import org.jspecify.annotations.Nullable;

/**
 * The operator's shares of the costs that a lease parts by kind [0 to 1]. Null is not parted by itself: seed, chemicals and trips
 * then go by the farm's share of costs, drying by its share of the crop, hauling by 1, the operator's alone.
 *
 * @param seed of seed and what is put on it
 * @param herbicide of herbicides and the adjuvants that go with sprays
 * @param insecticide of insecticides
 * @param fungicide of fungicides
 * @param trips of machine, labour and custom charges
 * @param drying of drying, where it is entered apart from handling
 * @param hauling of handling: haul and check-off, and drying too where that is not entered apart
 */
public record CostShares(
        @Nullable Double seed,
        @Nullable Double herbicide,
        @Nullable Double insecticide,
        @Nullable Double fungicide,
        @Nullable Double trips,
        @Nullable Double drying,
        @Nullable Double hauling) {
    /** Nothing is parted by itself. */
    public static final CostShares NONE = new CostShares(null, null, null, null, null, null, null);
}
