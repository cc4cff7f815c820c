package plumbrow.advice.shelf;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;

/**
 * What a label says of one product on one crop. Null is unknown: the label was not read for it.
 *
 * @param crop the crop the label lists
 * @param lowRate lowest labelled rate per acre
 * @param highRate highest labelled rate per acre and application
 * @param lessForbidden whether the label forbids less than the lowest rate
 * @param seasonMax most of the product per acre and season
 * @param mostApplications most applications per season
 * @param preHarvestDays days that must pass before harvest
 * @param source the page of the label
 */
public record LabelUse(
        String product,
        Crop crop,
        @Nullable Amount lowRate,
        @Nullable Amount highRate,
        Ask lessForbidden,
        @Nullable Amount seasonMax,
        @Nullable Integer mostApplications,
        @Nullable Integer preHarvestDays,
        String source) {}
