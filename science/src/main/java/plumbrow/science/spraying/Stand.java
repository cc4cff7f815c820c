package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Seed along the row, seed for a stand, and plants counted.
 *
 *   seeds per ft = seeds/ac·R/522,720;  spacing = 12/that [in];  seeds to plant = stand/(germination·survival)
 *   plants/ac = count on a thousandth of an acre × 1000
 *
 * Assume 10 % of the seed lost where there is no count (Ohio State agcrops.osu.edu/node/4422); Iowa State saw 3 to 7 %.
 *
 * Source: arithmetic, on {@link RowLength}.
 */
public final class Stand {
    private static final double COUNTS_PER_ACRE = 1000;

    public static final Figure SPACING = Figure.declare("seed-spacing", Subject.SPRAYING)
            .question("How far apart does the seed lie in the row?")
            .input(number("seeds_ac", "Seeds dropped on an acre", "seeds/ac", Range.POSITIVE, "32000"))
            .input(Asked.ROW_SPACING)
            .output("seeds_ft", "Seeds on a foot of row", "seeds/ft")
            .output("spacing_in", "From seed to seed", "in")
            .formula("seeds per foot = seeds per acre ÷ (43,560 × 12 ÷ row spacing); spacing = 12 ÷ that")
            .source("Arithmetic", PRACTICE)
            .validity("Single rows.")
            .example(
                    "seeds_ac=32000 row_spacing_in=30",
                    "seeds_ft=1.837 spacing_in=6.53",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "seeds_ac=140000 row_spacing_in=15",
                    "seeds_ft=4.017 spacing_in=2.99",
                    "independent arithmetic",
                    COMPUTED)
            .model(Stand::solveSpacing);

    public static final Figure SEEDING = Figure.declare("seeding-rate", Subject.SPRAYING)
            .question("How many seeds must be dropped for this stand?")
            .alsoAsked("Which population do I plant?")
            .input(number("stand_ac", "Plants wanted at harvest", "plants/ac", Range.POSITIVE, "31000"))
            .input(number("germination_pct", "Germination", "%", Range.above(0, 100), "95"))
            .input(number("survival_pct", "Survival in the field", "%", Range.above(0, 100), "97")
                    .orElse("100"))
            .output("seeds_ac", "Seeds to drop", "seeds/ac")
            .formula("seeds = stand ÷ (germination × survival)")
            .source("Arithmetic; 10 % lost without a count: [ohio-stand]", VERIFIED)
            .validity("Don't count one loss twice: a survival that holds germination goes with germination 100.")
            .example("stand_ac=31000 germination_pct=95", "seeds_ac=32632", "independent arithmetic", COMPUTED)
            .example(
                    "stand_ac=31000 germination_pct=95 survival_pct=97",
                    "seeds_ac=33641",
                    "independent arithmetic",
                    COMPUTED)
            .model(Stand::solveSeeding);

    public static final Figure COUNT = Figure.declare("stand-count", Subject.SPRAYING)
            .question("How many plants an acre do these counts show?")
            .input(list(
                    "counts",
                    "Plants on a thousandth of an acre, at several places",
                    "plants",
                    Range.NOT_NEGATIVE,
                    "28,31,30"))
            .output("plants_ac", "Plants on an acre", "plants/ac")
            .formula("plants = mean count × 1000")
            .source("[tennessee-rows-2011]", VERIFIED)
            .validity("Row measured by row-length. Ten places or more for a decision.")
            .example("counts=28,31,30", "plants_ac=29667", "by hand", COMPUTED)
            .model(Stand::solveCount);

    private Stand() {}

    private static Outputs solveSpacing(Given given, Working working) {
        double seeds = given.number("seeds_ac");
        double feet = RowLength.showFeetPerAcre(working, given.number("row_spacing_in"));
        double perFoot = working.line("on a foot of row", seeds / feet, "seeds/ft", "{} seeds/ac ÷ {}", seeds, feet);
        return new Outputs()
                .put("seeds_ft", perFoot)
                .put("spacing_in", working.line("from seed to seed", 12 / perFoot, "in", "12 ÷ {}", perFoot));
    }

    private static Outputs solveSeeding(Given given, Working working) {
        double stand = given.number("stand_ac");
        double germination = given.number("germination_pct");
        double survival = given.number("survival_pct");
        return new Outputs()
                .put(
                        "seeds_ac",
                        working.line(
                                "seeds to drop",
                                stand / (germination / 100 * survival / 100),
                                "seeds/ac",
                                "{} ÷ ({} ÷ 100 × {} ÷ 100)",
                                stand,
                                germination,
                                survival));
    }

    private static Outputs solveCount(Given given, Working working) {
        double[] counts = given.list("counts");
        double mean = working.step(
                "mean count",
                "(" + Numbers.terms(counts) + ") ÷ " + counts.length,
                Arrays.stream(counts).average().orElseThrow(),
                "plants");
        return new Outputs()
                .put("plants_ac", working.line("on an acre", mean * COUNTS_PER_ACRE, "plants/ac", "{} × 1000", mean));
    }
}
