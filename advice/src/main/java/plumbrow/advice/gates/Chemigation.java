package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelLimit.Kind;

/**
 * What the label asks of whoever puts it out with irrigation water.
 *
 * <p>Protects people and water. Unknown where the label's directions for chemigation were not read: since 1988 every label
 * either has them or forbids it, so silence is no leave. Where they were, they are a duty to plan, with the devices that keep
 * the product out of the well and the permit that the state may ask.
 *
 * <p>Source: Pesticide Regulation Notice 87-1 of 11 March 1987; devices and permits from memory and as the label has them.
 * Needs: a row of kind chemigation of the product.
 */
final class Chemigation extends Question {
    Chemigation() {
        super("chemigation", Protects.WATER, "Are the label's directions for chemigation kept?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .filter(Application::chemigated)
                .flatMap(application -> judge(at, application))
                .toList();
    }

    private Stream<Finding> judge(Case at, Application application) {
        List<LabelLimit> rows = at
                .index()
                .limits(application.product(), at.field().crop())
                .stream()
                .filter(limit -> limit.kind() == Kind.CHEMIGATION)
                .toList();
        if (rows.isEmpty()) {
            return Stream.of(unknown(
                    application.subject(),
                    "The label's directions for chemigation have not been read: systems, devices, weather, posting.",
                    "Look up the chemigation directions on the label of " + application.product()
                            + "; a label without them does not allow it without written word."));
        }
        return rows.stream()
                .map(row -> conditional(
                                application.subject(),
                                "It goes out with irrigation water; the label says: " + row.value() + ".",
                                "Keep to that, with check valve, vacuum relief, low-pressure drain and interlock in order, and "
                                        + "ask the state whether it wants a permit.")
                        .standingIn(row.source()));
    }
}
