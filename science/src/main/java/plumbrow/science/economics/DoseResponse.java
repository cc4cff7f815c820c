package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;
import plumbrow.science.trials.LogLogistic;

/**
 * The response left at a dose, as a figure. The curve is {@link LogLogistic}.
 *
 *   y = c + (d − c)/(1 + (x/e)^b);  reduction = 100·(1 − y/d)
 *
 * The reduction is from the untreated response d down to nothing, as control of weeds is counted (c₀ = 0), not down to
 * the lower limit; the share of the way to the lower limit is given beside it.
 *
 * Source: form as in rstats4ag.org ch. 12.
 */
public final class DoseResponse {
    public static final Figure FIGURE = Figure.declare("dose-response", Subject.ECONOMICS)
            .question("What response is left at this dose?")
            .input(number("dose", "Dose", "", Range.NOT_NEGATIVE, "3"))
            .input(number("slope_b", "Slope at the middle", "", Range.above(0, 100), "2.98222"))
            .input(number("lower_c", "Lower limit, at high doses", "", Range.ANY, "0.48141"))
            .input(number("upper_d", "Upper limit, untreated", "", Range.POSITIVE, "7.79296"))
            .input(number(
                    "ed50_e",
                    "Dose halfway between the limits, in the unit of the dose",
                    "",
                    Range.POSITIVE,
                    "3.05795"))
            .output("response", "Response left", "")
            .output("reduction_pct", "Reduction from the untreated response", "%")
            .output("way_pct", "Share of the way from upper to lower limit", "%")
            .formula("response = c + (d − c) ÷ (1 + (dose ÷ e)^b); reduction = 100 × (1 − response ÷ d)")
            .source("Four-parameter log-logistic, [rstats4ag]", VERIFIED)
            .validity(
                    "A response that falls with the dose: slope above 0, lower limit below the upper. At dose 0 it is d.")
            .caution("The current label sets the highest rate, and some the lowest; the curve knows neither.")
            .example(
                    "dose=3 slope_b=2.98222 lower_c=.48141 upper_d=7.79296 ed50_e=3.05795",
                    "response=4.24146",
                    "ryegrass curve of [drc]",
                    COMPUTED)
            .example(
                    "dose=.5 slope_b=2.2 lower_c=0 upper_d=1 ed50_e=.25",
                    "reduction_pct=82.13 way_pct=82.13",
                    "half rate",
                    COMPUTED)
            .example("dose=1 slope_b=2.2 lower_c=0 upper_d=1 ed50_e=.25", "reduction_pct=95.48", "full rate", COMPUTED)
            .model(DoseResponse::solve);

    private DoseResponse() {}

    private static Outputs solve(Given given, Working working) {
        double x = given.number("dose");
        double b = given.number("slope_b");
        double c = given.number("lower_c");
        double d = given.number("upper_d");
        double e = given.number("ed50_e");
        if (c >= d) {
            throw given.refuse("lower_c", "a number below upper_d (" + Numbers.plain(d) + ")");
        }
        double response = working.line(
                "response left",
                LogLogistic.response(x, b, c, d, e),
                "",
                "{} + ({} − {}) ÷ (1 + ({} ÷ {})^{})",
                c,
                d,
                c,
                x,
                e,
                b);
        double reduction = working.line(
                "reduction from the untreated", 100 * (1 - response / d), "%", "100 × (1 − {} ÷ {})", response, d);
        double way = working.line(
                "share of the way to the lower limit",
                100 * (d - response) / (d - c),
                "%",
                "100 × ({} − {}) ÷ ({} − {})",
                d,
                response,
                d,
                c);
        return new Outputs()
                .put("response", response)
                .put("reduction_pct", reduction)
                .put("way_pct", way);
    }
}
