package plumbrow.science.insects;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Trait proteins that act in one way: resistance to one of a group is taken as resistance to all of it.
 *
 * Names are those of the proteins, not of products.
 * Source: extension.entm and fieldcropnews.com as in the insects reference 5.1; Cry3 as one group: value from memory.
 */
enum ModeGroup {
    CRY1(Pest.CATERPILLARS, "Cry1", List.of("Cry1Ab", "Cry1A.105", "Cry1F")),
    CRY2(Pest.CATERPILLARS, "Cry2", List.of("Cry2Ab2", "Cry2Ab")),
    VIP3(Pest.CATERPILLARS, "Vip3", List.of("Vip3A", "Vip3Aa20")),
    CRY3(Pest.ROOTWORM, "Cry3", List.of("Cry3Bb1", "mCry3A", "eCry3.1Ab")),
    CRY34(Pest.ROOTWORM, "Cry34/35", List.of("Cry34/35Ab1", "Cry34/35", "Cry34Ab1/Cry35Ab1")),
    RNA(Pest.ROOTWORM, "DvSnf7", List.of("DvSnf7"));

    /** What a protein is meant for. */
    enum Pest {
        ROOTWORM,
        CATERPILLARS
    }

    private final Pest pest;
    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // only ever filled by List.of above
    private final List<String> proteins;

    ModeGroup(Pest pest, String title, List<String> proteins) {
        this.pest = pest;
        this.title = title;
        this.proteins = proteins;
    }

    Pest pest() {
        return pest;
    }

    String title() {
        return title;
    }

    /** The group of a protein, or of the group's own name. */
    static Optional<ModeGroup> of(String name) {
        return Arrays.stream(values())
                .filter(group -> group.title.equalsIgnoreCase(name)
                        || group.proteins.stream().anyMatch(protein -> protein.equalsIgnoreCase(name)))
                .findFirst();
    }

    static String known() {
        return Arrays.stream(values()).map(group -> group.proteins.get(0)).collect(Collectors.joining(", "));
    }
}
