package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What the unprotected plants of a refuge lose, spread over every acre.
 *
 *   loss = f·L [bu/ac];  f·L·P [$/ac]
 *
 *   f  share of refuge plants or acres [-];  L loss on a fully unprotected stand [bu/ac];  P price [$/bu]
 *
 * Neighbours make up nothing in this form; insecticide over a blend is weighed in blend-insecticide.
 */
public final class RefugeLoss {
    public static final Figure FIGURE = Figure.declare("refuge-loss", Subject.ECONOMICS)
            .question("What do the unprotected refuge plants cost per acre?")
            .input(number("refuge_pct", "Refuge plants or acres", "%", Range.PERCENT, "5"))
            .input(number(
                    "unprotected_loss_bu_ac", "Yield lost where nothing protects", "bu/ac", Range.NOT_NEGATIVE, "40"))
            .input(Asked.PRICE)
            .output("loss_bu_ac", "Yield lost, over all acres", "bu/ac")
            .output("loss_usd_ac", "Money lost, over all acres", "$/ac")
            .formula("loss = refuge share × unprotected loss; × price in $")
            .source("Weighted mean of refuge and trait plants", PRACTICE)
            .validity("Trait plants lose nothing, neighbours make up nothing. Shares from 0 to 100 %.")
            .caution(
                    "The refuge is owed under the seed agreement whatever it costs: this prices it, it does not question it.")
            .example(
                    "refuge_pct=5 unprotected_loss_bu_ac=40 price_usd_bu=6",
                    "loss_bu_ac=2.00 loss_usd_ac=12.00",
                    "40 bu on 1 plant in 20",
                    PRACTICE)
            .example(
                    "refuge_pct=20 unprotected_loss_bu_ac=40 price_usd_bu=6",
                    "loss_bu_ac=8.00 loss_usd_ac=48.00",
                    "common practice",
                    PRACTICE)
            .model(RefugeLoss::solve);

    private RefugeLoss() {}

    /** f·L [bu/ac]. */
    public static double buPerAcre(double refugeShare, double unprotectedLossBuPerAcre) {
        return refugeShare * unprotectedLossBuPerAcre;
    }

    private static Outputs solve(Given given, Working working) {
        double refuge = given.number("refuge_pct");
        double unprotected = given.number("unprotected_loss_bu_ac");
        double price = given.number("price_usd_bu");
        double bushels = working.line(
                "yield lost", buPerAcre(refuge / 100, unprotected), "bu/ac", "{} % × {} bu/ac", refuge, unprotected);
        double dollars = working.line("money lost", bushels * price, "$/ac", "{} bu/ac × {} $/bu", bushels, price);
        return new Outputs().put("loss_bu_ac", bushels).put("loss_usd_ac", dollars);
    }
}
