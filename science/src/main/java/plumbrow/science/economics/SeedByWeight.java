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
 * Pounds and bushels of a small-grain or soybean seed per acre for the live seeds wanted.
 *
 *   seeds = live seeds / germination;  lb = seeds / seeds per lb;  bu = lb / lb per bu
 *
 * A stand factor (share of live seeds that become plants) may divide once more; give the live seeds wanted, not the plants,
 * and leave it at 1, or give plants and the factor: never both.
 *
 * Source: arithmetic; wheat 11,000 to 14,000 seeds a pound, southeastfarmpress.com.
 */
public final class SeedByWeight {
    public static final Figure FIGURE = Figure.declare("seed-by-weight", Subject.ECONOMICS)
            .question("How many pounds of seed do the wanted live seeds take?")
            .input(number("live_seeds_ac", "Live seeds wanted per acre", "seeds/ac", Range.POSITIVE, "1200000"))
            .input(number("germination_pct", "Germination, from a test", "%", Range.above(0, 100), "88"))
            .input(number("seeds_lb", "Seeds per pound", "seeds/lb", Range.POSITIVE, "13500"))
            .input(number("lb_bu", "Pounds per bushel", "lb/bu", Range.POSITIVE, "60")
                    .orElse("60"))
            .input(number(
                            "stand_share",
                            "Share of live seeds that become plants, where plants were given",
                            "",
                            Range.above(0, 1),
                            "0.9")
                    .orElse("1"))
            .output("seeds_ac", "Seeds dropped", "seeds/ac")
            .output("lb_ac", "Pounds", "lb/ac")
            .output("bu_ac", "Bushels", "bu/ac")
            .formula("lb = live seeds ÷ germination ÷ stand share ÷ seeds per lb; bu = lb ÷ lb per bu")
            .source("Arithmetic; wheat 11,000 to 14,000 seeds a pound: [southeast-wheat-seed]", VERIFIED)
            .validity(
                    "Germination above 0, at most 100 %. Count the seeds of your own lot: size changes with the year.")
            .example(
                    "live_seeds_ac=1200000 germination_pct=88 seeds_lb=13500",
                    "seeds_ac=1363636 bu_ac=1.6835",
                    "wheat",
                    COMPUTED)
            .example(
                    "live_seeds_ac=130000 germination_pct=85 seeds_lb=2800",
                    "seeds_ac=152941 bu_ac=0.9104",
                    "soybean",
                    COMPUTED)
            .model(SeedByWeight::solve);

    private SeedByWeight() {}

    private static Outputs solve(Given given, Working working) {
        double live = given.number("live_seeds_ac");
        double germination = given.number("germination_pct");
        double stand = given.number("stand_share");
        double perLb = given.number("seeds_lb");
        double perBu = given.number("lb_bu");
        double seeds = working.line(
                "seeds dropped",
                SavedSeedCost.seedsPerAcre(live, germination / 100) / stand,
                "seeds/ac",
                "{} live seeds/ac ÷ {} % ÷ {}",
                live,
                germination,
                stand);
        double pounds = working.line("pounds", seeds / perLb, "lb/ac", "{} seeds/ac ÷ {} seeds/lb", seeds, perLb);
        double bushels = working.line("bushels", pounds / perBu, "bu/ac", "{} lb/ac ÷ {} lb/bu", pounds, perBu);
        return new Outputs().put("seeds_ac", seeds).put("lb_ac", pounds).put("bu_ac", bushels);
    }
}
