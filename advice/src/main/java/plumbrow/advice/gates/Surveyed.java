package plumbrow.advice.gates;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import plumbrow.advice.field.FeatureKind;

/**
 * Whether somebody has looked over what lies around the field, for every kind of thing that may need distance.
 *
 * <p>Protects people: without it no distance to water, houses, bees or a neighbour's crop can be kept. One finding for
 * the field, in place of one from every gate that needs a distance. A thing that is noted does not say that somebody
 * looked for others of its kind.
 *
 * <p>Needs: what was looked for around the field; all of it where somebody looked all around.
 */
final class Surveyed extends Question {
    private static final int EVERY_KIND = FeatureKind.values().length;

    Surveyed() {
        super("surroundings", Protects.PEOPLE, "Has somebody looked over what lies around the field?");
    }

    @Override
    public List<Finding> check(Case at) {
        Set<FeatureKind> looked = at.lookedFor();
        return looked.size() == EVERY_KIND || at.planned().stream().noneMatch(Application::outdoors)
                ? List.of()
                : List.of(
                        looked.isEmpty()
                                ? notLooked(at.field().name())
                                : inPart(at.field().name(), looked));
    }

    private Finding notLooked(String field) {
        return unknown(
                field,
                "Nobody has looked all around this field: water, wells, houses, bees, neighbours' crops.",
                "Walk or map what lies around " + field
                        + " and enter each thing with its distance; then enter none, for nothing else.");
    }

    private Finding inPart(String field, Set<FeatureKind> looked) {
        List<String> missing = Arrays.stream(FeatureKind.values())
                .filter(kind -> !looked.contains(kind))
                .map(FeatureKind::word)
                .toList();
        return unknown(
                field,
                "Nobody has looked for these around this field: " + String.join(", ", missing) + ".",
                "Walk or map what lies around " + field + ", look for " + String.join(", ", missing)
                        + ", and enter each with its distance, or that there is none.");
    }
}
