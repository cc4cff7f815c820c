package plumbrow.advice.lookback;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * What a program of a field brought.
 *
 * @param year harvest year
 * @param program the program that grew there
 * @param strip whether only a strip of the field grew it, beside the rest
 * @param yieldBuPerAcre yield as weighed [bu/ac]
 * @param moisturePct moisture of the grain as weighed [%]; null where the yield is at standard moisture
 * @param priceUsdPerBushel price received [$/bu]; null where not sold yet
 * @param costUsdPerAcre what its inputs and trips cost the operator [$/ac]; null where nobody has added it up
 * @param who who says so
 * @param source where it stands: scale ticket, monitor, memory
 */
public record Harvest(
        int year,
        String field,
        String program,
        boolean strip,
        double yieldBuPerAcre,
        @Nullable Double moisturePct,
        @Nullable Double priceUsdPerBushel,
        @Nullable Double costUsdPerAcre,
        String who,
        Instant at,
        String source) {
    /** Whether the whole field grew it. */
    public boolean whole() {
        return !strip;
    }

    /** The yield at the moisture at which the crop is sold [bu/ac], as the figure strip-yield has it. */
    public double standardYieldBuPerAcre(Crop crop) {
        Double moisture = moisturePct;
        return moisture == null
                ? yieldBuPerAcre
                : yieldBuPerAcre * (100 - moisture) / (100 - standardMoisturePct(crop));
    }

    /** Moisture at which a bushel is sold [%]: common practice. */
    public static double standardMoisturePct(Crop crop) {
        return switch (crop) {
            case CORN -> 15.5;
            case SOYBEAN -> 13.0;
            case WHEAT -> 13.5;
        };
    }
}
