package plumbrow.advice.gates;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.science.figure.Numbers;

/**
 * What weather the label asks for on the day.
 *
 * <p>Protects the law and neighbours. No plan knows the day's weather, so a limit is a condition, never clear. Unknown
 * where one of wind, heat and rain-free hours was not read; clear only where all were read and the label sets none.
 *
 * <p>Source: the label. Needs: lowest and highest wind, warmest air and rain-free hours.
 */
final class SprayWeather extends UseGate {
    SprayWeather() {
        super("spray-weather", Protects.LAW, "In what weather may it be sprayed?");
    }

    @Override
    Stream<Finding> judge(Case at, Application application, UseTerms terms) {
        if (!application.throughAir()) {
            return Stream.of();
        }
        List<String> unread = new ArrayList<>();
        List<String> conditions = new ArrayList<>();
        add(unread, conditions, terms.windLowestMph(), 0, "lowest wind", "wind of %s mph or more");
        add(unread, conditions, terms.windHighestMph(), Limit.FREE, "highest wind", "wind of %s mph or less");
        add(unread, conditions, terms.warmestF(), Limit.FREE, "highest air temperature", "air at %s °F or less");
        add(unread, conditions, terms.rainFreeHours(), 0, "rain-free hours", "no rain for %s h after");
        if (!unread.isEmpty()) {
            return Stream.of(unknown(
                    application.subject(),
                    "Not read on the label: " + String.join(", ", unread) + ".",
                    "Look up on the label: " + String.join(", ", unread) + "."));
        }
        return Stream.of(
                conditions.isEmpty()
                        ? clear(application.subject(), "The label sets no limit of wind, heat or rain.")
                        : conditional(
                                application.subject(),
                                "The label allows it in certain weather only.",
                                "Spray only with " + String.join(", ", conditions) + "."));
    }

    private static void add(
            List<String> unread, List<String> conditions, @Nullable Double limit, double free, String name, String as) {
        if (limit == null) {
            unread.add(name);
        } else if (free == 0 ? limit > 0 : limit < free) {
            conditions.add(as.formatted(Numbers.read(limit)));
        }
    }
}
