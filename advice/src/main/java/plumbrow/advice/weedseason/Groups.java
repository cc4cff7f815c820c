package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Sets of site-of-action groups by number, as the engine knows one group a pass: a pass of several sites is resisted only by
 * plants that resist them all. A pass of unknown site is resisted by none.
 */
final class Groups {
    private final List<Set<String>> known = new ArrayList<>();

    int number(Set<String> groups) {
        if (groups.isEmpty() || !known.contains(groups)) {
            known.add(Set.copyOf(groups));
            return known.size() - 1;
        }
        return known.indexOf(groups);
    }

    /** The groups of a number; empty where they are unknown. */
    Set<String> sites(int number) {
        return known.get(number);
    }

    /** Numbers of the sets that plants resist. */
    Set<Integer> resisted(Set<String> byPlants) {
        return IntStream.range(0, known.size())
                .filter(number -> !known.get(number).isEmpty() && byPlants.containsAll(known.get(number)))
                .boxed()
                .collect(Collectors.toSet());
    }
}
