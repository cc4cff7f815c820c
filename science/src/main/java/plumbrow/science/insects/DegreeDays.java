package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Heat above a base on one day, from the day's lowest and highest temperature.
 *
 *   average   max(0, (n+x)/2 − L)
 *   modified  both n and x held between L and U, then their mean − L          (corn growing degree days with 50 and 86)
 *   triangle  above T: 0 if x ≤ T; mean − T if n ≥ T; else (x−T)² / (2(x−n))
 *   sine      above T, n < T < x: m = (n+x)/2, a = (x−n)/2, θ = asin((T−m)/a): [(m−T)(π/2−θ) + a·cosθ]/π
 *   horizontal cutoff for average, triangle and sine: above L less above U
 *
 *   n, x  lowest and highest temperature, n ≤ x;  L, U  lower and upper threshold, L < U; all in the same degrees
 *
 * Source: sine: Baskerville & Emin 1969, Ecology 50:514; values checked against the tests of the
 * CRAN package TrenchR.
 */
public final class DegreeDays {
    private static final Range AIR_F = Range.closed(-100, 150);

    public static final Figure FIGURE = Figure.declare("degree-days", Subject.INSECTS)
            .question("How much heat above the base did the day bring?")
            .input(word("method", "Method", List.of("average", "modified", "triangle", "sine"), "modified"))
            .input(number("tmin_f", "Lowest temperature of the day", "°F", AIR_F, "48"))
            .input(number("tmax_f", "Highest temperature of the day", "°F", AIR_F, "90"))
            .input(number("lower_f", "Base, below which nothing grows", "°F", AIR_F, "50"))
            .input(number("upper_f", "Cutoff, above which heat adds nothing", "°F", AIR_F, "86")
                    .optional())
            .output("degree_days", "Degree days of the day", "DD °F")
            .formula(
                    "average: (min + max)/2 − base; modified: both held between base and cutoff first; triangle and sine:"
                            + " area of the day's curve above the base less that above the cutoff")
            .source(
                    "[baskerville-emin-1969] (sine), as in the tests of [trenchr]; corn growing degree days 86/50 (modified), [iowa-borer-growth]",
                    VERIFIED)
            .validity(
                    "Lowest not above highest, base below cutoff, else refused. A missing day is never a day of zero.")
            .caution(
                    "Use the method, the base and the start date of the table you compare with. Methods are not exchangeable.")
            .example(
                    "method=average tmin_f=48 tmax_f=90 lower_f=50",
                    "degree_days=19.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=modified tmin_f=48 tmax_f=90 lower_f=50 upper_f=86",
                    "degree_days=18.0",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=triangle tmin_f=48 tmax_f=90 lower_f=50 upper_f=86",
                    "degree_days=18.86",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=sine tmin_f=48 tmax_f=90 lower_f=50 upper_f=86",
                    "degree_days=18.66",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=sine tmin_f=48 tmax_f=90 lower_f=50",
                    "degree_days=19.19",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "method=modified tmin_f=60 tmax_f=85 lower_f=50 upper_f=86",
                    "degree_days=22.5",
                    "[iowa-borer-growth]",
                    VERIFIED)
            .example(
                    "method=modified tmin_f=55 tmax_f=80 lower_f=50 upper_f=86",
                    "degree_days=17.5",
                    "[corn-tassels], its sister page",
                    VERIFIED)
            .model(DegreeDays::solve);

    private DegreeDays() {}

    /** max(0, mean − L). */
    public static double average(double min, double max, double lower) {
        return Math.max(0, (min + max) / 2 - lower);
    }

    /** Mean of both temperatures held between L and U, less L. U may be +∞. */
    public static double modified(double min, double max, double lower, double upper) {
        double low = Math.min(Math.max(min, lower), upper);
        double high = Math.min(Math.max(max, lower), upper);
        return (low + high) / 2 - lower;
    }

    /** Area of a triangle over the day above a threshold. */
    public static double triangleAbove(double min, double max, double threshold) {
        if (max <= threshold) {
            return 0;
        }
        return min >= threshold
                ? (min + max) / 2 - threshold
                : (max - threshold) * (max - threshold) / (2 * (max - min));
    }

    /** Area of a sine over the day above a threshold. */
    public static double sineAbove(double min, double max, double threshold) {
        if (max <= threshold) {
            return 0;
        }
        double mean = (min + max) / 2;
        if (min >= threshold) {
            return mean - threshold;
        }
        double swing = (max - min) / 2;
        double theta = Math.asin((threshold - mean) / swing);
        return ((mean - threshold) * (Math.PI / 2 - theta) + swing * Math.cos(theta)) / Math.PI;
    }

    /** Degree days of a day by a method's name, with a horizontal cutoff; the upper threshold may be +∞. */
    public static double of(String method, double min, double max, double lower, double upper) {
        if (method.equals("modified")) {
            return modified(min, max, lower, upper);
        }
        double aboveBase = above(method, min, max, lower);
        return upper == Double.POSITIVE_INFINITY ? aboveBase : aboveBase - above(method, min, max, upper);
    }

    private static double above(String method, double min, double max, double threshold) {
        return switch (method) {
            case "average" -> average(min, max, threshold);
            case "triangle" -> triangleAbove(min, max, threshold);
            case "sine" -> sineAbove(min, max, threshold);
            default -> throw new IllegalArgumentException("no such way of reckoning degree days: " + method);
        };
    }

    private static Outputs solve(Given given, Working working) {
        double min = given.number("tmin_f");
        double max = given.number("tmax_f");
        double lower = given.number("lower_f");
        if (min > max) {
            throw given.refuse("tmin_f", "a number not above tmax_f (" + Numbers.plain(max) + ")");
        }
        double upper = given.numberOr("upper_f", Double.POSITIVE_INFINITY);
        if (upper <= lower) {
            throw given.refuse("upper_f", "a number above lower_f (" + Numbers.plain(lower) + ")");
        }
        String method = given.word("method");
        double degreeDays = method.equals("modified")
                ? showModified(working, min, max, lower, upper)
                : showCutOff(working, method, min, max, lower, upper);
        return new Outputs().put("degree_days", degreeDays);
    }

    private static double showModified(Working working, double min, double max, double lower, double upper) {
        double low = showHeld(working, "lowest", min, lower, upper);
        double high = showHeld(working, "highest", max, lower, upper);
        return working.line(
                "degree days", modified(min, max, lower, upper), "DD °F", "({} + {}) ÷ 2 − {} °F", low, high, lower);
    }

    private static double showHeld(Working working, String label, double found, double lower, double upper) {
        double held = Math.min(Math.max(found, lower), upper);
        return held == found
                ? working.line(label, held, "°F", "{}", found)
                : working.line(label + ", held to the limit", held, "°F", "{} in place of {}", held, found);
    }

    private static double showCutOff(
            Working working, String method, double min, double max, double lower, double upper) {
        double aboveBase = showAbove(working, "above the base", method, min, max, lower);
        if (upper == Double.POSITIVE_INFINITY) {
            return aboveBase;
        }
        double aboveCutoff = showAbove(working, "above the cutoff", method, min, max, upper);
        return working.line("degree days", aboveBase - aboveCutoff, "DD °F", "{} − {}", aboveBase, aboveCutoff);
    }

    private static double showAbove(
            Working working, String label, String method, double min, double max, double threshold) {
        double area = above(method, min, max, threshold);
        boolean whole = method.equals("average") || min >= threshold || max <= threshold;
        String arithmetic = whole
                ? "({} + {}) ÷ 2 − {} °F, not below 0"
                : method.equals("triangle")
                        ? "area of the triangle {} to {} °F above {} °F"
                        : "area of the sine {} to {} °F above {} °F";
        return working.line(label, area, "DD °F", arithmetic, min, max, threshold);
    }
}
