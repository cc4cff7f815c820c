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
 * The seeding rate that pays best: the last plant just pays for the seeds that made it, dY/dP·V = cs/e.
 *
 *   corn            P* = Pm − 100·cs/(2·q·e·V·Y),  q = 0.07737·(30.33/Pm)²
 *   soybean, wheat  P* = (1/k)·ln(k·Y·V·e/cs), none where the logarithm is below 0;  S* = P* ÷ e
 *
 *   Y bu/ac at a full stand;  V net price [$/bu]: price less what rises with each bushel;  cs seed price [$ per 1000]
 *   e share of the seeds that become plants;  k 0.03909 per 1000 plants in soybean, 0.201 per plant/ft² in wheat
 *
 * More with higher V, Y and e, less with dearer seed; free seed gives the agronomic optimum. The risk of poor emergence raises
 * it: the comparison takes that in by its draws.
 *
 * Source: marginal arithmetic on the responses of this subject.
 */
public final class BestSeedingRate {
    private static final List<String> CROPS = List.of("corn", "soybean", "wheat");
    private static final double SQUARE_FEET = 43.560;

    public static final Figure FIGURE = Figure.declare("best-seeding-rate", Subject.STAND)
            .question("Which seeding rate pays best?")
            .alsoAsked("How thick do I plant?")
            .input(word("crop", "Crop", CROPS, "corn"))
            .input(number("seed_usd_thousand", "Price of 1000 seeds", "$", Range.POSITIVE, "3.75"))
            .input(number("emerged_share", "Share of the seeds that become plants", "", Range.above(0, 1), "0.95"))
            .input(number("price_usd_bu", "Net price received", "$/bu", Range.POSITIVE, "4.50"))
            .input(number("yield_bu_ac", "Yield at a full stand", "bu/ac", Range.POSITIVE, "200"))
            .input(number("best_plants_ac", "Best stand of corn", "plants/ac", Range.closed(12_000, 48_000), "30330")
                    .orElse("30330"))
            .output("plants_k_ac", "Stand that pays best", "1000/ac")
            .output("seeds_k_ac", "Seeds to drop", "1000/ac")
            .sometimes("gain_usd_ac", "Gained over the stand of the highest yield", "$/ac")
            .formula("corn: best − 100 cs ÷ (2 q e V Y); else ln(k Y V e ÷ cs) ÷ k; seeds = plants ÷ e")
            .source("Marginal arithmetic on the responses of this subject", PRACTICE)
            .validity(
                    "Within the range of the response. The gain is given for corn. Round to what the planter sets, never below a replant threshold.")
            .caution(
                    "Treatment and vigour raise the share that comes up: expect 15 % about the answer for soybean and wheat.")
            .example(
                    "crop=corn seed_usd_thousand=3.75 emerged_share=.95 price_usd_bu=4.50 yield_bu_ac=200",
                    "plants_k_ac=27.49 seeds_k_ac=28.94 gain_usd_ac=5.59",
                    "check 1g",
                    COMPUTED)
            .example(
                    "crop=corn seed_usd_thousand=4.50 emerged_share=.90 price_usd_bu=4 yield_bu_ac=150",
                    "plants_k_ac=24.94 seeds_k_ac=27.71",
                    "check 1h",
                    COMPUTED)
            .example(
                    "crop=soybean seed_usd_thousand=.414 emerged_share=.80 price_usd_bu=11 yield_bu_ac=60",
                    "plants_k_ac=100.0 seeds_k_ac=125.0",
                    "check 1i",
                    COMPUTED)
            .example(
                    "crop=soybean seed_usd_thousand=.50 emerged_share=.75 price_usd_bu=10 yield_bu_ac=55",
                    "plants_k_ac=88.9 seeds_k_ac=118.5",
                    "check 1j",
                    COMPUTED)
            .example(
                    "crop=wheat seed_usd_thousand=.020 emerged_share=.80 price_usd_bu=5.50 yield_bu_ac=80",
                    "plants_k_ac=953 seeds_k_ac=1191",
                    "check 1m, 21.88 plants/ft²",
                    COMPUTED)
            .model(BestSeedingRate::solve);

    private BestSeedingRate() {}

    private static Outputs solve(Given given, Working working) {
        double seed = given.number("seed_usd_thousand");
        double emerged = given.number("emerged_share");
        double worth = given.number("price_usd_bu") * given.number("yield_bu_ac");
        return given.word("crop").equals("corn")
                ? corn(given, working, seed, emerged, worth)
                : levelling(given, working, seed, emerged, worth);
    }

    private static Outputs corn(Given given, Working working, double seed, double emerged, double worth) {
        double best = given.number("best_plants_ac") / 1000;
        double curvature =
                CornResponse.CURVATURE * (CornResponse.BEST_THOUSAND / best) * (CornResponse.BEST_THOUSAND / best);
        double fewer = working.line(
                "fewer plants than the best stand",
                100 * seed / (2 * curvature * emerged * worth),
                "thousand",
                "100 × {} ÷ (2 × {} × {} × {})",
                seed,
                curvature,
                emerged,
                worth);
        double plants = best - fewer;
        if (plants < CornResponse.FEWEST_THOUSAND) {
            throw given.refuse(
                    "seed_usd_thousand",
                    "a price at which 10,000 plants or more pay, where the response begins; here seed is dearer than that");
        }
        Outputs outputs = seeds(working, plants, emerged);
        return outputs.put(
                "gain_usd_ac",
                working.line(
                        "gained over the best stand",
                        fewer / emerged * seed - curvature * fewer * fewer / 100 * worth,
                        "$/ac",
                        "{} ÷ {} × {} − {} × {}² ÷ 100 × {}",
                        fewer,
                        emerged,
                        seed,
                        curvature,
                        fewer,
                        worth));
    }

    private static Outputs levelling(Given given, Working working, double seed, double emerged, double worth) {
        boolean wheat = given.word("crop").equals("wheat");
        double k = wheat ? WheatResponse.PER_PLANT / SQUARE_FEET : SoybeanResponse.PER_THOUSAND;
        double ratio = working.line(
                "what the first plants bring over what they cost",
                k * worth * emerged / seed,
                "",
                "{} × {} × {} ÷ {}",
                k,
                worth,
                emerged,
                seed);
        if (ratio <= 1) {
            working.caution("Seed costs more than its first plant brings: at these prices no rate pays.");
            return new Outputs().put("plants_k_ac", 0).put("seeds_k_ac", 0);
        }
        double plants = working.line(
                "stand that pays best", Math.log(ratio) / k, "thousand plants/ac", "ln({}) ÷ {}", ratio, k);
        return seeds(working, plants, emerged);
    }

    private static Outputs seeds(Working working, double plants, double emerged) {
        return new Outputs()
                .put("plants_k_ac", plants)
                .put(
                        "seeds_k_ac",
                        working.line("seeds to drop", plants / emerged, "1000/ac", "{} ÷ {}", plants, emerged));
    }
}
