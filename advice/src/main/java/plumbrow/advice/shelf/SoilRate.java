package plumbrow.advice.shelf;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.quantity.Amount;

/**
 * The rate a label sets on a kind of soil, of land or at a stage. Where a label has such rows for a use, one of them must fit the field.
 *
 * @param textures the textures the row is for; empty for all
 * @param organicMatterLowPct from this organic matter on [%], itself included; null for no lower end
 * @param organicMatterHighPct up to this organic matter [%], itself not included; null for no upper end
 * @param phLow from this pH on, itself included; null for no lower end
 * @param phHigh up to this pH, itself not included; null for no upper end
 * @param erodible whether the row is for highly erodible land or for other land; unknown for both
 * @param residueLowPct from this share of the ground under crop residue on [%], itself included; null for no lower end
 * @param residueHighPct up to this share [%], itself not included; null for no upper end
 * @param earliestStage from this growth stage of the crop on; null for any
 * @param latestStage up to this growth stage; null for any
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
        Ask erodible,
        @Nullable Double residueLowPct,
        @Nullable Double residueHighPct,
        @Nullable String earliestStage,
        @Nullable String latestStage,
        boolean forbidden,
        @Nullable Amount lowRate,
        @Nullable Amount highRate,
        String source) {
    public SoilRate {
        textures = Set.copyOf(textures);
    }

    /** A row that asks for texture, organic matter and pH only. */
    public SoilRate(
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
        this(
                product,
                crop,
                textures,
                organicMatterLowPct,
                organicMatterHighPct,
                phLow,
                phHigh,
                Ask.UNKNOWN,
                null,
                null,
                null,
                null,
                forbidden,
                lowRate,
                highRate,
                source);
    }
}
