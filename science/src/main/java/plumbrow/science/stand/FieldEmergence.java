package plumbrow.science.stand;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Plants that come of seeds.
 *
 *   P = S·g·f(S),   f(S) = f₀ − s·(S − S₀), held between 0 and 1
 *
 *   P   plants that live [1000/ac];  S seeds dropped [1000/ac];  g germination on the tag or of the test, 0 to 1
 *   f₀  share of the live seeds that come up and live at the usual rate S₀
 *   s   what that share loses with each 1000 seeds more: corn 0, soybean 0.00172 about 140, wheat 0.00046 about 1000
 *
 * Seedlings of a thick stand crowd one another out: with one share for every rate a thick stand is promised too many plants.
 * The slope is that between two rates of one trial (soybean 100 and 160, wheat 200 and 1000); beyond them f stays as at the
 * nearer of the two. Four states together saw the contrary in soybean, 0.635 at 60 and 0.699 at 180: the slope is contested.
 *
 * Source: soybean strip trial, Illinois Soybean Association 2017; winter wheat, Kansas State 2021; slopes derived. Four
 * states: Suhre et al. 2014, Agron. J.
 */
public enum FieldEmergence {
    CORN("corn", 0, 32, 32, 32),
    SOYBEAN("soybean", 0.00172, 140, 100, 160),
    WHEAT("wheat", 0.00046, 1000, 200, 1000);

    private static final double THOUSAND = 1000;
    private static final double SQUARE_FEET_PER_ACRE = 43_560;
    private static final List<String> CROPS = List.of("corn", "soybean", "wheat");

    public static final Figure FIGURE = Figure.declare("final-stand", Subject.STAND)
            .question("How many plants will live of the seeds dropped?")
            .alsoAsked("What stand does this seeding rate give?")
            .input(word("crop", "Crop", CROPS, "corn"))
            .input(number("seeds_ac", "Seeds dropped on an acre", "seeds/ac", Range.above(0, 3_000_000), "33000"))
            .input(number("germination_pct", "Germination, tag or test", "%", Range.PERCENT, "95"))
            .input(number(
                    "emergence_pct",
                    "Of the live seeds, those that come up and live at the usual rate",
                    "%",
                    Range.PERCENT,
                    "95"))
            .output("plants_ac", "Plants that live", "plants/ac")
            .output("plants_ft2", "Plants on a square foot", "plants/ft²")
            .output("share_pct", "Of the live seeds that came up", "%")
            .formula("plants = seeds × germination × [emergence − slope × (seeds − usual seeds)]")
            .source(
                    "Slopes from two rates of one trial each: soybean, [illinois-soybean-strips]; winter wheat, [kansas-wheat-2021]; derived",
                    PRACTICE)
            .validity(
                    "Slope: soybean 0.172 % per 1000 seeds about 140,000, wheat 0.046 % about 1,000,000, corn none; outside 100,000 to 160,000 and 200,000 to 1,000,000 as at the nearer end.")
            .caution(
                    "Emergence differs between fields by about 5 points in corn, 10 in soybean, 12 in wheat: count the stand.")
            .example(
                    "crop=soybean seeds_ac=100000 germination_pct=100 emergence_pct=86.17",
                    "plants_ac=93050",
                    "[illinois-soybean-strips], lower rate: 93.05",
                    COMPUTED)
            .example(
                    "crop=soybean seeds_ac=160000 germination_pct=100 emergence_pct=86.17",
                    "plants_ac=132368",
                    "[illinois-soybean-strips], higher rate: 132.26 printed, slope rounded",
                    COMPUTED)
            .example(
                    "crop=wheat seeds_ac=1000000 germination_pct=100 emergence_pct=65.85",
                    "plants_ac=658500 plants_ft2=15.12",
                    "[kansas-wheat-2021]",
                    COMPUTED)
            .example(
                    "crop=corn seeds_ac=33000 germination_pct=95 emergence_pct=95",
                    "plants_ac=29783 share_pct=95",
                    "33,000 × 0.95 × 0.95",
                    COMPUTED)
            .model(FieldEmergence::solve);

    private final String crop;
    private final double fallPerThousand;
    private final double usual;
    private final double fewest;
    private final double most;

    FieldEmergence(String crop, double fallPerThousand, double usual, double fewest, double most) {
        this.crop = crop;
        this.fallPerThousand = fallPerThousand;
        this.usual = usual;
        this.fewest = fewest;
        this.most = most;
    }

    /** The crop, as the names of its figures begin. */
    public String cropWord() {
        return crop;
    }

    /** What crowding takes from the share that comes up at this rate [share], below 0 for a thin one; seeds in 1000/ac. */
    public double crowding(double seedsThousand) {
        return fallPerThousand * (Math.max(fewest, Math.min(most, seedsThousand)) - usual);
    }

    /** The seeds about which the share that comes up is meant [1000/ac]. */
    public double usualSeedsThousand() {
        return usual;
    }

    /** Share of the live seeds that come up, 0 to 1, at a rate of so many seeds [1000/ac]. */
    public double share(double usualShare, double seedsThousand) {
        return Math.max(0, Math.min(1, usualShare - crowding(seedsThousand)));
    }

    private static Outputs solve(Given given, Working working) {
        FieldEmergence crop = values()[CROPS.indexOf(given.word("crop"))];
        double seeds = given.number("seeds_ac");
        double germination = given.number("germination_pct");
        double usual = given.number("emergence_pct");
        double counted = Math.max(crop.fewest, Math.min(crop.most, seeds / THOUSAND));
        double share = crop.share(usual / 100, seeds / THOUSAND) * 100;
        if (crop.fallPerThousand > 0 && share > 0 && share < 100) {
            working.line(
                    "of the live seeds that came up",
                    share,
                    "% of seeds",
                    "{} − {} × ({} − {})",
                    usual,
                    crop.fallPerThousand * 100,
                    counted,
                    crop.usual);
            if (counted != seeds / THOUSAND) {
                working.caution("Outside the rates that were tried with " + crop.crop
                        + ": the share of seeds that come up is taken as at the nearer of them.");
            }
        }
        double plants = working.line(
                "plants that live",
                seeds * germination / 100 * share / 100,
                "plants/ac",
                "{} × {} ÷ 100 × {} ÷ 100",
                seeds,
                germination,
                share);
        return new Outputs()
                .put("plants_ac", plants)
                .put(
                        "plants_ft2",
                        working.line(
                                "on a square foot",
                                plants / SQUARE_FEET_PER_ACRE,
                                "plants/ft²",
                                "{} ÷ {}",
                                plants,
                                SQUARE_FEET_PER_ACRE))
                .put("share_pct", share);
    }
}
