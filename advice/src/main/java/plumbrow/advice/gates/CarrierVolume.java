package plumbrow.advice.gates;

import java.util.stream.Stream;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether enough carrier goes out.
 *
 * <p>Protects the law and neighbours. The book keeps the least volume from the ground; from the air it is unknown.
 *
 * <p>Source: the label; 7 U.S.C. 136(ee) lets a rate, not a carrier volume, go below the label. Needs: the least carrier
 * volume of the label, and the volume planned.
 */
final class CarrierVolume extends UseGate {
    CarrierVolume() {
        super("carrier-volume", Protects.LAW, "Does enough carrier go out?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        SprayPlan plan = application.plan();
        if (plan == null || !application.sprayed()) {
            return Stream.of();
        }
        Double least = terms.carrierLowGalPerAcre();
        if (plan.method() == Method.AERIAL && (least == null || least > 0)) {
            return Stream.of(unknown(
                    application.subject(),
                    "The least carrier volume from the air is not in the book.",
                    "Look up the least volume for aerial use on the label, or go from the ground."));
        }
        return Stream.of(new Limit(this, application.subject(), "carrier volume", "gal/ac")
                .atLeast(plan.carrierGalPerAcre(), least));
    }
}
