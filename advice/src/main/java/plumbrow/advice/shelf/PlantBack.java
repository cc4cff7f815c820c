package plumbrow.advice.shelf;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.CropName;

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

    /**
     * The rows of a product that speak for a crop: those that name it, else those that name what it is a kind of, as wheat for
     * winter wheat. Where neither is there, rows for kinds of it hold with those for any other crop, and the longest of them
     * decides.
     */
    public static List<PlantBack> speakingFor(String crop, List<PlantBack> ofProduct) {
        List<PlantBack> named = where(ofProduct, row -> CropName.same(row.nextCrop, crop));
        if (!named.isEmpty()) {
            return named;
        }
        List<PlantBack> wider = where(ofProduct, row -> CropName.kindOf(crop, row.nextCrop));
        return wider.isEmpty()
                ? where(ofProduct, row -> CropName.same(row.nextCrop, ANY_OTHER) || CropName.kindOf(row.nextCrop, crop))
                : wider;
    }

    private static List<PlantBack> where(List<PlantBack> rows, Predicate<PlantBack> which) {
        return rows.stream().filter(which).toList();
    }
}
