package plumbrow.advice.gates;

import java.util.stream.Stream;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether the label forbids the product ahead of rain.
 *
 * <p>Protects water. No plan knows the forecast of the day, so hours of rain ahead are a condition. Unknown where they were
 * not read.
 *
 * <p>Source: the label. Needs: the hours of rain ahead.
 */
final class RainAhead extends CareGate {
    RainAhead() {
        super("rain-ahead", Protects.WATER, "Does the label forbid it ahead of rain?");
    }

    @Override
    Stream<Finding> judge(Case at, ProductCare care) {
        Integer hours = care.rainAheadHours();
        if (hours == null) {
            return Stream.of(unknown(
                    care.product(),
                    "Whether the label forbids it ahead of rain has not been read.",
                    "Look for rain or runoff-producing storms on the label, with the hours."));
        }
        return Stream.of(
                hours == 0
                        ? clear(care.product(), "The label does not forbid it ahead of rain.")
                        : conditional(
                                care.product(),
                                "The label forbids it within " + hours + " h before rain.",
                                "Go only when the forecast has no rain that runs off for the next " + hours + " h."));
    }
}
