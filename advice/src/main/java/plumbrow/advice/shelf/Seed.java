package plumbrow.advice.shelf;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;

/**
 * What is particular to a seed product.
 *
 * @param product the product of the shelf
 * @param seedsPerUnit seeds in one bag or unit; null where sold by weight
 * @param seedsPerPound seeds in a pound [1/lb], needed where seed is sold or drawn by weight
 * @param germinationPct germination on the tag or of the test [%]
 * @param emergencePct share of its live seeds that come up and live at the crop's usual rate [%]; null where nobody has entered
 *     it, and then typical for the crop
 * @param traits protein groups it carries, by the names of the traits sheet; empty for none
 * @param blendRefugePct share of seeds in the bag without the trait [%], 0 for none
 * @param rule the refuge its tag or grower agreement asks for
 * @param gainBuPerAcre yield over the field's assumptions that this seed's genetics bring [bu/ac], may be negative
 * @param standPct share of the yield that its stand keeps beside what too few plants cost [%]: vigour and evenness
 * @param saved what saved seed costs and lacks; null for bought seed
 * @param rights the right to plant it again; asked of every saved seed
 * @param tag what else its tag says: tolerance of herbicides, treatments
 */
public record Seed(
        String product,
        Crop crop,
        @Nullable Double seedsPerUnit,
        @Nullable Double seedsPerPound,
        double germinationPct,
        @Nullable Distribution emergencePct,
        List<String> traits,
        double blendRefugePct,
        RefugeRule rule,
        Distribution gainBuPerAcre,
        Distribution standPct,
        @Nullable SavedSeed saved,
        SeedRights rights,
        SeedTag tag) {
    public Seed {
        traits = List.copyOf(traits);
    }

    /** Bare seed that tolerates no herbicide. */
    public Seed(
            String product,
            Crop crop,
            @Nullable Double seedsPerUnit,
            @Nullable Double seedsPerPound,
            double germinationPct,
            @Nullable Distribution emergencePct,
            List<String> traits,
            double blendRefugePct,
            RefugeRule rule,
            Distribution gainBuPerAcre,
            Distribution standPct,
            @Nullable SavedSeed saved,
            SeedRights rights) {
        this(
                product,
                crop,
                seedsPerUnit,
                seedsPerPound,
                germinationPct,
                emergencePct,
                traits,
                blendRefugePct,
                rule,
                gainBuPerAcre,
                standPct,
                saved,
                rights,
                SeedTag.BARE);
    }

    /** Bare seed that tolerates no herbicide, of which nobody has entered how it comes up. */
    public Seed(
            String product,
            Crop crop,
            @Nullable Double seedsPerUnit,
            @Nullable Double seedsPerPound,
            double germinationPct,
            List<String> traits,
            double blendRefugePct,
            RefugeRule rule,
            Distribution gainBuPerAcre,
            Distribution standPct,
            @Nullable SavedSeed saved,
            SeedRights rights) {
        this(
                product,
                crop,
                seedsPerUnit,
                seedsPerPound,
                germinationPct,
                null,
                traits,
                blendRefugePct,
                rule,
                gainBuPerAcre,
                standPct,
                saved,
                rights);
    }
}
