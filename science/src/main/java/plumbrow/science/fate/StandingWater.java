package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Concentration in standing water that the field rate, or a share of it, falls into.
 *
 *   C = rate·453,592,370·fraction / (43,560·depth·28.316847)      [µg/L], depth [ft]
 *
 * Source: arithmetic. The nomograph of Urban & Cook 1986, EPA 540/9-85-001, rounds 735 and 61.3 to 734 and 61 for one
 * pound in 6 in and 6 ft (value from memory); the computed value is ours.
 */
public final class StandingWater {
    private static final String UNIT = "µg/L";

    public static final Figure FIGURE = Figure.declare("standing-water", Subject.FATE)
            .question("How strong is water that the field rate falls into?")
            .input(Asked.RATE)
            .input(number("depth_in", "Depth of the water", "in", Range.POSITIVE, "6"))
            .input(number("fraction", "Share of the rate that reaches the water", "", Range.SHARE, "0.05")
                    .orElse("1"))
            .output("concentration_ug_l", "Concentration", UNIT)
            .formula("concentration = rate × 453,592,370 µg × share ÷ (43,560 ft² × depth in ft × 28.316847 L)")
            .source("Arithmetic; as the nomograph of [urban-cook-1986]", PRACTICE)
            .validity("Mixed at once, no sorption, no flow. A wetland is 6 in deep by convention.")
            .caution(Asked.SCREEN)
            .example("rate_lb_ac=1 depth_in=6", "concentration_ug_l=735.467", "independent arithmetic", COMPUTED)
            .example("rate_lb_ac=1 depth_in=12", "concentration_ug_l=367.733", "independent arithmetic", COMPUTED)
            .example("rate_lb_ac=1 depth_in=24", "concentration_ug_l=183.867", "independent arithmetic", COMPUTED)
            .example("rate_lb_ac=1 depth_in=72", "concentration_ug_l=61.2889", "independent arithmetic", COMPUTED)
            .example("rate_lb_ac=1 depth_in=72", "concentration_ug_l=61", "[urban-cook-1986], nomograph", MEMORY)
            .model(StandingWater::solve);

    private StandingWater() {}

    /** Concentration [µg/L] of a rate [lb/ac] in water of a depth [in]. */
    public static double ugPerLitre(double lbPerAcre, double depthInches, double share) {
        return lbPerAcre * share * FieldRate.UG_PER_LITRE_INCH / depthInches;
    }

    private static Outputs solve(Given given, Working working) {
        double rate = given.number("rate_lb_ac");
        double depth = given.number("depth_in");
        double share = given.number("fraction");
        return new Outputs()
                .put(
                        "concentration_ug_l",
                        working.line(
                                "concentration",
                                ugPerLitre(rate, depth, share),
                                UNIT,
                                "{} lb/ac × 453,592,370 × {} ÷ (43,560 × {} ÷ 12 × 28.316847)",
                                rate,
                                share,
                                depth));
    }
}
