package plumbrow.advice.means;

import org.jspecify.annotations.Nullable;

/**
 * What holds for a farm as a whole. Null is no such limit.
 *
 * @param capitalUsd money for inputs and trips until harvest [$]
 * @param leastInWorstTenthUsd what all fields together must bring on average in the worst tenth of seasons [$]
 * @param leastRefugePct corn without insect traits, bags of blends counted by their share, of all corn acres [%]
 * @param yieldTie how the yields of two fields go together [0 to 1]
 */
public record FarmLimit(
        String farm,
        @Nullable Double capitalUsd,
        @Nullable Double leastInWorstTenthUsd,
        @Nullable Double leastRefugePct,
        double yieldTie,
        String source) {
    /** Where nobody says otherwise: common practice, no source. */
    public static final double USUAL_YIELD_TIE = 0.5;

    /** No limit. */
    public static FarmLimit none(String farm) {
        return new FarmLimit(farm, null, null, null, USUAL_YIELD_TIE, "none entered");
    }
}
