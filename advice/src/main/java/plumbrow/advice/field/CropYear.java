package plumbrow.advice.field;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a field carried in an earlier year.
 *
 * @param crop the crop as written; any crop, not only those advised on
 * @param yieldBuPerAcre its yield [bu/ac], where known
 * @param herbicideTraits the herbicides that its seed tolerated, in the words of labels; empty for none, null where nobody
 *     has written it: what comes up of it this season tolerates the same
 */
public record CropYear(
        String field,
        int year,
        String crop,
        @Nullable Double yieldBuPerAcre,
        @Nullable List<String> herbicideTraits) {
    public CropYear {
        herbicideTraits = herbicideTraits == null ? null : List.copyOf(herbicideTraits);
    }

    /** A crop of which nobody has written what it tolerated. */
    public CropYear(String field, int year, String crop, @Nullable Double yieldBuPerAcre) {
        this(field, year, crop, yieldBuPerAcre, null);
    }
}
