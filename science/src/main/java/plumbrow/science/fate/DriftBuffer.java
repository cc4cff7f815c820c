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
 * How far from the edge a deposit, or a concentration in water, has fallen to a limit; and what a neighbour's crop gets.
 *
 *   x = (p/2.7705)^(1/−0.9787);  for water p = L·depth·1000·100/(rate·112,085.116·(1 − reduction/100))
 *
 *   p  deposit [%];  L  limit [µg/L];  x  [m], from 1, where the curve begins, to 100, where it ends
 *
 * Beyond 100 m the answer is in words: no buffer in the valid range. Curve: {@link DriftCurve}.
 */
public final class DriftBuffer {
    private static final String NONE = "no buffer in the valid range";
    private static final String LABEL = "The label's buffer is the law; this may only ask for more.";

    public static final Figure FIGURE = Figure.declare("drift-buffer", Subject.FATE)
            .question("How far from the edge has the drift fallen to a share of the rate?")
            .alsoAsked("How wide a buffer does drift need?")
            .input(number("limit_pct", "Deposit allowed, share of the field rate", "%", Range.above(0, 100), "0.5"))
            .output("buffer_m", "Buffer", "m")
            .formula("buffer = (limit ÷ 2.7705)^(−1 ÷ 0.9787)")
            .source(DriftDeposit.CURVE_SOURCE, MEMORY)
            .validity("From 1 m, where the curve begins. Beyond 100 m: the words no buffer in the valid range.")
            .caution(DriftDeposit.CONDITIONS)
            .caution(LABEL)
            .example("limit_pct=.1", "buffer_m=29.7820", "independent arithmetic", COMPUTED)
            .example("limit_pct=.5", "buffer_m=5.75137", "independent arithmetic", COMPUTED)
            .example("limit_pct=.01", "buffer_m=no buffer in the valid range", "beyond 100 m", COMPUTED)
            .model(DriftBuffer::solve);

    public static final Figure WATER = Figure.declare("water-buffer", Subject.FATE)
            .question("How far from water must the edge stay for a limit in it?")
            .input(number("limit_ug_l", "Concentration allowed at the near bank", "µg/L", Range.POSITIVE, "0.5"))
            .input(number("rate_lb_ac", "Rate of active ingredient", "lb/ac", Range.POSITIVE, "1"))
            .input(DriftIntoWater.DEPTH)
            .input(DriftIntoWater.REDUCTION)
            .output("buffer_m", "Buffer", "m")
            .output("limit_pct", "Deposit allowed", "%")
            .formula("deposit allowed = limit × depth × 1000 × 100 ÷ (rate × 112,085.116), then as drift-buffer")
            .source(DriftDeposit.CURVE_SOURCE, MEMORY)
            .validity(
                    "Near-bank form, upright sides, mixed at once. Beyond 100 m: the words no buffer in the valid range.")
            .caution(DriftDeposit.CONDITIONS)
            .caution(LABEL)
            .example("limit_ug_l=.5 rate_lb_ac=1 depth_m=.3", "buffer_m=22.1134", "independent arithmetic", COMPUTED)
            .model(DriftBuffer::solveWater);

    public static final Figure NEIGHBOUR = Figure.declare("neighbour-dose", Subject.FATE)
            .question("Which rate does the crop beside the field get?")
            .input(number("rate", "Rate on the field, in any unit of area", "", Range.NOT_NEGATIVE, "560"))
            .input(DriftDeposit.DISTANCE)
            .output("dose", "Rate on the neighbour's crop, in the unit given", "")
            .formula("dose = rate × 2.7705 % × distance^(−0.9787)")
            .source(DriftDeposit.CURVE_SOURCE, MEMORY)
            .validity(
                    "1 to 100 m. Compare with the lowest rate that harms that crop; vapour and inversions are not in it.")
            .caution(DriftDeposit.CONDITIONS)
            .example("rate=560 distance_m=10", "dose=1.62947", "independent arithmetic, g/ha", COMPUTED)
            .model(DriftBuffer::solveNeighbour);

    private DriftBuffer() {}

    private static Outputs solve(Given given, Working working) {
        Outputs outputs = new Outputs();
        putBuffer(outputs, working, given.number("limit_pct"));
        return outputs;
    }

    private static Outputs solveWater(Given given, Working working) {
        double limit = given.number("limit_ug_l");
        double rate = given.number("rate_lb_ac");
        double depth = given.number("depth_m");
        double reduction = given.number("reduction_pct");
        if (reduction == 100) {
            throw given.refuse("reduction_pct", "less than 100: with no drift at all there is nothing to ask");
        }
        double deposit = working.line(
                "deposit allowed",
                limit / DriftIntoWater.ugPerLitre(rate * FieldRate.UG_PER_M2 * (1 - reduction / 100), 1, depth),
                "%",
                "{} µg/L × {} m × 1000 × 100 ÷ ({} lb/ac × 112,085 × (1 − {} ÷ 100))",
                limit,
                depth,
                rate,
                reduction);
        Outputs outputs = new Outputs();
        putBuffer(outputs, working, deposit);
        return outputs.put("limit_pct", deposit);
    }

    private static void putBuffer(Outputs outputs, Working working, double pct) {
        double metres = working.line(
                "distance on the curve", DriftCurve.FIELD_CROPS.metresTo(pct), "m", "({} ÷ 2.7705)^(−1 ÷ 0.9787)", pct);
        if (metres > DriftCurve.FARTHEST_M) {
            outputs.put("buffer_m", NONE);
        } else if (metres < DriftCurve.NEAREST_M) {
            outputs.put("buffer_m", working.line("buffer", DriftCurve.NEAREST_M, "m", "1, where the curve begins"));
        } else {
            outputs.put("buffer_m", metres);
        }
    }

    private static Outputs solveNeighbour(Given given, Working working) {
        double rate = given.number("rate");
        double deposit = DriftDeposit.showDeposit(working, given.number("distance_m"));
        return new Outputs()
                .put("dose", working.line("dose", rate * deposit / 100, "", "{} × {} ÷ 100", rate, deposit));
    }
}
