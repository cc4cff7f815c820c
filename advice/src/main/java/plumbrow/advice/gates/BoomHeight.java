package plumbrow.advice.gates;

import java.util.stream.Stream;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether the boom runs no higher than the label allows.
 *
 * <p>Protects the law and neighbours. Asked of spraying from the ground.
 *
 * <p>Source: the label. Needs: the highest boom of the label, and the height planned.
 */
final class BoomHeight extends UseGate {
    BoomHeight() {
        super("boom-height", Protects.LAW, "Does the boom run low enough?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        SprayPlan plan = application.plan();
        return plan == null || !application.sprayed() || plan.method() == Method.AERIAL
                ? Stream.of()
                : Stream.of(new Limit(this, application.subject(), "height of the boom", "in")
                        .atMost(plan.boomIn(), terms.boomHighestIn()));
    }
}
