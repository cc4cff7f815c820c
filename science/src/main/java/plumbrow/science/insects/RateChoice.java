package plumbrow.science.insects;

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
 * Whether the full or the half rate of an insecticide leaves more.
 *
 *   net = V·e·loss − C for each;  the full rate leaves more only if loss > ΔC/(V·Δe)
 *
 *   loss  expected without insecticide [bu/ac];  V price [$/bu];  e, C efficacy [-] and cost [$/ac] of each rate
 *
 * A tie goes to the lower rate. Whether a reduced rate is allowed and wise is another question.
 *
 * Source: partial budget; field evidence on half rates of soil insecticides: Fuller et al. 1997, J. Econ. Entomol. 90:1332.
 */
public final class RateChoice {
    public static final Figure FIGURE = Figure.declare("rate-choice", Subject.INSECTS)
            .question("Does the full or the half rate of an insecticide leave more?")
            .input(number("loss_bu_ac", "Loss expected without insecticide", "bu/ac", Range.NOT_NEGATIVE, "4.85"))
            .input(number("price_usd_bu", "Crop price", "$/bu", Range.POSITIVE, "6"))
            .input(number("full_efficacy", "Share prevented by the full rate", "", Range.SHARE, "0.75"))
            .input(number("full_cost_usd_ac", "Cost of the full rate", "$/ac", Range.NOT_NEGATIVE, "18"))
            .input(number("half_efficacy", "Share prevented by the half rate", "", Range.SHARE, "0.60"))
            .input(number("half_cost_usd_ac", "Cost of the half rate", "$/ac", Range.NOT_NEGATIVE, "10"))
            .output("full_net_usd_ac", "Left by the full rate", "$/ac")
            .output("half_net_usd_ac", "Left by the half rate", "$/ac")
            .output("difference_usd_ac", "Full less half", "$/ac")
            .sometimes("break_even_loss_bu_ac", "Loss from which the full rate leaves more", "bu/ac")
            .output("better", "Leaves more", "")
            .formula("net = price × efficacy × loss − cost; break-even loss = extra cost ÷ (price × extra efficacy)")
            .source("Partial budget; half rates: [fuller-1997]", VERIFIED)
            .validity(
                    "The break-even is given where the full rate prevents more. A tie goes to the half rate; none wins where both lose.")
            .caution(
                    "A rate below the label needs the label's leave and a look at resistance: guidance on resistance says never cut rates.")
            .example(
                    "loss_bu_ac=4.85 price_usd_bu=6 full_efficacy=.75 full_cost_usd_ac=18 half_efficacy=.60 half_cost_usd_ac=10",
                    "full_net_usd_ac=3.83 half_net_usd_ac=7.46 difference_usd_ac=-3.64 break_even_loss_bu_ac=8.89 better=half",
                    "independent arithmetic",
                    COMPUTED)
            .model(RateChoice::solve);

    private RateChoice() {}

    private static Outputs solve(Given given, Working working) {
        double loss = given.number("loss_bu_ac");
        double price = given.number("price_usd_bu");
        double fullShare = given.number("full_efficacy");
        double fullCost = given.number("full_cost_usd_ac");
        double halfShare = given.number("half_efficacy");
        double halfCost = given.number("half_cost_usd_ac");
        double full = net(working, "full rate", loss, price, fullShare, fullCost);
        double half = net(working, "half rate", loss, price, halfShare, halfCost);
        double difference = working.line("full less half", full - half, "$/ac", "{} − {} $/ac", full, half);
        Outputs outputs = new Outputs()
                .put("full_net_usd_ac", full)
                .put("half_net_usd_ac", half)
                .put("difference_usd_ac", difference);
        if (fullShare > halfShare) {
            outputs.put(
                    "break_even_loss_bu_ac",
                    working.line(
                            "loss from which the full rate leaves more",
                            (fullCost - halfCost) / (price * (fullShare - halfShare)),
                            "bu/ac",
                            "({} − {}) ÷ ({} × ({} − {}))",
                            fullCost,
                            halfCost,
                            price,
                            fullShare,
                            halfShare));
        } else {
            working.caution(
                    "The full rate prevents no more than the half: there is no loss from which it leaves more.");
        }
        String better = Math.max(full, half) <= 0 ? "none" : difference > 0 ? "full" : "half";
        return outputs.put("better", better);
    }

    private static double net(Working working, String rate, double loss, double price, double share, double cost) {
        return working.line(
                "left by the " + rate,
                price * share * loss - cost,
                "$/ac",
                "{} $/bu × {} × {} bu/ac − {} $/ac",
                price,
                share,
                loss,
                cost);
    }
}
