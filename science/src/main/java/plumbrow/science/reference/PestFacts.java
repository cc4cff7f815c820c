package plumbrow.science.reference;

import java.util.List;

/** What is kept of weeds and of insects, one fact a row. Published thresholds differ by state: never average them. */
public final class PestFacts {
    private static final List<PestFact> WEEDS = ReferenceSet.WEEDS.entries(PestFact.class);
    private static final List<PestFact> INSECTS = ReferenceSet.INSECTS.entries(PestFact.class);

    private PestFacts() {}

    public static List<PestFact> weeds() {
        return WEEDS;
    }

    public static List<PestFact> insects() {
        return INSECTS;
    }

    /** Facts of a weed in a crop, those that no crop binds included; empty is unknown. */
    public static List<PestFact> weed(String weed, String crop) {
        return of(WEEDS, weed, crop);
    }

    /** Facts of an insect in a crop, those that no crop binds included; empty is unknown. */
    public static List<PestFact> insect(String insect, String crop) {
        return of(INSECTS, insect, crop);
    }

    private static List<PestFact> of(List<PestFact> facts, String pest, String crop) {
        return facts.stream()
                .filter(fact -> fact.pest().equalsIgnoreCase(pest.strip()))
                .filter(fact -> fact.crop().equals("any") || fact.crop().equalsIgnoreCase(crop.strip()))
                .toList();
    }
}
