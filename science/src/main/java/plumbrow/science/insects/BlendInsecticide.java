package plumbrow.science.insects;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether insecticide over a trait crop pays, from its refuge plants and from the chance that the trait has failed.
 *
 *   loss = r·L_r·(1−c) + (1−r)·p·L_t;  net = V·e·loss − C
 *   break-even: V* = C/(e·loss);  L_r* = C/(V·e·r(1−c));  p* = (C/(V·e) − r·L_r·(1−c))/((1−r)·L_t)
 *
 *   r    share of refuge plants [-];  L_r loss on a fully unprotected stand [bu/ac];  rootworm: 0.15·NIS·Y
 *   c    share made up by healthy neighbours [-], 0 by default, 0.2 to 0.3 plausible (common practice)
 *   p    chance, or share of the area, that the trait has failed [-];  L_t loss where it has [bu/ac]
 *   e    efficacy [-];  V price [$/bu];  C cost [$/ac]
 *
 * p* below 0: pays even with a sound trait. Above 1: never pays. Neither is clipped in silence: both are said.
 *
 * Source: weighted mean of refuge and trait plants, common practice.
 */
public final class BlendInsecticide {
    public static final Figure FIGURE = Figure.declare("blend-insecticide", Subject.INSECTS)
            .question(
                    "Does insecticide over a trait crop pay for its refuge plants and for a trait that may have failed?")
            .input(number("refuge_share", "Share of unprotected plants", "", Range.SHARE, "0.05"))
            .input(number(
                    "unprotected_loss_bu_ac", "Loss on a fully unprotected stand", "bu/ac", Range.NOT_NEGATIVE, "40"))
            .input(number("made_up_share", "Share made up by healthy neighbours", "", Range.below(0, 1), "0.25")
                    .orElse("0"))
            .input(number("failure_chance", "Chance that the trait has failed here", "", Range.SHARE, "0.10")
                    .orElse("0"))
            .input(number("failure_loss_bu_ac", "Loss where it has", "bu/ac", Range.NOT_NEGATIVE, "30")
                    .orElse("0"))
            .input(number("price_usd_bu", "Crop price", "$/bu", Range.POSITIVE, "6"))
            .input(number("efficacy", "Share of the loss that the insecticide prevents", "", Range.above(0, 1), "0.75"))
            .input(number("cost_usd_ac", "Cost of the insecticide", "$/ac", Range.NOT_NEGATIVE, "18"))
            .output("loss_bu_ac", "Loss expected without it", "bu/ac")
            .output("loss_usd_ac", "Loss expected without it", "$/ac")
            .output("net_usd_ac", "Left after its cost", "$/ac")
            .sometimes("break_even_price_usd_bu", "Price from which it pays", "$/bu")
            .sometimes(
                    "break_even_unprotected_loss_bu_ac",
                    "Unprotected loss from which it pays for the refuge alone",
                    "bu/ac")
            .sometimes("break_even_failure_chance", "Chance of failure from which it pays", "")
            .formula("loss = r × Lr × (1 − c) + (1 − r) × p × Lt; net = price × efficacy × loss − cost")
            .source("Weighted mean of refuge and trait plants", PRACTICE)
            .validity(
                    "A break-even is given only where its divisor is above 0; a chance below 0 or above 1 is explained in words.")
            .caution(
                    "Adding soil insecticide to rootworm-trait blends did not consistently add yield in trials. Label and grower agreement decide what is allowed.")
            .example(
                    "refuge_share=.05 unprotected_loss_bu_ac=40 price_usd_bu=6 efficacy=1 cost_usd_ac=0",
                    "loss_bu_ac=2.00 loss_usd_ac=12.00",
                    "common practice",
                    PRACTICE)
            .example(
                    "refuge_share=.20 unprotected_loss_bu_ac=40 price_usd_bu=6 efficacy=1 cost_usd_ac=0",
                    "loss_bu_ac=8.00 loss_usd_ac=48.00",
                    "common practice",
                    PRACTICE)
            .example(
                    "refuge_share=.05 unprotected_loss_bu_ac=40 made_up_share=.25 price_usd_bu=6 efficacy=1 cost_usd_ac=0",
                    "loss_bu_ac=1.50 loss_usd_ac=9.00",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 unprotected_loss_bu_ac=40 price_usd_bu=6 efficacy=.75 cost_usd_ac=18",
                    "net_usd_ac=-9.00 break_even_unprotected_loss_bu_ac=80.0 break_even_price_usd_bu=12.00",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.20 unprotected_loss_bu_ac=40 price_usd_bu=6 efficacy=.75 cost_usd_ac=18",
                    "net_usd_ac=18.00 break_even_unprotected_loss_bu_ac=20.0 break_even_price_usd_bu=3.00",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 unprotected_loss_bu_ac=40 failure_chance=.10 failure_loss_bu_ac=30 price_usd_bu=6 efficacy=.75"
                            + " cost_usd_ac=18",
                    "loss_bu_ac=4.85 net_usd_ac=3.83 break_even_price_usd_bu=4.95 break_even_failure_chance=.070",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "refuge_share=.05 unprotected_loss_bu_ac=40 failure_chance=.10 failure_loss_bu_ac=30 price_usd_bu=6 efficacy=.60"
                            + " cost_usd_ac=10",
                    "net_usd_ac=7.46 break_even_price_usd_bu=3.44 break_even_failure_chance=.027",
                    "half rate",
                    COMPUTED)
            .model(BlendInsecticide::solve);

    private BlendInsecticide() {}

    /** Loss expected without insecticide [bu/ac]. */
    public static double lossBuPerAcre(
            double refugeShare, double unprotectedLoss, double madeUpShare, double failureChance, double failureLoss) {
        return refugeShare * unprotectedLoss * (1 - madeUpShare) + (1 - refugeShare) * failureChance * failureLoss;
    }

    private static Outputs solve(Given given, Working working) {
        double r = given.number("refuge_share");
        double unprotected = given.number("unprotected_loss_bu_ac");
        double madeUp = given.number("made_up_share");
        double p = given.number("failure_chance");
        double failed = given.number("failure_loss_bu_ac");
        double price = given.number("price_usd_bu");
        double efficacy = given.number("efficacy");
        double cost = given.number("cost_usd_ac");
        double onRefuge = working.line(
                "loss on refuge plants",
                r * unprotected * (1 - madeUp),
                "bu/ac",
                "{} × {} bu/ac × (1 − {})",
                r,
                unprotected,
                madeUp);
        double onTrait = working.line(
                "loss where the trait failed", (1 - r) * p * failed, "bu/ac", "(1 − {}) × {} × {} bu/ac", r, p, failed);
        double loss = working.line("loss expected", onRefuge + onTrait, "bu/ac", "{} + {} bu/ac", onRefuge, onTrait);
        double money = working.line("in money", loss * price, "$/ac", "{} bu/ac × {} $/bu", loss, price);
        double net = working.line(
                "left after the cost",
                money * efficacy - cost,
                "$/ac",
                "{} $/ac × {} − {} $/ac",
                money,
                efficacy,
                cost);
        Outputs outputs =
                new Outputs().put("loss_bu_ac", loss).put("loss_usd_ac", money).put("net_usd_ac", net);
        if (loss > 0) {
            outputs.put(
                    "break_even_price_usd_bu",
                    working.line(
                            "break-even price",
                            cost / (efficacy * loss),
                            "$/bu",
                            "{} $/ac ÷ ({} × {} bu/ac)",
                            cost,
                            efficacy,
                            loss));
        } else {
            working.caution("With no loss to prevent it never pays, at any price.");
        }
        if (r > 0) {
            outputs.put(
                    "break_even_unprotected_loss_bu_ac",
                    working.line(
                            "unprotected loss that pays for the refuge alone",
                            cost / (price * efficacy * r * (1 - madeUp)),
                            "bu/ac",
                            "{} $/ac ÷ ({} $/bu × {} × {} × (1 − {}))",
                            cost,
                            price,
                            efficacy,
                            r,
                            madeUp));
        }
        if (r < 1 && failed > 0) {
            double chance = working.line(
                    "chance of failure that pays",
                    (cost / (price * efficacy) - onRefuge) / ((1 - r) * failed),
                    "",
                    "({} ÷ ({} × {}) − {}) ÷ ((1 − {}) × {})",
                    cost,
                    price,
                    efficacy,
                    onRefuge,
                    r,
                    failed);
            outputs.put("break_even_failure_chance", chance);
            if (chance < 0) {
                working.caution("Pays on the refuge plants alone, however sound the trait.");
            } else if (chance > 1) {
                working.caution("Never pays at this price, even where the trait has failed for certain.");
            }
        }
        return outputs;
    }
}
