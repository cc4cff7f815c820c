package plumbrow.advice.shelf;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a bag tag says besides insect traits and refuge. Null is not read: unknown, neither tolerant nor bare.
 *
 * @param herbicideTraits the herbicides it is tolerant of, in the words that labels use for the trait: "glyphosate"; empty
 *     where the tag was read and names none
 * @param treatments the treatments on the seed, products of the shelf; empty for bare seed
 * @param refugeCheckedBy who held a refuge that is smaller or farther off than the published ones against the tag again, and
 *     when; null where nobody has
 */
public record SeedTag(
        @Nullable List<String> herbicideTraits,
        @Nullable List<String> treatments,
        @Nullable String refugeCheckedBy) {
    /** Nobody has read it. */
    public static final SeedTag UNREAD = new SeedTag(null, null, null);

    /** Read: bare seed that tolerates no herbicide. */
    public static final SeedTag BARE = new SeedTag(List.of(), List.of(), null);

    public SeedTag {
        herbicideTraits = herbicideTraits == null ? null : List.copyOf(herbicideTraits);
        treatments = treatments == null ? null : List.copyOf(treatments);
    }
}
