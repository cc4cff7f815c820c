package plumbrow.science.economics;

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
 * What a saving per bag of seed means in bushels, per bag and per acre.
 *
 *   per bag ΔB / P bu;  per acre ΔB / (seeds per bag / seeds per acre) $, and that / P bu
 *
 * "$40 a bag is 8 bushels" is per bag. A corn bag plants more than two acres, so it is less than half of that per acre.
 *
 * Source: arithmetic; the trap is from practice.
 */
public final class BagSaving {
    public static final Figure FIGURE = Figure.declare("bag-saving", Subject.ECONOMICS)
            .question("How many bushels is a saving on a bag of seed worth, per bag and per acre?")
            .input(number("saving_usd_bag", "Saved on a bag", "$/bag", Range.NOT_NEGATIVE, "40"))
            .input(Asked.PRICE)
            .input(number("seeds_per_bag", "Seeds in a bag", "seeds/bag", Range.POSITIVE, "80000")
                    .orElse("80000"))
            .input(number("seeds_ac", "Seeds dropped per acre", "seeds/ac", Range.POSITIVE, "34000")
                    .orElse("34000"))
            .output("bu_bag", "Bushels that pay the saving, per bag", "bu/bag")
            .output("acres_bag", "Acres a bag plants", "ac/bag")
            .output("saving_usd_ac", "Saved per acre", "$/ac")
            .output("bu_ac", "Bushels that pay the saving, per acre", "bu/ac")
            .formula("per bag: saving ÷ price; per acre: saving ÷ acres a bag plants, ÷ price")
            .source("Arithmetic", PRACTICE)
            .validity(
                    "Price, seeds per bag and seeds per acre above 0. Defaults are corn: 80,000 in a bag, 34,000 per acre.")
            .caution(
                    "Ask whether a price or a saving is per bag or per acre before you compare it with bushels per acre.")
            .example(
                    "saving_usd_bag=40 price_usd_bu=5",
                    "bu_bag=8.00 acres_bag=2.353 saving_usd_ac=17.00 bu_ac=3.40",
                    "independent arithmetic",
                    COMPUTED)
            .example("saving_usd_bag=40 price_usd_bu=10", "bu_bag=4.00 bu_ac=1.70", "independent arithmetic", COMPUTED)
            .model(BagSaving::solve);

    private BagSaving() {}

    private static Outputs solve(Given given, Working working) {
        double saving = given.number("saving_usd_bag");
        double price = given.number("price_usd_bu");
        double perBag = given.number("seeds_per_bag");
        double perAcre = given.number("seeds_ac");
        double buBag = working.line("bushels per bag", saving / price, "bu/bag", "{} $/bag ÷ {} $/bu", saving, price);
        double acres = working.line(
                "acres a bag plants",
                SeedCost.acresPerUnit(perBag, perAcre),
                "ac/bag",
                "{} seeds/bag ÷ {} seeds/ac",
                perBag,
                perAcre);
        double usdAcre = working.line("saved per acre", saving / acres, "$/ac", "{} $/bag ÷ {} ac/bag", saving, acres);
        double buAcre = working.line(
                "bushels per acre",
                BreakEvenGain.buPerAcre(usdAcre, price),
                "bu/ac",
                "{} $/ac ÷ {} $/bu",
                usdAcre,
                price);
        return new Outputs()
                .put("bu_bag", buBag)
                .put("acres_bag", acres)
                .put("saving_usd_ac", usdAcre)
                .put("bu_ac", buAcre);
    }
}
