package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Concentration that drift brings to a ditch, creek or pond beside the field.
 *
 *   C = rate·112,085.116·D/100·(1 − reduction/100) / (depth·1000)      [µg/L]
 *
 *   rate  [lb/ac];  D  mean deposit over the width, or the deposit at the near bank [%];  depth  [m], > 0
 *   reduction  drift class of nozzle and sprayer [%]
 *
 * Upright sides, mixed at once, no flow. Sides that slope at an angle s hold less water: divided by (w − depth/tan s)/w.
 *
 * Source: FOCUS Surface Water §5.4.5 for the mean, checked against R package pfm; curve {@link DriftCurve}.
 */
public final class DriftIntoWater {
    static final double LITRES_PER_M3 = 1000;
    static final Input DEPTH = number("depth_m", "Depth of the water", "m", Range.POSITIVE, "0.3");
    static final Input REDUCTION = number(
                    "reduction_pct", "Drift reduction class of nozzle and sprayer", "%", Range.PERCENT, "50")
            .orElse("0");

    public static final Figure FIGURE = Figure.declare("drift-into-water", Subject.FATE)
            .question("How much does drift bring into the water beside the field?")
            .input(Asked.RATE)
            .input(number(
                    "distance_m",
                    "From the field edge to the near bank",
                    "m",
                    Range.closed(DriftCurve.NEAREST_M, DriftCurve.FARTHEST_M),
                    "10"))
            .input(number("width_m", "Width of the water", "m", Range.above(0, 1000), "3"))
            .input(DEPTH)
            .input(REDUCTION)
            .input(number("bank_slope_deg", "Angle of the banks, 90 for upright", "°", Range.above(0, 90), "45")
                    .orElse("90"))
            .output("concentration_ug_l", "Concentration, mean over the width", "µg/L")
            .output("edge_ug_l", "Concentration at the near bank", "µg/L")
            .formula("concentration = rate × 112,085.116 µg/m² × deposit ÷ (depth × 1000), less the reduction")
            .source("FOCUS Surface Water §5.4.5; curve: " + DriftDeposit.CURVE_SOURCE, MEMORY)
            .validity(
                    "Near bank 1 to 100 m away. Mixed at once, no flow. A reduction class holds at the pressure and boom height of its test.")
            .caution(DriftDeposit.CONDITIONS)
            .caution(DriftDeposit.US_SCREEN)
            .caution("The label's buffer is the law; this may only ask for more.")
            .example(
                    "rate_lb_ac=1 distance_m=1 width_m=1 depth_m=.3",
                    "concentration_ug_l=7.22803 edge_ug_l=10.35106",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 distance_m=5 width_m=1 depth_m=.3",
                    "concentration_ug_l=1.95684 edge_ug_l=2.14241",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1 distance_m=10 width_m=1 depth_m=.3",
                    "concentration_ug_l=1.03721 edge_ug_l=1.08714",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=1.5 distance_m=10 width_m=3 depth_m=.3 reduction_pct=50",
                    "concentration_ug_l=0.715062 edge_ug_l=0.815354",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rate_lb_ac=.75 distance_m=20 width_m=2 depth_m=.5 reduction_pct=75",
                    "concentration_ug_l=0.0592106 edge_ug_l=0.0620611",
                    "independent arithmetic",
                    COMPUTED)
            .model(DriftIntoWater::solve);

    private DriftIntoWater() {}

    /** Concentration [µg/L] of a rate [µg/m²] of which a share [%] falls on water of a depth [m] with upright sides. */
    public static double ugPerLitre(double rateUgPerM2, double depositPct, double depthMetres) {
        return rateUgPerM2 * depositPct / 100 / (depthMetres * LITRES_PER_M3);
    }

    /** Water between sloping banks as a share of that between upright ones; 0 or less where the banks meet first. */
    public static double bankShare(double widthMetres, double depthMetres, double slopeDegrees) {
        return (widthMetres - depthMetres / Math.tan(Math.toRadians(slopeDegrees))) / widthMetres;
    }

    private static Outputs solve(Given given, Working working) {
        double distance = given.number("distance_m");
        double width = given.number("width_m");
        double depth = given.number("depth_m");
        double slope = given.number("bank_slope_deg");
        double edge = DriftDeposit.showDeposit(working, distance);
        double mean = working.line(
                "mean deposit over the width",
                DriftCurve.FIELD_CROPS.meanPct(distance, width),
                "%",
                "2.7705 ÷ ({} × 0.0213) × (({} + {})^0.0213 − {}^0.0213)",
                width,
                distance,
                width,
                distance);
        double banks = 1;
        if (slope < 90) {
            banks = bankShare(width, depth, slope);
            if (banks <= 0) {
                throw given.refuse(
                        "bank_slope_deg",
                        "steeper banks: at this angle they meet above the depth of " + Numbers.plain(depth) + " m");
            }
            working.step(
                    "water between the banks",
                    "share of what upright banks of the same width and depth would hold",
                    banks,
                    "");
        }
        double falls = working.line(
                "rate after the reduction",
                given.number("rate_lb_ac") * FieldRate.UG_PER_M2 * (1 - given.number("reduction_pct") / 100),
                "µg/m²",
                "{} lb/ac × 112,085 × (1 − {} ÷ 100)",
                given.number("rate_lb_ac"),
                given.number("reduction_pct"));
        return new Outputs()
                .put("concentration_ug_l", showWater(working, "concentration, mean", falls, mean, depth, banks))
                .put("edge_ug_l", showWater(working, "concentration at the near bank", falls, edge, depth, banks));
    }

    private static double showWater(
            Working working, String label, double falls, double deposit, double depth, double banks) {
        return working.line(
                label,
                ugPerLitre(falls, deposit, depth) / banks,
                "µg/L",
                "{} µg/m² × {} ÷ 100 ÷ ({} m × 1000) ÷ {}",
                falls,
                deposit,
                depth,
                banks);
    }
}
