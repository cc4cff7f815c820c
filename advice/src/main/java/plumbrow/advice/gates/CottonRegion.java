package plumbrow.advice.gates;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The counties in which corn refuge is larger for the cotton grown there.
 *
 * <p>Source: terms of registration for insect-resistant corn of 30 September 2010 (list from memory, all of NC, LA and MS seen
 * elsewhere). Kansas and Kentucky stand in another list, that of natural refuge for cotton, and are not in it.
 */
final class CottonRegion {
    private static final Set<String> WHOLE = Set.of("AL", "AR", "FL", "GA", "LA", "MS", "NC", "SC");

    private static final Map<String, List<String>> PARTS = Map.of(
            "MO", names("Dunklin, New Madrid, Pemiscot, Scott, Stoddard"),
            "OK", names("Beckham, Caddo, Comanche, Custer, Greer, Harmon, Jackson, Kay, Kiowa, Tillman, Washita"),
            "TN",
                    names(
                            "Carroll, Chester, Crockett, Dyer, Fayette, Franklin, Gibson, Hardeman, Hardin, Haywood, Lake, "
                                    + "Lauderdale, Lincoln, Madison, Obion, Rutherford, Shelby, Tipton"),
            "VA",
                    names(
                            "Dinwiddie, Franklin City, Greensville, Isle of Wight, Northampton, Southampton, Suffolk City, "
                                    + "Surry, Sussex"));

    private static final List<String> OUTSIDE_IN_TEXAS =
            names("Carson, Dallam, Hansford, Hartley, Hutchinson, Lipscomb, Moore, Ochiltree, Roberts, Sherman");

    private CottonRegion() {}

    /** Whether a county lies in it. */
    static boolean holds(Place place) {
        String state = place.state().strip().toUpperCase(Locale.ROOT);
        return WHOLE.contains(state)
                || (state.equals("TX") && OUTSIDE_IN_TEXAS.stream().noneMatch(place::named))
                || PARTS.getOrDefault(state, List.of()).stream().anyMatch(place::named);
    }

    private static List<String> names(String text) {
        return Arrays.stream(text.split(", ")).toList();
    }
}
