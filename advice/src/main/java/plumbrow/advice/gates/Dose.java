package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.ActiveLimit.Basis;

/**
 * How much of one ingredient an application puts on an acre.
 *
 * @param poundsPerAcre active ingredient [lb/ac]; null where rate or content don't tell
 */
record Dose(
        Application application,
        Ingredient ingredient,
        @Nullable Double poundsPerAcre) {

    /** One for each ingredient of the product; none where its content is not in the book. */
    static Stream<Dose> of(Case at, Application application) {
        return at.index().actives(application.product()).stream()
                .map(content -> new Dose(
                        application,
                        Ingredient.of(content.ingredient()),
                        ActiveTally.pounds(application.rate(), content, Basis.ACTIVE_INGREDIENT)));
    }

    /** Every ingredient of what is planned in the open, by pass. */
    static List<Dose> outdoors(Case at) {
        return at.planned().stream()
                .filter(Application::outdoors)
                .flatMap(application -> of(at, application))
                .toList();
    }

    /** What a finding on this ingredient of this pass is headed with. */
    String subject() {
        return application.subject() + ", " + ingredient.name();
    }
}
