package plumbrow.advice.shelf;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * What a label asks of one use beyond its rates. Null, or {@link Ask#UNKNOWN}, is not read: unknown, never allowed. Where
 * a label was read and sets no such limit, the word is the freest value: 0 days, every method, 0 gal/ac.
 *
 * @param reentryHours re-entry interval [h]
 * @param daysBetween least days between two applications [d]
 * @param grazingDays days before the crop is grazed or fed [d]
 * @param feedingForbidden whether treated crop must not be grazed or fed at all
 * @param earliestStage earliest growth stage, as "VE", "V2", "R1"; empty for no limit
 * @param latestStage latest growth stage; empty for no limit
 * @param highestCropIn tallest crop it may go over [in]
 * @param highestWeedIn tallest weed it is labelled for [in]
 * @param methods ways of application that the label allows
 * @param carrierLowGalPerAcre least carrier volume from the ground [gal/ac]
 * @param finest finest droplet class allowed
 * @param coarsest coarsest droplet class allowed
 * @param boomHighestIn highest boom over the target [in]
 * @param windLowestMph wind below which it must not be sprayed [mph]
 * @param windHighestMph wind above which it must not be sprayed [mph]
 * @param warmestF air temperature above which it must not be sprayed [°F]
 * @param rainFreeHours hours without rain that it needs after spraying [h]
 * @param source the page of the label
 */
public record UseTerms(
        String product,
        Crop crop,
        @Nullable Integer reentryHours,
        @Nullable Integer daysBetween,
        @Nullable Integer grazingDays,
        Ask feedingForbidden,
        @Nullable String earliestStage,
        @Nullable String latestStage,
        @Nullable Double highestCropIn,
        @Nullable Double highestWeedIn,
        @Nullable Set<Method> methods,
        @Nullable Double carrierLowGalPerAcre,
        @Nullable Droplets finest,
        @Nullable Droplets coarsest,
        @Nullable Double boomHighestIn,
        @Nullable Double windLowestMph,
        @Nullable Double windHighestMph,
        @Nullable Double warmestF,
        @Nullable Double rainFreeHours,
        String source) {
    public UseTerms {
        methods = methods == null ? null : Set.copyOf(methods);
    }
}
