package plumbrow.advice.shelf;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.quantity.Amount;

/**
 * The rate a label sets on a kind of soil. Where a label has such rows for a use, one of them must fit the field.
 *
 * @param textures the textures the row is for; empty for all
 * @param organicMatterLowPct from this organic matter on [%], itself included; null for no lower end
 * @param organicMatterHighPct up to this organic matter [%], itself not included; null for no upper end
 * @param phLow from this pH on, itself included; null for no lower end
 * @param phHigh up to this pH, itself not included; null for no upper end
 * @param forbidden whether the label forbids the use on such soil
 * @param lowRate lowest rate per acre; null where forbidden or not stated
 * @param highRate highest rate per acre; null where forbidden
 * @param source the page of the label
 */
public record SoilRate(
        String product,
        Crop crop,
        Set<Texture> textures,
        @Nullable Double organicMatterLowPct,
        @Nullable Double organicMatterHighPct,
        @Nullable Double phLow,
        @Nullable Double phHigh,
        boolean forbidden,
        @Nullable Amount lowRate,
        @Nullable Amount highRate,
        String source) {
    public SoilRate {
        textures = Set.copyOf(textures);
    }
}
