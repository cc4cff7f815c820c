package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/** Published ratings of active ingredients on weeds. The local guide and the label decide. */
public final class EfficacyGuide {
    private static final EfficacyGuide PACKED = new EfficacyGuide(ReferenceSet.EFFICACY.entries(Rating.class));

    private final List<Rating> ratings;

    private EfficacyGuide(List<Rating> ratings) {
        this.ratings = List.copyOf(ratings);
    }

    /** The guide that comes with Plumbrow. */
    public static EfficacyGuide packed() {
        return PACKED;
    }

    /**
     * A guide in the same columns, such as an adviser's own.
     *
     * @param troubles what is wrong is added here; rows in which nothing is wrong are kept
     */
    public static EfficacyGuide read(String name, String csv, List<Trouble> troubles) {
        return new EfficacyGuide(ReferenceSet.EFFICACY.read(name, csv, troubles).stream()
                .map(Rating.class::cast)
                .toList());
    }

    /** The rows of another guide behind the rows of this one: both are kept, and the spread shows how they differ. */
    public EfficacyGuide with(EfficacyGuide other) {
        List<Rating> all = new ArrayList<>(ratings);
        all.addAll(other.ratings);
        return new EfficacyGuide(all);
    }

    public List<Rating> all() {
        return ratings;
    }

    /**
     * What is published on exactly these actives together, on one weed at one timing in one crop.
     *
     * @param actives ISO common names, in any order
     */
    public Ratings ratings(Collection<String> actives, String weed, String timing, String crop) {
        Set<String> asked = lowered(actives);
        Predicate<Rating> same = rating -> lowered(rating.actives()).equals(asked)
                && rating.weed().equalsIgnoreCase(weed.strip())
                && rating.timing().equals(timing.strip());
        Predicate<Rating> here = rating -> rating.crop().equals(crop.strip());
        List<Rating> found = ratings.stream().filter(same).toList();
        return new Ratings(
                found.stream()
                        .filter(here.and(rating -> !rating.onResistantPlants()))
                        .toList(),
                found.stream().filter(here.and(Rating::onResistantPlants)).toList(),
                found.stream().filter(here.negate()).toList());
    }

    private static Set<String> lowered(Collection<String> names) {
        Set<String> lowered = new TreeSet<>();
        names.forEach(name -> lowered.add(name.strip().toLowerCase(Locale.ROOT)));
        return lowered;
    }
}
