package plumbrow.science.fate;

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
 * Concentration in the standard farm pond: 10 ha draining to 1 ha, 2 m deep.
 *
 *   from drift = rate·drift share over the pond;  from runoff = rate·runoff share over the 10 ha, all into 20,000 m³
 *
 * Source: 10 ha and 1 ha: Winchell et al. 2014 (verified); depth: value from memory; drift defaults 1 % ground, 5 % air.
 */
public final class FarmPond {
    private static final double POND_M2 = 10_000;
    private static final double FIELD_M2 = 100_000;
    private static final double POND_LITRES = POND_M2 * 2 * 1000;

    public static final Figure FIGURE = Figure.declare("farm-pond", Subject.FATE)
            .question("How strong does the standard farm pond become?")
            .input(Asked.RATE)
            .input(number("drift_pct", "Share that drifts onto the pond: 1 ground, 5 air", "%", Range.PERCENT, "1")
                    .orElse("1"))
            .input(number("runoff_pct", "Share that runs off the fields above", "%", Range.PERCENT, "2")
                    .orElse("0"))
            .output("concentration_ug_l", "Concentration", "µg/L")
            .output("drift_ug_l", "From drift", "µg/L")
            .output("runoff_ug_l", "From runoff", "µg/L")
            .formula("drift: rate × share × 1 ha, runoff: rate × share × 10 ha, into 20,000 m³")
            .source("[winchell-2014]; depth 2 m from memory", MEMORY)
            .validity("Mixed at once, nothing leaves, nothing breaks down.")
            .caution(Asked.SCREEN)
            .example("rate_lb_ac=1", "drift_ug_l=0.560426", "independent arithmetic", COMPUTED)
            .example("rate_lb_ac=1 drift_pct=5", "drift_ug_l=2.80213", "independent arithmetic", COMPUTED)
            .example("rate_lb_ac=1 runoff_pct=1", "runoff_ug_l=5.60426", "independent arithmetic", COMPUTED)
            .example(
                    "rate_lb_ac=1.5 drift_pct=1 runoff_pct=2",
                    "drift_ug_l=0.840638 runoff_ug_l=16.8128 concentration_ug_l=17.6534",
                    "independent arithmetic",
                    COMPUTED)
            .model(FarmPond::solve);

    private FarmPond() {}

    private static Outputs solve(Given given, Working working) {
        double drift = show(working, "from drift", given.number("rate_lb_ac"), given.number("drift_pct"), POND_M2);
        double runoff = show(working, "from runoff", given.number("rate_lb_ac"), given.number("runoff_pct"), FIELD_M2);
        return new Outputs()
                .put("concentration_ug_l", working.line("together", drift + runoff, "µg/L", "{} + {}", drift, runoff))
                .put("drift_ug_l", drift)
                .put("runoff_ug_l", runoff);
    }

    private static double show(Working working, String label, double rate, double pct, double squareMetres) {
        return working.line(
                label,
                rate * FieldRate.UG_PER_M2 * pct / 100 * squareMetres / POND_LITRES,
                "µg/L",
                "{} lb/ac × 112,085.116 × {} ÷ 100 × {} ÷ 20,000,000",
                rate,
                pct,
                squareMetres);
    }
}
