package plumbrow.science.trials;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.function.DoubleUnaryOperator;
import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How many pairs of strips it takes to show a difference.
 *
 *   least n with P(T' > t_{1−α/2, n−1}) ≥ power;  T' noncentral t with n − 1 degrees of freedom, noncentrality δ√n/s_d
 *   first guess n ≈ (z_{1−α/2} + z_power)²·(s_d/δ)²
 *
 *   δ    true difference [bu/ac];  s_d  SD of the paired differences [bu/ac]; from independent plots of SD σ, s_d = √2·σ
 *
 * Counted is a significant difference of the right sign: a significant one of the wrong sign is no success (its chance is
 * below .002 from four pairs on).
 *
 * Source: R power.t.test; first guess by the normal distribution (from memory).
 */
public final class ReplicatesNeeded {
    private static final int MOST_PAIRS = 100_000;
    private static final double CLOSE = 1e-7;
    static final Input ALPHA = number(
                    "alpha",
                    "Chance accepted of seeing a difference that is not there",
                    "",
                    Range.closed(.001, .5),
                    "0.05")
            .orElse("0.05");

    public static final Figure FIGURE = Figure.declare("replicates-needed", Subject.TRIALS)
            .question("How many pairs of strips does it take to show this difference?")
            .alsoAsked("How many strips does a trial need?")
            .input(number("difference", "Difference that matters", "bu/ac", Range.POSITIVE, "5"))
            .input(number("sd", "Standard deviation of the paired differences", "bu/ac", Range.POSITIVE, "8"))
            .input(ALPHA)
            .input(number("power", "Chance wanted of showing it", "", Range.closed(.5, .999), "0.8")
                    .orElse("0.8"))
            .output("replicates", "Pairs needed", "")
            .output("exact", "Pairs needed, before rounding up", "")
            .output("first_guess", "First guess by the normal distribution", "")
            .output("power_reached", "Chance of showing it with that many", "")
            .formula("least n with P(T' > t(1 − α/2; n − 1)) ≥ power, T' noncentral t around difference × √n ÷ sd")
            .source("Power of the paired t test, as in [r-power-t-test]", VERIFIED)
            .validity("Two pairs at least. Where more than 100,000 would be needed the figure says that none will do.")
            .caution("sd is that of paired differences: for independent plots multiply the SD of a plot by √2.")
            .caution("Most single fields can't show 3 bu/ac: several sites, or a larger difference, or no trial.")
            .example("difference=5 sd=8", "replicates=23.0 exact=22.09", "independent arithmetic", COMPUTED)
            .example("difference=3 sd=5", "replicates=24.0 exact=23.79", "independent arithmetic", COMPUTED)
            .example("difference=5 sd=5", "replicates=10.0 exact=9.94", "independent arithmetic", COMPUTED)
            .example("difference=5 sd=8 power=.9", "replicates=29.0 exact=28.89", "independent arithmetic", COMPUTED)
            .example("difference=5 sd=8 alpha=.10", "replicates=18.0 exact=17.26", "independent arithmetic", COMPUTED)
            .model(ReplicatesNeeded::solve);

    public static final Figure POWER = Figure.declare("trial-power", Subject.TRIALS)
            .question("With so many pairs of strips, what is the chance of showing this difference?")
            .input(number("difference", "Difference that matters", "bu/ac", Range.POSITIVE, "5"))
            .input(number("sd", "Standard deviation of the paired differences", "bu/ac", Range.POSITIVE, "8"))
            .input(number("replicates", "Pairs of strips", "", Range.closed(2, MOST_PAIRS), "6"))
            .input(ALPHA)
            .output("power", "Chance of showing the difference", "")
            .formula("power = P(T' > t(1 − α/2; n − 1)), T' noncentral t around difference × √n ÷ sd")
            .source("Power of the paired t test, as in [r-power-t-test]", VERIFIED)
            .validity("Two pairs or more. A significant difference of the wrong sign is not counted.")
            .example("difference=5 sd=8 replicates=4", "power=.144", "independent arithmetic", COMPUTED)
            .example("difference=5 sd=8 replicates=6", "power=.239", "independent arithmetic", COMPUTED)
            .example("difference=5 sd=8 replicates=8", "power=.333", "independent arithmetic", COMPUTED)
            .example("difference=5 sd=8 replicates=12", "power=.506", "independent arithmetic", COMPUTED)
            .model(ReplicatesNeeded::solvePower);

    private ReplicatesNeeded() {}

    /** The chance of a significant difference of the right sign, with pairs of 2 or more, not always whole. */
    public static double power(double differenceInSds, double pairs, double alpha) {
        double df = pairs - 1;
        return NoncentralT.above(StudentT.quantile(1 - alpha / 2, df), differenceInSds * Math.sqrt(pairs), df);
    }

    /** The same for two groups of so many plots each, of one spread. */
    public static double powerOfTwoGroups(double differenceInSds, double plotsEach, double alpha) {
        double df = 2 * (plotsEach - 1);
        return NoncentralT.above(StudentT.quantile(1 - alpha / 2, df), differenceInSds * Math.sqrt(plotsEach / 2), df);
    }

    /** First guess (z_{1−α/2} + z_power)²/(δ/s_d)². */
    public static double firstGuess(double differenceInSds, double alpha, double power) {
        double z = (StandardNormal.quantile(1 - alpha / 2) + StandardNormal.quantile(power)) / differenceInSds;
        return z * z;
    }

    /** The number of pairs, not whole, that reaches a power; at least 2. */
    public static double exact(double differenceInSds, double alpha, double power) {
        return least(2, firstGuess(differenceInSds, alpha, power), power, n -> power(differenceInSds, n, alpha));
    }

    /** The number of plots in each of two groups, not whole, that reaches a power; at least 2. */
    public static double exactOfTwoGroups(double differenceInSds, double alpha, double power) {
        return least(
                2,
                2 * firstGuess(differenceInSds, alpha, power),
                power,
                n -> powerOfTwoGroups(differenceInSds, n, alpha));
    }

    private static double least(double smallest, double guess, double power, DoubleUnaryOperator of) {
        double low = smallest;
        double high = Math.max(smallest, guess) + 1;
        while (of.applyAsDouble(high) < power) {
            low = high;
            high *= 1.5;
        }
        if (of.applyAsDouble(low) >= power) {
            return low;
        }
        while (high - low > CLOSE * high) {
            double middle = (low + high) / 2;
            if (of.applyAsDouble(middle) < power) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static Outputs solve(Given given, Working working) {
        double difference = given.number("difference");
        double sd = given.number("sd");
        double alpha = given.number("alpha");
        double power = given.number("power");
        double size = working.line("difference in standard deviations", difference / sd, "", "{} ÷ {}", difference, sd);
        double guess = size > 0 ? firstGuess(size, alpha, power) : Double.POSITIVE_INFINITY;
        if (guess > MOST_PAIRS) {
            throw given.refuse(
                    "difference",
                    "a difference less small beside sd (" + Numbers.plain(sd)
                            + "): this one needs more than 100,000 pairs, so no trial will show it");
        }
        working.line("first guess", guess, "", "((Φ⁻¹({}) + Φ⁻¹({})) ÷ {})²", 1 - alpha / 2, power, size);
        double exact = working.line(
                "pairs by the noncentral t distribution",
                exact(size, alpha, power),
                "",
                "root of: chance of a significant difference is {}",
                power);
        double whole = working.line("whole pairs", Numbers.wholeUp(exact - 1e-6), "", "{}, rounded up", exact);
        double reached = working.line(
                "chance of showing it",
                power(size, whole, alpha),
                "",
                "noncentral t around {} × √{} above T⁻¹({}; {})",
                size,
                whole,
                1 - alpha / 2,
                whole - 1);
        return new Outputs()
                .put("replicates", whole)
                .put("exact", exact)
                .put("first_guess", guess)
                .put("power_reached", reached);
    }

    private static Outputs solvePower(Given given, Working working) {
        double difference = given.number("difference");
        double sd = given.number("sd");
        double n = given.number("replicates");
        double alpha = given.number("alpha");
        if (n != Math.rint(n)) {
            throw given.refuse("replicates", "a whole number, 2 or more");
        }
        double size = working.line("difference in standard deviations", difference / sd, "", "{} ÷ {}", difference, sd);
        double around = working.line("difference in standard errors", size * Math.sqrt(n), "", "{} × √{}", size, n);
        double limit = working.line(
                "t that counts as shown",
                StudentT.quantile(1 - alpha / 2, n - 1),
                "",
                "T⁻¹({}; {})",
                1 - alpha / 2,
                n - 1);
        return new Outputs()
                .put(
                        "power",
                        working.line(
                                "chance of showing it",
                                power(size, n, alpha),
                                "",
                                "noncentral t around {} above {}",
                                around,
                                limit));
    }
}
