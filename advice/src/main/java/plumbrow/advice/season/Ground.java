package plumbrow.advice.season;

import java.util.List;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.land.FieldLand;

/**
 * What lies around the fields and comes after them.
 *
 * @param looked what somebody has looked for, and around which field; what nobody looked for is unknown, not absent
 * @param lands what is known of the land of fields beside its soil
 */
public record Ground(
        List<Looked> looked,
        List<Feature> features,
        List<AlsoIn> alsoIn,
        List<NextCrop> nextCrops,
        List<FieldLand> lands) {
    /** Nobody has looked. */
    public static final Ground UNKNOWN = new Ground(List.of(), List.of(), List.of(), List.of());

    public Ground {
        looked = List.copyOf(looked);
        features = List.copyOf(features);
        alsoIn = List.copyOf(alsoIn);
        nextCrops = List.copyOf(nextCrops);
        lands = List.copyOf(lands);
    }

    /** One of whose land nothing is known beside the soil. */
    public Ground(List<Looked> looked, List<Feature> features, List<AlsoIn> alsoIn, List<NextCrop> nextCrops) {
        this(looked, features, alsoIn, nextCrops, List.of());
    }

    /** The same with other features. */
    public Ground withFeatures(List<Feature> others) {
        return new Ground(looked, others, alsoIn, nextCrops, lands);
    }

    /** The same with other crops to follow. */
    public Ground withNextCrops(List<NextCrop> others) {
        return new Ground(looked, features, alsoIn, others, lands);
    }

    /** Whether somebody has looked for everything around a field, so that what is not noted is not there. */
    public boolean lookedForAll(String field) {
        return looked.stream().anyMatch(one -> one.field().equals(field) && one.kind() == null);
    }

    public List<Feature> features(String field) {
        return features.stream().filter(one -> one.field().equals(field)).toList();
    }

    public List<NextCrop> nextCrops(String field) {
        return nextCrops.stream().filter(one -> one.field().equals(field)).toList();
    }
}
