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
 * What bought seed costs per acre.
 *
 *   cost = price per unit / seeds per unit × seeds per acre;  acres per unit = seeds per unit / seeds per acre
 *
 * Common units: corn 80,000 kernels, soybean 140,000 seeds (common practice); wheat 11,000 to 14,000 seeds a pound
 * (southeastfarmpress.com). All inputs more than 0 except the price, which may be 0.
 */
public final class SeedCost {
    public static final Figure FIGURE = Figure.declare("seed-cost", Subject.ECONOMICS)
            .question("What does bought seed cost per acre?")
            .input(number(
                    "price_usd_unit", "Price of a bag or unit, after discounts", "$/unit", Range.NOT_NEGATIVE, "300"))
            .input(number("seeds_per_unit", "Seeds in a bag or unit", "seeds/unit", Range.POSITIVE, "80000"))
            .input(number("seeds_ac", "Seeds dropped per acre", "seeds/ac", Range.POSITIVE, "34000"))
            .output("cost_usd_ac", "Seed cost", "$/ac")
            .output("acres_per_unit", "Acres a unit plants", "ac/unit")
            .formula("cost = price ÷ seeds per unit × seeds per acre")
            .source("Arithmetic; common units of corn 80,000 and soybean 140,000 seeds", PRACTICE)
            .validity("Seeds dropped, not plants wanted. Every number more than 0; a price of 0 is allowed.")
            .example(
                    "price_usd_unit=300 seeds_per_unit=80000 seeds_ac=34000",
                    "cost_usd_ac=127.50 acres_per_unit=2.353",
                    "corn",
                    COMPUTED)
            .example(
                    "price_usd_unit=58 seeds_per_unit=140000 seeds_ac=150000", "cost_usd_ac=62.14", "soybean", COMPUTED)
            .model(SeedCost::solve);

    private SeedCost() {}

    /** Cost of seed [$/ac]. */
    public static double usdPerAcre(double priceUsdPerUnit, double seedsPerUnit, double seedsPerAcre) {
        return priceUsdPerUnit / seedsPerUnit * seedsPerAcre;
    }

    /** Acres that one unit plants. */
    public static double acresPerUnit(double seedsPerUnit, double seedsPerAcre) {
        return seedsPerUnit / seedsPerAcre;
    }

    private static Outputs solve(Given given, Working working) {
        double price = given.number("price_usd_unit");
        double perUnit = given.number("seeds_per_unit");
        double seeds = given.number("seeds_ac");
        double acres = working.line(
                "acres per unit", acresPerUnit(perUnit, seeds), "ac", "{} seeds/unit ÷ {} seeds/ac", perUnit, seeds);
        double cost = working.line(
                "seed cost",
                usdPerAcre(price, perUnit, seeds),
                "$/ac",
                "{} $/unit ÷ {} seeds/unit × {} seeds/ac",
                price,
                perUnit,
                seeds);
        return new Outputs().put("cost_usd_ac", cost).put("acres_per_unit", acres);
    }
}
