package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether ranges held what they were to hold: the share of outcomes that fell inside, with Wilson's interval for it.
 *
 *   (x + z²/2) / (n + z²)  ±  z √(x (n − x) / n + z²/4) / (n + z²)
 *
 * Source: Wilson 1927, J. Am. Stat. Assoc. 22:209-212. Cases are taken as independent; fields of one season are not, so that the
 * interval is then too narrow.
 */
public final class IntervalCoverage {
    /** Spreads of the normal distribution for a confidence of 95 %. */
    public static final double NINETY_FIVE = StandardNormal.quantile(0.975);

    public static final Figure FIGURE = Figure.declare("interval-coverage", Subject.ECONOMICS)
            .question("Did the ranges hold as often as they said?")
            .alsoAsked("coverage of 80 % intervals")
            .input(number("inside", "Outcomes inside their range", "", Range.NOT_NEGATIVE, "23"))
            .input(number("outcomes", "Outcomes in all", "", Range.POSITIVE, "30"))
            .input(number("share", "Share that was to be inside", "", Range.open(0, 1), "0.8")
                    .orElse("0.8"))
            .input(number("confidence", "Confidence of the interval", "", Range.open(0, 1), "0.95")
                    .orElse("0.95"))
            .output("coverage", "Share inside", "")
            .output("low", "Lower end of its interval", "")
            .output("high", "Upper end of its interval", "")
            .output("verdict", "Whether that fits what was said", "")
            .formula("(x + z²/2) ÷ (n + z²) ± z √(x(n − x)/n + z²/4) ÷ (n + z²)")
            .source("[wilson-1927], as in [scipy]", VERIFIED)
            .validity(
                    "Independent outcomes, no more inside than there are. Fields of one season share their weather and price,"
                            + " which makes the interval too narrow.")
            .example(
                    "inside=81 outcomes=263 share=.3 confidence=.95",
                    "coverage=.3080 low=.2553 high=.3662",
                    "81 of 263: [newcombe-1998], table I, Wilson score without continuity correction",
                    MEMORY)
            .example(
                    "inside=15 outcomes=148 share=.1 confidence=.95",
                    "low=.0624 high=.1605",
                    "15 of 148: [newcombe-1998], table I, the same method",
                    MEMORY)
            .example(
                    "inside=0 outcomes=20 share=.1 confidence=.95",
                    "low=0 high=.1611",
                    "0 of 20: [newcombe-1998], table I, the same method",
                    MEMORY)
            .example("inside=23 outcomes=30", "coverage=.7667 low=.5907 high=.8821", "NumPy", COMPUTED)
            .model(IntervalCoverage::solve);

    private IntervalCoverage() {}

    private static Outputs solve(Given given, Working working) {
        double inside = given.number("inside");
        double outcomes = given.number("outcomes");
        if (inside > outcomes) {
            throw given.refuse("inside", "no more than the outcomes in all");
        }
        double share = given.number("share");
        double confidence = given.number("confidence");
        double z = working.line(
                "spreads for the confidence", StandardNormal.quantile((1 + confidence) / 2), "", "of {}", confidence);
        double coverage = working.line("share inside", inside / outcomes, "", "{} ÷ {}", inside, outcomes);
        double low = working.line("lower end", low(inside, outcomes, z), "", "by Wilson's formula with z {}", z);
        double high = working.line(
                "upper end",
                1 - low(outcomes - inside, outcomes, z),
                "",
                "1 − the lower end of {} outside",
                outcomes - inside);
        String verdict = share < low
                ? "the ranges hold more often than they say: they could be narrower"
                : share > high ? "the ranges hold less often than they say: they are too narrow" : "fits";
        return new Outputs()
                .put("coverage", coverage)
                .put("low", low)
                .put("high", high)
                .put("verdict", verdict);
    }

    /** The lower end of Wilson's interval for x of n, 0 for none of none. */
    public static double low(double x, double n, double z) {
        if (n == 0) {
            return 0;
        }
        double squared = z * z;
        double middle = x + squared / 2;
        double reach = z * Math.sqrt(x * (n - x) / n + squared / 4);
        return Math.max(0, (middle - reach) / (n + squared));
    }
}
