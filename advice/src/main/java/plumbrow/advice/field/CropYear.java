package plumbrow.advice.field;

import org.jspecify.annotations.Nullable;

/**
 * What a field carried in an earlier year.
 *
 * @param crop the crop as written; any crop, not only those advised on
 * @param yieldBuPerAcre its yield [bu/ac], where known
 */
public record CropYear(
        String field, int year, String crop, @Nullable Double yieldBuPerAcre) {}
