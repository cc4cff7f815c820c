package plumbrow.advice.gates;

import java.util.stream.Stream;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether the label keeps the product off saturated or frozen ground.
 *
 * <p>Protects water. No plan knows the state of the ground, so a ban is a condition of the day. Unknown where it was not
 * read.
 *
 * <p>Source: the label. Needs: whether the label forbids such ground.
 */
final class SaturatedSoil extends CareGate {
    SaturatedSoil() {
        super("saturated-soil", Protects.WATER, "Does the label keep it off saturated or frozen ground?");
    }

    @Override
    Stream<Finding> judge(Case at, ProductCare care) {
        return Stream.of(
                switch (care.saturatedSoil()) {
                    case NO -> clear(care.product(), "The label does not speak of saturated or frozen ground.");
                    case YES ->
                        conditional(
                                care.product(),
                                "The label forbids saturated or frozen ground.",
                                "Go only when the ground is neither saturated nor frozen: look that day.");
                    case UNKNOWN ->
                        unknown(
                                care.product(),
                                "Whether the label forbids saturated or frozen ground has not been read.",
                                "Look for saturated or frozen soil on the label.");
                });
    }
}
