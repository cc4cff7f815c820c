package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether the droplets are within the classes that the label allows.
 *
 * <p>Protects the law and neighbours. Measured and limit are the places in the order of classes, extremely fine being 1.
 * A label that was read and sets no class has the finest and the coarsest there is, and then needs no plan.
 *
 * <p>Source: the label; classes of ASABE S572.3. Needs: finest and coarsest class, and the class of nozzle and pressure.
 */
final class DropletsAllowed extends UseGate {
    DropletsAllowed() {
        super("droplet-class", Protects.LAW, "Are the droplets within the label's classes?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        SprayPlan plan = application.plan();
        if (plan == null || !application.sprayed()) {
            return Stream.of();
        }
        Droplets finest = terms.finest();
        Droplets coarsest = terms.coarsest();
        if (finest == null || coarsest == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "The droplet classes that the label allows have not been read.",
                    "Look up the finest and the coarsest droplet class on the label."));
        }
        if (finest == Droplets.EXTREMELY_FINE && coarsest == Droplets.ULTRA_COARSE) {
            return Stream.of(clear(application.subject(), "The label sets no droplet class."));
        }
        Droplets planned = plan.droplets();
        String allowed = "the label allows " + finest.word() + " to " + coarsest.word();
        if (planned == null) {
            return Stream.of(unknown(
                    application.subject(),
                    "The droplet class is not planned; " + allowed + ".",
                    "Look up the class of nozzle and pressure on the maker's chart."));
        }
        boolean tooFine = planned.compareTo(finest) < 0;
        Droplets bound = tooFine ? finest : coarsest;
        String says = "Droplets " + planned.word() + "; " + allowed + ".";
        Finding finding = tooFine || planned.compareTo(coarsest) > 0
                ? barred(
                        application.subject(),
                        says,
                        "Take a nozzle and pressure that give " + bound.word() + " or "
                                + (tooFine ? "coarser" : "finer") + ".")
                : clear(application.subject(), says);
        return Stream.of(finding.against(place(planned), place(bound), "classes"));
    }

    /** The place in the order from the finest, 1, on. */
    private static int place(Droplets droplets) {
        return List.of(Droplets.values()).indexOf(droplets) + 1;
    }
}
