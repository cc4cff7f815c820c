package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The extra yield that an extra cost must bring before it pays.
 *
 *   ΔY* = k·ΔC / (s·P − h);  with h = 0 and s = k = 1: ΔC / P
 *
 *   ΔC  extra cost [$/ac], product, pass and wheel tracks, less any cost saved
 *   P   price received, futures and basis [$/bu]
 *   h   cost of each further bushel: drying, haul, check-off [$/bu]
 *   s   operator's share of the crop [-];  k operator's share of this cost [-]
 *
 * Where s·P ≤ h no gain can pay and the function has no answer. Costs and gains are per acre, not per bag.
 *
 * Source: partial budget, as in pubs.nmsu.edu Guide Z-123.
 */
public final class BreakEvenGain {
    public static final Figure FIGURE = Figure.declare("break-even-gain", Subject.ECONOMICS)
            .question("How much more yield must an extra cost bring before it pays?")
            .alsoAsked("Does the extra cost of seed, insecticide or spray pay?")
            .input(number("extra_cost_usd_ac", "Extra cost", "$/ac", Range.NOT_NEGATIVE, "18"))
            .input(Asked.PRICE)
            .output("gain_bu_ac", "Break-even gain", "bu/ac")
            .formula("gain = extra cost ÷ price")
            .source("[new-mexico-z123]", VERIFIED)
            .validity(
                    "Owned or cash-rented ground with no cost per bushel. With shares, drying or haul use break-even-gain-shared.")
            .caution("Per acre: turn a saving per bag into dollars per acre first (bag-saving).")
            .example("extra_cost_usd_ac=17 price_usd_bu=5", "gain_bu_ac=3.40", "17.00 $/ac of seed", COMPUTED)
            .example("extra_cost_usd_ac=40 price_usd_bu=5", "gain_bu_ac=8.00", "$40 at $5", PRACTICE)
            .example("extra_cost_usd_ac=40 price_usd_bu=10", "gain_bu_ac=4.00", "$40 at $10", PRACTICE)
            .model(BreakEvenGain::solve);

    private BreakEvenGain() {}

    /** ΔC / P [bu/ac]. */
    public static double buPerAcre(double extraCostUsdPerAcre, double priceUsdPerBu) {
        return extraCostUsdPerAcre / priceUsdPerBu;
    }

    /** k·ΔC / (s·P − h) [bu/ac], for s·P above h. */
    public static double buPerAcre(
            double extraCostUsdPerAcre,
            double priceUsdPerBu,
            double handlingUsdPerBu,
            double cropShare,
            double costShare) {
        return costShare * extraCostUsdPerAcre / (cropShare * priceUsdPerBu - handlingUsdPerBu);
    }

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("extra_cost_usd_ac");
        double price = given.number("price_usd_bu");
        return new Outputs()
                .put(
                        "gain_bu_ac",
                        working.line(
                                "break-even gain", buPerAcre(cost, price), "bu/ac", "{} $/ac ÷ {} $/bu", cost, price));
    }
}
