package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Days until a growing pest reaches a density.
 *
 *   t = Td·ln(L/N) / ln 2
 *
 *   N  pests now;  L density to be reached;  Td doubling time [d], more than 0
 *
 * At or above L the answer is 0; with no pest it is never. Growth at a constant rate is not trusted beyond about 14 days.
 *
 * Source: exponential growth; doubling times of soybean aphid: McCarville et al. 2011, J. Econ. Entomol. 104:845.
 */
public final class DaysToThreshold {
    private static final double LONGEST_OUTLOOK_DAYS = 14;

    public static final Figure FIGURE = Figure.declare("days-to-threshold", Subject.INSECTS)
            .question("In how many days does a growing pest reach the threshold?")
            .input(number("count", "Pests now", "pests per sampling unit", Range.NOT_NEGATIVE, "180"))
            .input(number("threshold", "Density to be reached", "pests per sampling unit", Range.POSITIVE, "250"))
            .input(number("doubling_days", "Days in which the pest doubles", "d", Range.POSITIVE, "3"))
            .output("days", "Days until the threshold", "d")
            .formula("days = doubling time × ln(threshold ÷ count) ÷ ln 2")
            .source("Exponential growth, as in [mccarville-2011]", MEMORY)
            .validity(
                    "A growing pest only. At the threshold or above the answer is 0; with no pest it is the word never."
                            + " Not trusted beyond about 14 days.")
            .caution("Scout again before ordering: weather, enemies and winged leavers change the rate.")
            .example("count=250 threshold=674 doubling_days=6.8", "days=9.73", "independent arithmetic", COMPUTED)
            .example("count=250 threshold=674 doubling_days=3", "days=4.29", "independent arithmetic", COMPUTED)
            .example("count=250 threshold=674 doubling_days=2", "days=2.86", "independent arithmetic", COMPUTED)
            .model(DaysToThreshold::solve);

    private DaysToThreshold() {}

    /** Td·ln(L/N)/ln 2 [d]; 0 at or above L, +∞ with no pest. */
    public static double days(double count, double threshold, double doublingDays) {
        return count >= threshold ? 0 : doublingDays * Math.log(threshold / count) / Math.log(2);
    }

    /** Δt·ln 2/ln(N₂/N₁) [d], the doubling time between two counts; N₂ above N₁, N₁ above 0. */
    public static double doublingDays(double first, double second, double daysBetween) {
        return daysBetween * Math.log(2) / Math.log(second / first);
    }

    private static Outputs solve(Given given, Working working) {
        double count = given.number("count");
        double threshold = given.number("threshold");
        double doubling = given.number("doubling_days");
        if (count == 0) {
            working.caution("No pest was counted: nothing doubles, and there is no date.");
            return new Outputs().put("days", "never");
        }
        if (count >= threshold) {
            working.caution("The count is at the threshold already.");
            working.line("days until the threshold", 0, "d", "{} is not below {}", count, threshold);
            return new Outputs().put("days", 0);
        }
        double days = working.line(
                "days until the threshold",
                days(count, threshold, doubling),
                "d",
                "{} d × ln({} ÷ {}) ÷ ln 2",
                doubling,
                threshold,
                count);
        if (days > LONGEST_OUTLOOK_DAYS) {
            working.caution("More than 14 days ahead: too far for a constant rate. Count again in a week.");
        }
        return new Outputs().put("days", days);
    }
}
