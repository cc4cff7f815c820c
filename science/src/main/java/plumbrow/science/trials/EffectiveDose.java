package plumbrow.science.trials;

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
 * Which dose gives so much of the effect, from the slope and the middle dose of the curve.
 *
 *   ED_p = e·(p/(100 − p))^(1/b)
 *
 *   e  dose of half the way [any unit];  b  slope at it;  p  share of the way from upper to lower limit [%]
 *
 * Source: log-logistic curve of Seefeldt, Jensen & Fuerst 1995, Weed Technol. 9:218; values of R package drc for its ryegrass.
 */
public final class EffectiveDose {
    public static final Figure FIGURE = Figure.declare("effective-dose", Subject.TRIALS)
            .question("Which dose gives so much of the effect?")
            .input(number("ed50_e", "Dose of half the way", "", Range.POSITIVE, "3.05795"))
            .input(number("slope_b", "Slope at it", "", Range.above(.05, 100), "2.98222"))
            .input(number(
                    "effect_pct", "Effect wanted, share of the way between the limits", "%", Range.open(0, 100), "90"))
            .output("dose", "Dose", "")
            .output("times_half", "Times the dose of half the way", "")
            .formula("dose = ED50 × (effect ÷ (100 − effect))^(1 ÷ slope)")
            .source("Log-logistic curve, [rstats4ag]", VERIFIED)
            .validity(
                    "Share of the way between the limits of the curve, not of the untreated response where the lower limit is above 0.")
            .caution("Near 0 and 100 % the curve says little: its own error grows there.")
            .example(
                    "ed50_e=3.05795 slope_b=2.98222 effect_pct=90",
                    "dose=6.3886 times_half=2.0892",
                    "[drc], ED90 6.38864",
                    VERIFIED)
            .example("ed50_e=3.05795 slope_b=2.98222 effect_pct=10", "dose=1.4637", "[drc], ED10 1.46371", VERIFIED)
            .example("ed50_e=200 slope_b=3 effect_pct=80", "dose=317.48", "200 × 4^(1/3) by hand", COMPUTED)
            .model(EffectiveDose::solve);

    private EffectiveDose() {}

    /** Dose of a share of the way [%, strictly between 0 and 100], in the unit of the middle dose. */
    public static double dose(double ed50, double slope, double effectPct) {
        return ed50 * Math.pow(effectPct / (100 - effectPct), 1 / slope);
    }

    private static Outputs solve(Given given, Working working) {
        double half = given.number("ed50_e");
        double slope = given.number("slope_b");
        double effect = given.number("effect_pct");
        double times = working.line(
                "times the dose of half the way",
                dose(1, slope, effect),
                "",
                "({} ÷ (100 − {}))^(1 ÷ {})",
                effect,
                effect,
                slope);
        return new Outputs()
                .put("dose", working.line("dose", half * times, "", "{} × {}", half, times))
                .put("times_half", times);
    }
}
