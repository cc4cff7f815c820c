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
 * What seed from the own bin costs per acre.
 *
 *   seeds = live seeds wanted / germination
 *   planted = seeds / (seeds per lb × lb per bu);  drawn = planted / (1 − cleanout)
 *   cost = drawn·(bin price + cleaning) + planted·treatment + tests/acres
 *
 * Cleaning is charged on bushels drawn, treatment on cleaned bushels planted. The bin price is what the grain would sell
 * for, net of haul: a sale given up is a cost. Cleanings count nothing. Storage, interest and labour go into cleaning.
 * A stand factor is part of the live seeds wanted, not of germination: never divide by both.
 *
 * Cleanout below 100 %, germination above 0; germination of soybean under about 80 % is not made good by rate alone.
 *
 * Source: cost heads of Walters et al., University of Nebraska 2016 (agprofessional.com); arithmetic, common practice.
 */
public final class SavedSeedCost {
    private static final double WEAK_GERMINATION_PCT = 80;

    public static final Figure FIGURE = Figure.declare("saved-seed-cost", Subject.ECONOMICS)
            .question("What does seed from the own bin cost per acre?")
            .alsoAsked("Is it cheaper to save my own seed?")
            .input(number(
                    "bin_price_usd_bu",
                    "Price the grain would sell for, net of haul",
                    "$/bu",
                    Range.NOT_NEGATIVE,
                    "10.50"))
            .input(number(
                    "cleaning_usd_bu",
                    "Cleaning, storage and labour per bushel drawn",
                    "$/bu",
                    Range.NOT_NEGATIVE,
                    "1.50"))
            .input(number("treatment_usd_bu", "Seed treatment per bushel planted", "$/bu", Range.NOT_NEGATIVE, "6.00"))
            .input(number("cleanout_pct", "Share cleaned out", "%", Range.below(0, 100), "8"))
            .input(number("seeds_lb", "Seeds per pound", "seeds/lb", Range.POSITIVE, "2800"))
            .input(number("lb_bu", "Pounds per bushel", "lb/bu", Range.POSITIVE, "60"))
            .input(number("germination_pct", "Germination, from a test", "%", Range.above(0, 100), "85"))
            .input(number("live_seeds_ac", "Live seeds wanted per acre", "seeds/ac", Range.POSITIVE, "130000"))
            .input(number("tests_usd", "Germination, vigour and trait tests, together", "$", Range.NOT_NEGATIVE, "60")
                    .orElse("0"))
            .input(number("acres", "Acres that share the tests", "ac", Range.POSITIVE, "160")
                    .orElse("1"))
            .output("seeds_ac", "Seeds dropped", "seeds/ac")
            .output("bushels_ac", "Cleaned bushels planted", "bu/ac")
            .output("bushels_drawn_ac", "Bushels drawn from the bin", "bu/ac")
            .output("cost_usd_ac", "Cost of saved seed", "$/ac")
            .formula("cost = drawn × (bin price + cleaning) + planted × treatment + tests ÷ acres")
            .source("Cost heads: [walters-2016]; arithmetic", PRACTICE)
            .validity(
                    "Cleaning on bushels drawn, treatment on bushels planted. Cleanout from 0 to below 100 %, germination above 0.")
            .caution("The right to save this seed comes first: read the bag and the agreement, ask the seller.")
            .caution("Saved hybrid corn is not priced by this: it segregates and yields far less than the hybrid.")
            .example(
                    "bin_price_usd_bu=10.50 cleaning_usd_bu=1.50 treatment_usd_bu=6.00 cleanout_pct=8 seeds_lb=2800 lb_bu=60"
                            + " germination_pct=85 live_seeds_ac=130000 tests_usd=60 acres=160",
                    "seeds_ac=152941 bushels_ac=0.9104 bushels_drawn_ac=0.9895 cost_usd_ac=17.71",
                    "soybean",
                    COMPUTED)
            .example(
                    "bin_price_usd_bu=5.80 cleaning_usd_bu=1.25 treatment_usd_bu=3.50 cleanout_pct=10 seeds_lb=13500 lb_bu=60"
                            + " germination_pct=88 live_seeds_ac=1200000 tests_usd=45 acres=200",
                    "seeds_ac=1363636 bushels_ac=1.6835 bushels_drawn_ac=1.8706 cost_usd_ac=19.30",
                    "wheat",
                    COMPUTED)
            .model(SavedSeedCost::solve);

    private SavedSeedCost() {}

    /** Seeds to drop for the live seeds wanted; germination as a share above 0. */
    public static double seedsPerAcre(double liveSeedsPerAcre, double germination) {
        return liveSeedsPerAcre / germination;
    }

    /** Cost of saved seed [$/ac], without tests. */
    public static double usdPerAcre(
            double plantedBuPerAcre,
            double cleanout,
            double binUsdPerBu,
            double cleaningUsdPerBu,
            double treatmentUsdPerBu) {
        return plantedBuPerAcre / (1 - cleanout) * (binUsdPerBu + cleaningUsdPerBu)
                + plantedBuPerAcre * treatmentUsdPerBu;
    }

    private static Outputs solve(Given given, Working working) {
        double bin = given.number("bin_price_usd_bu");
        double cleaning = given.number("cleaning_usd_bu");
        double treatment = given.number("treatment_usd_bu");
        double cleanout = given.number("cleanout_pct");
        double perLb = given.number("seeds_lb");
        double lbPerBu = given.number("lb_bu");
        double germination = given.number("germination_pct");
        double live = given.number("live_seeds_ac");
        double tests = given.number("tests_usd");
        double acres = given.number("acres");
        double seeds = working.line(
                "seeds dropped",
                seedsPerAcre(live, germination / 100),
                "seeds/ac",
                "{} live seeds/ac ÷ {} %",
                live,
                germination);
        double planted = working.line(
                "cleaned bushels planted",
                seeds / (perLb * lbPerBu),
                "bu/ac",
                "{} seeds/ac ÷ ({} seeds/lb × {} lb/bu)",
                seeds,
                perLb,
                lbPerBu);
        double drawn = working.line(
                "bushels drawn from the bin",
                planted / (1 - cleanout / 100),
                "bu/ac",
                "{} bu/ac ÷ (1 − {} %)",
                planted,
                cleanout);
        double grain = working.line(
                "grain and cleaning",
                drawn * (bin + cleaning),
                "$/ac",
                "{} bu/ac × ({} + {}) $/bu",
                drawn,
                bin,
                cleaning);
        double treated =
                working.line("treatment", planted * treatment, "$/ac", "{} bu/ac × {} $/bu", planted, treatment);
        double tested = working.line("tests", tests / acres, "$/ac", "{} $ ÷ {} ac", tests, acres);
        double cost = working.line(
                "saved seed cost", grain + treated + tested, "$/ac", "{} + {} + {} $/ac", grain, treated, tested);
        if (germination < WEAK_GERMINATION_PCT) {
            working.caution("Germination below 80 %: thin stands and weak vigour are not made good by rate alone.");
        }
        return new Outputs()
                .put("seeds_ac", seeds)
                .put("bushels_ac", planted)
                .put("bushels_drawn_ac", drawn)
                .put("cost_usd_ac", cost);
    }
}
