package plumbrow.advice.pestpage;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Crop;

/**
 * Two passes against a pest in a crop, from what works on this shelf.
 *
 * @param fields the fields it is for
 * @param before null for none on this shelf
 * @param after null for none on this shelf
 * @param sites sites of action that work, less those that fail on one of the fields
 * @param holds whether both passes are there and two sites or more work
 */
public record TwoPasses(
        Crop crop,
        List<String> fields,
        @Nullable Works before,
        @Nullable Works after,
        List<String> sites,
        boolean holds,
        String says) {
    public TwoPasses {
        fields = List.copyOf(fields);
        sites = List.copyOf(sites);
    }
}
