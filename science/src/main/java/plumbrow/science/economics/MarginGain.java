package plumbrow.science.economics;

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
 * What an extra yield leaves after its extra cost, and what each dollar spent brings back.
 *
 *   ΔM = ΔY·(s·P − h) − k·ΔC;  return per dollar = ΔY·(s·P − h)/(k·ΔC), only where k·ΔC is above 0
 *
 * Symbols as in {@link BreakEvenGain}; ΔY and ΔC may be negative. A program that is cheaper has no return per dollar: it is
 * compared by ΔM alone.
 *
 * Source: partial budget, as in pubs.nmsu.edu Guide Z-123.
 */
public final class MarginGain {
    public static final Figure FIGURE = Figure.declare("margin-gain", Subject.ECONOMICS)
            .question("What does an extra yield leave after its extra cost?")
            .input(number("gain_bu_ac", "Extra yield; negative is a loss", "bu/ac", Range.ANY, "8"))
            .input(number("extra_cost_usd_ac", "Extra cost; negative is a saving", "$/ac", Range.ANY, "22"))
            .input(Asked.PRICE)
            .input(Asked.HANDLING)
            .input(Asked.CROP_SHARE)
            .input(Asked.COST_SHARE)
            .output("margin_usd_ac", "Gain in margin", "$/ac")
            .sometimes("return_per_dollar", "Brought back by each dollar spent", "$/$")
            .formula("gain in margin = gain × (crop share × price − handling) − cost share × extra cost")
            .source("[new-mexico-z123]", VERIFIED)
            .validity("The return per dollar is given only where the operator's extra cost is above 0.")
            .example(
                    "gain_bu_ac=-1 extra_cost_usd_ac=-4 price_usd_bu=3",
                    "margin_usd_ac=1.00",
                    "drop rootworm trait ($20), add insecticide ($16), lose 1 bu at $3",
                    COMPUTED)
            .example(
                    "gain_bu_ac=-2 extra_cost_usd_ac=-4 price_usd_bu=3",
                    "margin_usd_ac=-2.00",
                    "drop rootworm trait ($20), add insecticide ($16), lose 2 bu at $3",
                    COMPUTED)
            .example(
                    "gain_bu_ac=5.432 extra_cost_usd_ac=22 price_usd_bu=4.40 handling_usd_bu=.35",
                    "margin_usd_ac=0.00 return_per_dollar=1.000",
                    "at the break-even of an extra 22 $/ac, price 4.40 less 0.35 a bushel, nothing is left",
                    COMPUTED)
            .model(MarginGain::solve);

    private MarginGain() {}

    private static Outputs solve(Given given, Working working) {
        double gain = given.number("gain_bu_ac");
        double price = given.number("price_usd_bu");
        double handling = given.number("handling_usd_bu");
        double cropShare = given.number("crop_share");
        double perBushel = working.line(
                "left of each further bushel",
                cropShare * price - handling,
                "$/bu",
                "{} × {} $/bu − {} $/bu",
                cropShare,
                price,
                handling);
        double in = working.line("brought in", gain * perBushel, "$/ac", "{} bu/ac × {} $/bu", gain, perBushel);
        double cost = working.line(
                "operator's extra cost",
                given.number("cost_share") * given.number("extra_cost_usd_ac"),
                "$/ac",
                "{} × {} $/ac",
                given.number("cost_share"),
                given.number("extra_cost_usd_ac"));
        Outputs outputs = new Outputs()
                .put("margin_usd_ac", working.line("gain in margin", in - cost, "$/ac", "{} − {} $/ac", in, cost));
        if (cost > 0) {
            outputs.put(
                    "return_per_dollar",
                    working.line("return per dollar", in / cost, "$/$", "{} $/ac ÷ {} $/ac", in, cost));
        } else {
            working.caution("The program costs no more than the other: compare by the gain in margin, not per dollar.");
        }
        return outputs;
    }
}
