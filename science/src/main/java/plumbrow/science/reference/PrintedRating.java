package plumbrow.science.reference;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the percents of a printed rating must be.
 *
 *   E 90 to 100, G 80 to 89, F 60 to 79 (seen in a Wisconsin report of 2020); P 20 to 59, N 0 to 19 (the split is assumed)
 *   at least x, above x, x or more: x to 100;  below x, no more than x: 0 to x;  up to x: no low end
 *   a single mean lies within its two percents;  several means: not looked at
 */
final class PrintedRating {
    private static final Pattern FLOOR = Pattern.compile("(?:at least|above) (\\d+)|(\\d+) or more");
    private static final Pattern CEILING = Pattern.compile("(?:below|no more than) (\\d+)");
    private static final Pattern BEST = Pattern.compile("up to (\\d+)");
    private static final Pattern RANGE = Pattern.compile("(\\d+)-(\\d+)");
    private static final Pattern MEAN = Pattern.compile("(\\d+(?:\\.\\d+)?)(?: \\(\\d+\\))?");

    private PrintedRating() {}

    /** What is wrong with the percents, as what is expected; empty where nothing is. */
    static Optional<String> objection(String printed, OptionalDouble low, double high) {
        Matcher mean = MEAN.matcher(printed);
        if (mean.matches()) {
            double number = Double.parseDouble(mean.group(1));
            return low.isPresent() && low.getAsDouble() <= number && number <= high
                    ? Optional.empty()
                    : Optional.of("percents around " + printed);
        }
        Matcher best = BEST.matcher(printed);
        if (best.matches()) {
            return low.isEmpty() && high == Double.parseDouble(best.group(1))
                    ? Optional.empty()
                    : Optional.of("no low end and " + best.group(1) + " for " + printed);
        }
        return band(printed)
                .filter(band -> low.isEmpty() || low.getAsDouble() != band[0] || high != band[1])
                .map(band -> (int) band[0] + " and " + (int) band[1] + " for " + printed);
    }

    private static Optional<double[]> band(String printed) {
        return switch (printed) {
            case "E" -> ends(90, 100);
            case "G" -> ends(80, 89);
            case "F" -> ends(60, 79);
            case "P" -> ends(20, 59);
            case "N" -> ends(0, 19);
            default -> inWords(printed);
        };
    }

    private static Optional<double[]> inWords(String printed) {
        Matcher floor = FLOOR.matcher(printed);
        if (floor.matches()) {
            String number = floor.group(1) == null ? floor.group(2) : floor.group(1);
            return ends(Double.parseDouble(number), 100);
        }
        Matcher ceiling = CEILING.matcher(printed);
        if (ceiling.matches()) {
            return ends(0, Double.parseDouble(ceiling.group(1)));
        }
        Matcher range = RANGE.matcher(printed);
        return range.matches()
                ? ends(Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2)))
                : Optional.empty();
    }

    private static Optional<double[]> ends(double low, double high) {
        return Optional.of(new double[] {low, high});
    }
}
