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
 * The share of the applied amount that passes a depth before it breaks down.
 *
 *   travel = L·RF·FC/q;  AF = exp(−ln2·travel/t½)
 *
 *   L  depth [m], > 0;  RF  retardation factor, ≥ 1;  FC  water at field capacity, > 0;  q  net recharge [m/d], > 0
 *   t½  half-life [d], > 0
 *
 * Compares soils and active ingredients. Far too low where cracks and worm holes carry water. Below 1e-12 the answer is
 * the text "< 1e-12": so small a share is a statement about the model, not about the field.
 *
 * Source: Rao, Hornsby & Jessup 1985, Soil Crop Sci. Soc. Fla. Proc. 44:1 (value from memory).
 */
public final class Attenuation {
    private static final double LEAST_SHOWN = 1e-12;

    public static final Figure FIGURE = Figure.declare("attenuation", Subject.FATE)
            .question("What share of the active ingredient passes a depth before it breaks down?")
            .input(Asked.HALF_LIFE)
            .input(number(
                    "retardation", "Retardation factor", "", new Range(1, false, Double.POSITIVE_INFINITY, true), "7"))
            .input(number("depth_m", "Depth", "m", Range.POSITIVE, "1"))
            .input(Asked.FIELD_CAPACITY)
            .input(number("recharge_m_d", "Net recharge", "m/d", Range.POSITIVE, "0.002"))
            .output("factor", "Share that passes the depth", "")
            .output("travel_days", "Days to the depth", "d")
            .formula("days = depth × retardation × field capacity ÷ recharge; share = 0.5^(days ÷ half-life)")
            .source("[rao-1985]", MEMORY)
            .validity("Field capacity and recharge more than 0. A share below 1e-12 is given as the text < 1e-12.")
            .caution("Compares soils and products. Far too low where cracks and worm holes carry water.")
            .example(
                    "half_life_d=90 retardation=1.96 depth_m=1 field_capacity=.25 recharge_m_d=.002",
                    "factor=0.151541 travel_days=245",
                    "picloram",
                    COMPUTED)
            .example(
                    "half_life_d=90 retardation=1.96 depth_m=.5 field_capacity=.25 recharge_m_d=.002",
                    "factor=0.389282",
                    "picloram",
                    COMPUTED)
            .example(
                    "half_life_d=60 retardation=7.0 depth_m=.5 field_capacity=.25 recharge_m_d=.002",
                    "factor=0.00638248",
                    "atrazine",
                    COMPUTED)
            .example(
                    "half_life_d=90 retardation=13.0 depth_m=1 field_capacity=.25 recharge_m_d=.002",
                    "factor=0.00000367059 travel_days=1625",
                    "metolachlor",
                    COMPUTED)
            .example(
                    "half_life_d=60 retardation=481.005 depth_m=1 field_capacity=.25 recharge_m_d=.002",
                    "factor=< 1e-12 travel_days=60126",
                    "trifluralin",
                    COMPUTED)
            .model(Attenuation::solve);

    private Attenuation() {}

    /** Days until a retarded substance reaches a depth [m] under a net recharge [m/d]. */
    public static double travelDays(
            double depthMetres, double retardation, double fieldCapacity, double rechargeMetresPerDay) {
        return depthMetres * retardation * fieldCapacity / rechargeMetresPerDay;
    }

    /** Share left after the days of travel. */
    public static double factor(double travelDays, double halfLifeDays) {
        return Math.pow(2, -travelDays / halfLifeDays);
    }

    private static Outputs solve(Given given, Working working) {
        double halfLife = given.number("half_life_d");
        double depth = given.number("depth_m");
        double retardation = given.number("retardation");
        double water = given.number("field_capacity");
        double recharge = given.number("recharge_m_d");
        double days = working.line(
                "days to the depth",
                travelDays(depth, retardation, water, recharge),
                "d",
                "{} m × {} × {} ÷ {} m/d",
                depth,
                retardation,
                water,
                recharge);
        double halvings = working.line("half-lives on the way", days / halfLife, "", "{} d ÷ {} d", days, halfLife);
        double share = factor(days, halfLife);
        if (share < LEAST_SHOWN) {
            return new Outputs().put("factor", "< 1e-12").put("travel_days", days);
        }
        working.line("share that passes", share, "", "0.5^{}", halvings);
        return new Outputs().put("factor", share).put("travel_days", days);
    }
}
