package plumbrow.advice.gates;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.UseTerms;

/**
 * Whether enough carrier goes out.
 *
 * <p>Protects the law and neighbours. The least volume from the ground stands with the terms of the use, that from the air among
 * what else the label asks; from the air it is unknown without such a row.
 *
 * <p>Source: the label; 7 U.S.C. 136(ee) lets a rate, not a carrier volume, go below the label. Needs: the least carrier
 * volume of the label for the way it is put on, and the volume planned.
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
            return fromTheAir(at, application, plan);
        }
        return Stream.of(new Limit(this, application.subject(), "carrier volume", "gal/ac")
                .atLeast(plan.carrierGalPerAcre(), least));
    }

    /** Every row holds; a label that was read for it and sets none has a row of 0. */
    private Stream<Finding> fromTheAir(Case at, Application application, SprayPlan plan) {
        List<LabelLimit> rows =
                at.index().limits(application.product(), at.field().crop(), LabelLimit.Kind.AIR_GAL_AC);
        if (rows.isEmpty()) {
            return Stream.of(unknown(
                    application.subject(),
                    "The least carrier volume from the air is not in the book.",
                    "Look up the least volume for aerial use on the label and enter it on the sheet label_limits, or go from "
                            + "the ground."));
        }
        Limit limit = new Limit(this, application.subject(), "carrier volume from the air", "gal/ac");
        return rows.stream()
                .map(row -> limit.atLeast(plan.carrierGalPerAcre(), boxed(row)).standingIn(row.source()));
    }

    private static @Nullable Double boxed(LabelLimit row) {
        OptionalDouble number = LabelLimit.number(row.value());
        return number.isPresent() ? Double.valueOf(number.getAsDouble()) : null;
    }
}
