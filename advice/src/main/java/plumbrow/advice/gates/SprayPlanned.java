package plumbrow.advice.gates;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;

/**
 * Whether it is planned how each spray and granule pass goes on.
 *
 * <p>Protects the law: method, carrier, droplets, boom, stage and applicator decide what a label allows. One finding for
 * each pass without any of it, in place of one from every gate that needs it.
 *
 * <p>Needs: a row of sprays for each pass that puts out a labelled product.
 */
final class SprayPlanned extends Question {
    SprayPlanned() {
        super("spray-planned", Protects.LAW, "Is it planned how each pass is sprayed?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.planned().stream()
                .filter(application -> application.plan() == null && asked(application.pass()))
                .map(
                        application -> unknown(
                                application.subject(),
                                "How this pass is sprayed is not planned.",
                                "Plan its method, carrier volume, droplets, boom, growth stage, heights, bloom and applicator."))
                .toList();
    }

    private static boolean asked(@Nullable Pass pass) {
        return pass != null && (pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE);
    }
}
