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

/**
 * The break-even gain where crop and cost are shared with a landlord, or each bushel costs drying and haul.
 *
 *   ΔY* = k·ΔC / (s·P − h);  gain in margin = ΔY·(s·P − h) − k·ΔC;  symbols as in {@link BreakEvenGain}
 *
 * Where s·P ≤ h no gain can pay: refused in those words.
 *
 * Source: partial budget, as in pubs.nmsu.edu Guide Z-123.
 */
public final class SharedBreakEven {
    public static final Figure FIGURE = Figure.declare("break-even-gain-shared", Subject.ECONOMICS)
            .question(
                    "How much more yield must an extra cost bring where crop and cost are shared or bushels cost handling?")
            .input(number("extra_cost_usd_ac", "Extra cost", "$/ac", Range.NOT_NEGATIVE, "22"))
            .input(Asked.PRICE)
            .input(Asked.HANDLING)
            .input(Asked.CROP_SHARE)
            .input(Asked.COST_SHARE)
            .output("gain_bu_ac", "Break-even gain", "bu/ac")
            .output("margin_usd_bu", "Left to the operator of each further bushel", "$/bu")
            .formula("gain = cost share × extra cost ÷ (crop share × price − handling)")
            .source("[new-mexico-z123]", VERIFIED)
            .validity(
                    "Crop share × price must be above the handling cost; else no yield gain can pay, and it is refused.")
            .example(
                    "extra_cost_usd_ac=22 price_usd_bu=4.40 handling_usd_bu=.35",
                    "gain_bu_ac=5.432",
                    "own ground",
                    COMPUTED)
            .example(
                    "extra_cost_usd_ac=22 price_usd_bu=4.40 handling_usd_bu=.35 crop_share=.5 cost_share=.5",
                    "gain_bu_ac=5.946",
                    "half of crop and cost",
                    COMPUTED)
            .example(
                    "extra_cost_usd_ac=22 price_usd_bu=4.40 handling_usd_bu=.35 crop_share=.5",
                    "gain_bu_ac=11.892",
                    "half of the crop, all of the cost",
                    COMPUTED)
            .model(SharedBreakEven::solve);

    private SharedBreakEven() {}

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("extra_cost_usd_ac");
        double price = given.number("price_usd_bu");
        double handling = given.number("handling_usd_bu");
        double cropShare = given.number("crop_share");
        double costShare = given.number("cost_share");
        double margin = working.line(
                "left of each further bushel",
                cropShare * price - handling,
                "$/bu",
                "{} × {} $/bu − {} $/bu",
                cropShare,
                price,
                handling);
        if (margin <= 0) {
            throw given.refuse(
                    "handling_usd_bu",
                    "less than crop share × price (" + Numbers.plain(cropShare * price)
                            + " $/bu); as it stands no yield gain can pay");
        }
        double gain = working.line(
                "break-even gain",
                BreakEvenGain.buPerAcre(cost, price, handling, cropShare, costShare),
                "bu/ac",
                "{} × {} $/ac ÷ {} $/bu",
                costShare,
                cost,
                margin);
        return new Outputs().put("gain_bu_ac", gain).put("margin_usd_bu", margin);
    }
}
