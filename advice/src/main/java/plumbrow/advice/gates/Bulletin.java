package plumbrow.advice.gates;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether an endangered-species bulletin must be looked up for the place and month.
 *
 * <p>Protects wildlife. What a bulletin says changes by month, so where a label sends the user to one the answer is a
 * condition, never clear: it is part of the label and is looked up before each use. Unknown where the label was not
 * read for it.
 *
 * <p>Source: the label; bulletins of the federal agency (value from memory). Needs: whether the label names them.
 */
final class Bulletin extends CareGate {
    Bulletin() {
        super("bulletin", Protects.WILDLIFE, "Must an endangered-species bulletin be looked up?");
    }

    @Override
    Stream<Finding> judge(Case at, ProductCare care) {
        return Stream.of(
                switch (care.bulletin()) {
                    case NO -> clear(care.product(), "The label names no endangered-species bulletin.");
                    case UNKNOWN ->
                        unknown(
                                care.product(),
                                "Whether the label names endangered-species bulletins has not been read.",
                                "Look for endangered species on the label.");
                    case YES ->
                        conditional(
                                care.product(),
                                "The label makes an endangered-species bulletin part of itself.",
                                "Look up the bulletin for "
                                        + at.places().stream().map(Place::words).collect(Collectors.joining(" and "))
                                        + " and the month of use, and keep to it; it is unknown until then.");
                });
    }
}
