package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How fast a pest doubles between two counts, and when it reaches a density.
 *
 *   Td = Δt·ln 2 / ln(N₂/N₁);  t = Td·ln(L/N₂)/ln 2
 *
 *   N₁, N₂  two counts, Δt days apart;  L density to be reached
 *
 * Where N₂ is not above N₁ the pest is not increasing and there is no date.
 *
 * Source: exponential growth; soybean aphid from 250 to 674 in 6.97 d: McCarville et al. 2011, J. Econ. Entomol. 104:845.
 */
public final class DoublingTime {
    private static final String NO_DATE = "no date: not increasing";

    public static final Figure FIGURE = Figure.declare("doubling-time", Subject.INSECTS)
            .question("How fast does a pest double, and when does it reach the threshold?")
            .input(number("first", "First count", "pests per sampling unit", Range.POSITIVE, "40"))
            .input(number("second", "Second count", "pests per sampling unit", Range.NOT_NEGATIVE, "180"))
            .input(number("days_between", "Days between the counts", "d", Range.above(0, 60), "9"))
            .input(number("threshold", "Density to be reached", "pests per sampling unit", Range.POSITIVE, "250")
                    .optional())
            .output("doubling_days", "Days in which the pest doubles", "d")
            .sometimes("days", "Days from the second count to the threshold", "d")
            .formula("doubling time = days between × ln 2 ÷ ln(second ÷ first)")
            .source("Exponential growth, as in [mccarville-2011]", VERIFIED)
            .validity(
                    "Only for a rising count: else the answer is the words no date. Not trusted beyond about 14 days.")
            .caution("Two counts are a thin record: weather, enemies and winged leavers change the rate.")
            .example("first=250 second=674 days_between=6.97", "doubling_days=4.87", "from [mccarville-2011]", COMPUTED)
            .example(
                    "first=40 second=180 days_between=9 threshold=250",
                    "doubling_days=4.15 days=1.97",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "first=40 second=180 days_between=9 threshold=674", "days=7.90", "independent arithmetic", COMPUTED)
            .model(DoublingTime::solve);

    private DoublingTime() {}

    private static Outputs solve(Given given, Working working) {
        double first = given.number("first");
        double second = given.number("second");
        double between = given.number("days_between");
        Outputs outputs = new Outputs();
        if (second <= first) {
            working.caution("The count is not rising: there is no date. Scout again in a few days.");
            outputs.put("doubling_days", NO_DATE);
            return given.has("threshold") ? outputs.put("days", NO_DATE) : outputs;
        }
        double doubling = working.line(
                "doubling time",
                DaysToThreshold.doublingDays(first, second, between),
                "d",
                "{} d × ln 2 ÷ ln({} ÷ {})",
                between,
                second,
                first);
        outputs.put("doubling_days", doubling);
        if (given.has("threshold")) {
            double threshold = given.number("threshold");
            outputs.put(
                    "days",
                    working.line(
                            "days to the threshold",
                            DaysToThreshold.days(second, threshold, doubling),
                            "d",
                            "{} d × ln({} ÷ {}) ÷ ln 2, not below 0",
                            doubling,
                            threshold,
                            second));
        }
        return outputs;
    }
}
