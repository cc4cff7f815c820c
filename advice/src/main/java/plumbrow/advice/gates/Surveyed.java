package plumbrow.advice.gates;

import java.util.List;

/**
 * Whether somebody has looked over what lies around the field.
 *
 * <p>Protects people: without it no distance to water, houses, bees or a neighbour's crop can be kept. One finding for
 * the field, in place of one from every gate that needs a distance.
 *
 * <p>Needs: the surroundings of the field; none where somebody looked and found none.
 */
final class Surveyed extends Question {
    Surveyed() {
        super("surroundings", Protects.PEOPLE, "Has somebody looked over what lies around the field?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.surveyed() || at.planned().stream().noneMatch(Application::outdoors)
                ? List.of()
                : List.of(unknown(
                        at.field().name(),
                        "Nobody has looked over what lies around this field: water, wells, houses, bees, neighbours' "
                                + "crops.",
                        "Walk or map the surroundings and enter each thing with its distance; none where there is "
                                + "none."));
    }
}
