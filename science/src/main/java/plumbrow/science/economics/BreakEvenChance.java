package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How likely a pest must be before insuring against it pays.
 *
 *   p* = ΔC / (L·K·P)
 *
 *   ΔC  cost of the protection [$/ac];  L yield lost if the pest comes unprotected [bu/ac]
 *   K   share of that loss prevented [-], more than 0;  P price [$/bu]
 *
 * Above 1 the protection can't pay at this price, however sure the pest; the number is given as it is.
 *
 * Source: expected loss set equal to cost, common practice.
 */
public final class BreakEvenChance {
    public static final Figure FIGURE = Figure.declare("break-even-chance", Subject.ECONOMICS)
            .question("How likely must the pest be before protection pays?")
            .input(number("cost_usd_ac", "Cost of the protection", "$/ac", Range.NOT_NEGATIVE, "18"))
            .input(number("loss_bu_ac", "Yield lost if the pest comes", "bu/ac", Range.POSITIVE, "14"))
            .input(Asked.PRICE)
            .input(number("control_share", "Share of that loss prevented", "", Range.above(0, 1), "0.85")
                    .orElse("1"))
            .output("chance", "Break-even chance of the pest", "")
            .output("verdict", "In words", "")
            .formula("chance = cost ÷ (loss × share prevented × price)")
            .source("Expected loss set equal to cost", PRACTICE)
            .validity(
                    "One pest, loss and cost known. A chance above 1 is shown as it is and means: never pays at this price.")
            .example(
                    "cost_usd_ac=18 loss_bu_ac=14 price_usd_bu=4.40 control_share=0.85",
                    "chance=0.3438",
                    "independent arithmetic",
                    COMPUTED)
            .model(BreakEvenChance::solve);

    private BreakEvenChance() {}

    /** ΔC / (L·K·P) [-]; above 1 where protection never pays. */
    public static double chance(
            double costUsdPerAcre, double lossBuPerAcre, double controlShare, double priceUsdPerBu) {
        return costUsdPerAcre / (lossBuPerAcre * controlShare * priceUsdPerBu);
    }

    private static Outputs solve(Given given, Working working) {
        double cost = given.number("cost_usd_ac");
        double loss = given.number("loss_bu_ac");
        double control = given.number("control_share");
        double price = given.number("price_usd_bu");
        double saved = working.line(
                "saved if the pest comes",
                loss * control * price,
                "$/ac",
                "{} bu/ac × {} × {} $/bu",
                loss,
                control,
                price);
        double chance = working.line(
                "break-even chance", chance(cost, loss, control, price), "", "{} $/ac ÷ {} $/ac", cost, saved);
        boolean never = chance > 1;
        if (never) {
            working.caution("Never pays at this price: the cost is more than the whole loss that it prevents.");
        }
        return new Outputs()
                .put("chance", chance)
                .put(
                        "verdict",
                        never
                                ? "never pays at this price"
                                : "pays if the pest comes in more than " + Numbers.fixed(chance * 100, 0)
                                        + " years of 100");
    }
}
