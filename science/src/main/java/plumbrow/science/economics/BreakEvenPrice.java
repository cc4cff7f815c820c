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
 * The crop price at which an extra yield pays for its extra cost.
 *
 *   P* = (k·ΔC/ΔY + h) / s;  with h = 0 and s = k = 1: ΔC / ΔY
 *
 * Symbols as in {@link BreakEvenGain}; ΔY extra yield [bu/ac], more than 0.
 *
 * Source: partial budget, as in pubs.nmsu.edu Guide Z-123.
 */
public final class BreakEvenPrice {
    public static final Figure FIGURE = Figure.declare("break-even-price", Subject.ECONOMICS)
            .question("At what crop price does an extra yield pay for its extra cost?")
            .input(number("extra_cost_usd_ac", "Extra cost", "$/ac", Range.NOT_NEGATIVE, "18"))
            .input(number("gain_bu_ac", "Extra yield", "bu/ac", Range.POSITIVE, "4"))
            .output("price_usd_bu", "Break-even price", "$/bu")
            .formula("price = extra cost ÷ extra yield")
            .source("[new-mexico-z123]", VERIFIED)
            .validity(
                    "Owned or cash-rented ground with no cost per bushel. Without extra yield no price pays: refused.")
            .example(
                    "extra_cost_usd_ac=18 gain_bu_ac=1.5",
                    "price_usd_bu=12.00",
                    "insecticide over a 5 % blend: 18 $/ac saves 1.5 bu/ac",
                    COMPUTED)
            .model(BreakEvenPrice::solve);

    private BreakEvenPrice() {}

    /** ΔC / ΔY [$/bu]. */
    public static double usdPerBu(double extraCostUsdPerAcre, double gainBuPerAcre) {
        return extraCostUsdPerAcre / gainBuPerAcre;
    }

    /** (k·ΔC/ΔY + h) / s [$/bu]. */
    public static double usdPerBu(
            double extraCostUsdPerAcre,
            double gainBuPerAcre,
            double handlingUsdPerBu,
            double cropShare,
            double costShare) {
        return (costShare * extraCostUsdPerAcre / gainBuPerAcre + handlingUsdPerBu) / cropShare;
    }

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("extra_cost_usd_ac");
        double gain = given.number("gain_bu_ac");
        return new Outputs()
                .put(
                        "price_usd_bu",
                        working.line(
                                "break-even price", usdPerBu(cost, gain), "$/bu", "{} $/ac ÷ {} bu/ac", cost, gain));
    }
}
