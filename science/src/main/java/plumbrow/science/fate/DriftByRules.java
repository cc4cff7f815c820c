package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Drift by the European curves for one to eight sprays and from the air, beside EPA's flat shares.
 *
 *   point D = A·x^B;  mean over a width w: A/(w(B+1))·[(x+w)^(B+1) − x^(B+1)]
 *   from the air: 50.47·x^−0.3819 up to 16.2 m, then 281.1·x^−0.9989
 *   EPA's flat screen: 1 % from the ground, 5 % from the air
 *
 * Source: FOCUS Surface Water Appendix B, as in R package pfm (verified); flat shares from memory.
 */
public final class DriftByRules {
    private static final double GROUND_FLAT_PCT = 1;
    private static final double AERIAL_FLAT_PCT = 5;

    public static final Figure REPEATED = Figure.declare("drift-deposit-repeated", Subject.FATE)
            .question("How much of each spray drifts to a distance when the field is sprayed several times?")
            .input(number(
                    "distance_m",
                    "Distance from the edge",
                    "m",
                    Range.closed(DriftCurve.NEAREST_M, DriftCurve.FARTHEST_M),
                    "5"))
            .input(number("applications", "Sprays in the season", "", Range.closed(1, 8), "2")
                    .orElse("1"))
            .input(number("width_m", "Width over which the mean is wanted", "m", Range.above(0, 1000), "1")
                    .orElse("1"))
            .output("deposit_pct", "Deposit of one spray at the distance", "%")
            .output("mean_pct", "Mean deposit over the width from there", "%")
            .output("together_pct", "All sprays together at the distance", "%")
            .formula("deposit = A × distance^B, A and B by the number of sprays; together = sprays × deposit")
            .source("[focus-sw]", VERIFIED)
            .validity(
                    "Ground sprayer in field crops, 1 to 100 m. The percentile of each spray falls from the 90th to the 67th.")
            .caution("European trials with wind up to 5 m/s. The label's buffer is the law.")
            .example(
                    "distance_m=1 applications=1 width_m=1",
                    "deposit_pct=2.7593000 mean_pct=1.9273922 together_pct=2.7593",
                    "[focus-sw]",
                    VERIFIED)
            .example("distance_m=3", "deposit_pct=.9424748 mean_pct=.8160023", "[focus-sw]", VERIFIED)
            .example("distance_m=5", "deposit_pct=.5719342 mean_pct=.5224362", "[focus-sw]", VERIFIED)
            .example("distance_m=3 applications=2", "deposit_pct=.8036556", "[focus-sw]", VERIFIED)
            .example("distance_m=5 applications=2", "deposit_pct=.4797365 together_pct=.959473", "[focus-sw]", VERIFIED)
            .model(DriftByRules::solveRepeated);

    public static final Figure AERIAL = Figure.declare("drift-deposit-air", Subject.FATE)
            .question("How much of a spray from the air drifts to a distance?")
            .input(number(
                    "distance_m",
                    "Distance from the edge",
                    "m",
                    Range.closed(DriftCurve.NEAREST_M, DriftCurve.FARTHEST_M),
                    "10"))
            .output("deposit_pct", "Deposit, share of the field rate", "%")
            .output("times_ground", "Times that of a ground sprayer", "")
            .formula("50.47 × distance^−0.3819 up to 16.2 m, then 281.1 × distance^−0.9989")
            .source("[focus-sw]", VERIFIED)
            .validity("1 to 100 m. At 16.2 m the two parts nearly meet.")
            .caution("Many labels forbid spraying from the air, or ask for wide buffers: they are the law.")
            .example("distance_m=10", "deposit_pct=20.948 times_ground=71.99", "FOCUS parameters by hand", COMPUTED)
            .example("distance_m=50", "deposit_pct=5.646", "281.1 × 50^−0.9989 by hand", COMPUTED)
            .model(DriftByRules::solveAerial);

    public static final Figure FLAT = Figure.declare("drift-flat-share", Subject.FATE)
            .question("Which rate reaches the neighbour by EPA's flat share, and how does the curve compare?")
            .input(Asked.RATE)
            .input(word("from", "Sprayer on the ground or from the air", List.of("ground", "air"), "ground"))
            .input(number(
                    "distance_m",
                    "Distance from the edge",
                    "m",
                    Range.closed(DriftCurve.NEAREST_M, DriftCurve.FARTHEST_M),
                    "5"))
            .output("flat_lb_ac", "By the flat share", "lb/ac")
            .output("curve_lb_ac", "By the curve of one spray", "lb/ac")
            .output("flat_over_curve", "Flat share over curve", "")
            .formula("flat: 1 % ground, 5 % air; curve: FOCUS, one spray")
            .source("screening defaults of [epa-terrestrial]", MEMORY)
            .validity(
                    "The flat share knows no distance; the curve is of European trials. Both are shown, the larger is the careful one.")
            .caution(Asked.SCREEN)
            .example(
                    "rate_lb_ac=1 from=ground distance_m=5",
                    "flat_lb_ac=.01 curve_lb_ac=.005719342 flat_over_curve=1.748",
                    "1 % against pfm's 0.5719342 %",
                    COMPUTED)
            .example("rate_lb_ac=1 from=air distance_m=10", "flat_lb_ac=.05 curve_lb_ac=.20948", "5 %", COMPUTED)
            .model(DriftByRules::solveFlat);

    private DriftByRules() {}

    private static Outputs solveRepeated(Given given, Working working) {
        double distance = given.number("distance_m");
        double sprays = Asked.whole(given, "applications");
        DriftCurve curve = DriftCurve.FOCUS.get((int) sprays - 1);
        double point = working.line(
                "deposit of one spray", curve.pointPct(distance), "", "{} × {}^({})", curve.a(), distance, curve.b());
        double width = given.number("width_m");
        double power = curve.b() + 1;
        double mean = working.line(
                "mean over the width",
                curve.meanPct(distance, width),
                "",
                "{} ÷ ({} × ({})) × (({} + {})^({}) − {}^({}))",
                curve.a(),
                width,
                power,
                distance,
                width,
                power,
                distance,
                power);
        double together = working.line("all sprays together", sprays * point, "", "{} × {}", sprays, point);
        return new Outputs().put("deposit_pct", point).put("mean_pct", mean).put("together_pct", together);
    }

    private static Outputs solveAerial(Given given, Working working) {
        double distance = given.number("distance_m");
        boolean near = distance <= DriftCurve.AERIAL_BEND_M;
        double air = working.line(
                "from the air",
                DriftCurve.aerialPct(distance),
                "",
                near ? "50.47 × {}^(−0.3819)" : "281.1 × {}^(−0.9989)",
                distance);
        double ground = working.line(
                "ground sprayer", DriftCurve.FIELD_CROPS.pointPct(distance), "", "2.7705 × {}^(−0.9787)", distance);
        return new Outputs()
                .put("deposit_pct", air)
                .put(
                        "times_ground",
                        working.line("times that of a ground sprayer", air / ground, "", "{} ÷ {}", air, ground));
    }

    private static Outputs solveFlat(Given given, Working working) {
        boolean air = given.word("from").equals("air");
        double flatPct = air ? AERIAL_FLAT_PCT : GROUND_FLAT_PCT;
        double distance = given.number("distance_m");
        double curvePct =
                air ? DriftCurve.aerialPct(distance) : DriftCurve.FOCUS.get(0).pointPct(distance);
        double rate = given.number("rate_lb_ac");
        double flat = working.line("by the flat share", rate * flatPct / 100, "lb/ac", "{} × {} ÷ 100", rate, flatPct);
        double curve = working.line("by the curve", rate * curvePct / 100, "lb/ac", "{} × {} ÷ 100", rate, curvePct);
        double ratio = working.line("flat over curve", flatPct / curvePct, "", "{} ÷ {}", flatPct, curvePct);
        return new Outputs().put("flat_lb_ac", flat).put("curve_lb_ac", curve).put("flat_over_curve", ratio);
    }
}
