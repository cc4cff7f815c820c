package plumbrow.science.fate;

import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The share of an active ingredient that goes to the air in 30 days by EPA's emission factors.
 *
 *   on the surface  0.35 (1e-6 to 1e-4 mmHg), 0.58 (above); no factor below 1e-6: unknown, not nothing
 *   worked in       0.0027, 0.021, 0.052
 *
 * Source: EPA AP-42 section 9.2.2 (factors from memory).
 */
public final class AirEmission {
    private static final double PA_PER_MMHG = 133.322368;
    private static final double LOW_MMHG = 1e-6;
    private static final double HIGH_MMHG = 1e-4;
    private static final double[] INCORPORATED = {0.0027, 0.021, 0.052};
    private static final double[] SURFACE = {Double.NaN, 0.35, 0.58};

    public static final Figure SHARE = Figure.declare("air-emission-share", Subject.FATE)
            .question("What share of the active ingredient goes to the air in 30 days?")
            .input(Asked.VAPOUR_PRESSURE)
            .input(word("placed", "Left on the surface, or worked in", List.of("surface", "incorporated"), "surface"))
            .input(Asked.RATE)
            .output("share", "Share lost to air; 'unknown' where there is no factor", "")
            .sometimes("lb_ac", "Lost to air", "lb/ac")
            .sometimes("incorporated_times_less", "Times less if worked in", "")
            .formula("table by vapour pressure, cuts at 0.000001 and 0.0001 mmHg")
            .source("[epa-ap42-9.2.2]", MEMORY)
            .validity("Thirty days. A surface spray of less than 0.000001 mmHg has no factor: unknown, not nothing.")
            .caution("Dry soil holds it, dew and rain let it go: field losses lay far to both sides of these shares.")
            .example(
                    "vapour_pressure_pa=.004 placed=surface rate_lb_ac=1",
                    "share=.35 lb_ac=.35 incorporated_times_less=16.67",
                    "[epa-ap42-9.2.2], intermediate",
                    MEMORY)
            .example(
                    "vapour_pressure_pa=3.2 placed=surface rate_lb_ac=3",
                    "share=.58 lb_ac=1.74 incorporated_times_less=11.15",
                    "[epa-ap42-9.2.2], above 0.0001 mmHg",
                    MEMORY)
            .example(
                    "vapour_pressure_pa=.0000385 placed=surface rate_lb_ac=1",
                    "share=unknown",
                    "[epa-ap42-9.2.2]: no factor",
                    MEMORY)
            .example(
                    "vapour_pressure_pa=.0000385 placed=incorporated rate_lb_ac=1",
                    "share=.0027",
                    "[epa-ap42-9.2.2]",
                    MEMORY)
            .model(AirEmission::solveShare);

    private AirEmission() {}

    private static Outputs solveShare(Given given, Working working) {
        double pressure = given.number("vapour_pressure_pa");
        double mmHg = working.line("vapour pressure", pressure / PA_PER_MMHG, "mmHg", "{} ÷ {}", pressure, PA_PER_MMHG);
        int class3 = mmHg < LOW_MMHG ? 0 : mmHg <= HIGH_MMHG ? 1 : 2;
        boolean surface = given.word("placed").equals("surface");
        double share = surface ? SURFACE[class3] : INCORPORATED[class3];
        if (Double.isNaN(share)) {
            working.caution("The table has no factor here: unknown is not nothing.");
            return new Outputs().put("share", "unknown");
        }
        double rate = given.number("rate_lb_ac");
        Outputs outputs = new Outputs()
                .put("share", share)
                .put("lb_ac", working.line("lost to air", rate * share, "lb/ac", "{} × {}", rate, share));
        if (surface) {
            double less = working.line(
                    "times less if worked in",
                    share / INCORPORATED[class3],
                    "",
                    "{} ÷ {}",
                    share,
                    INCORPORATED[class3]);
            outputs.put("incorporated_times_less", less);
        }
        return outputs;
    }
}
