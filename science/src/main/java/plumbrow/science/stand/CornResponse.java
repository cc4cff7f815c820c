package plumbrow.science.stand;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Corn yield by final stand and planting date.
 *
 *   the table's own fit    r(P, D) = 15.01 + 4.693·P − 0.07737·P² + 1.0109·D − 0.01851·D²
 *   about another optimum  r(P, D) = 100 − c·0.07737·(30.33/Pm)²·(P − Pm)² − t·0.01851·(D − 27.31)²
 *
 *   r   % of the yield at the best stand and date;  P plants that live [1000/ac];  D days after 1 April
 *   Pm  the best stand [1000/ac]; with it the curvature falls as 1/Pm²
 *   c   how sharply too few or too many plants cost, t how sharply a wrong date does; 1 as in the table
 *
 * Least squares on the 182 cells of the table, which is additive: a thin stand costs the same points on every date. Fit error
 * 0.29 points; after rounding 98.9 % of the cells agree and all lie within 1. P 10 to 36 (10 to 1.25 Pm about another optimum),
 * D 9 to 69, 10 April to 9 June. Where draws go beyond: below 10,000 plants in proportion to the plants, above 1.25 Pm as there.
 *
 * Iowa's tables fall far more sharply (20,000 plants 81 %, here 91.7 %): c from 0.6 to 2.3 holds both. Newer hybrids have
 * their best stand higher, poor or dry ground lower.
 *
 * Source: table of Nafziger 1994, J. Prod. Agric. 7:59, as printed by Purdue 2012; fit derived; Pm scaling common practice.
 */
public final class CornResponse {
    /** The best stand of the table [1000/ac]. */
    public static final double BEST_THOUSAND = 30.33;

    /** The fewest plants of the table [1000/ac]. */
    public static final double FEWEST_THOUSAND = 10;

    /** The most plants for which the curve is read, as a multiple of the best stand. */
    public static final double MOST_OF_BEST = 1.25;

    /** First and last day of the table, in days after 1 April. */
    public static final int FIRST_DAY = 9;

    public static final int LAST_DAY = 69;
    static final double LEVEL = 15.01;
    static final double PER_PLANT = 4.693;
    static final double CURVATURE = 0.07737;
    private static final double PER_DAY = 1.0109;
    private static final double DAY_CURVATURE = 0.01851;
    private static final double BEST_DAY = PER_DAY / (2 * DAY_CURVATURE);
    private static final double MOST_OF_TABLE = 36;
    static final String DATES = "a date from 10 April to 9 June, such as 2026-05-20";

    public static final Figure FIGURE = Figure.declare("corn-stand-response", Subject.STAND)
            .question("What share of its best yield does corn bring with so many plants, planted on that day?")
            .alsoAsked("What does a thin stand of corn cost?")
            .input(number("plants_ac", "Plants that live", "plants/ac", Range.closed(10_000, 60_000), "24000"))
            .input(text("planted", "Planting date", "2026-04-25").optional())
            .input(number(
                            "best_plants_ac",
                            "Best stand of hybrid and ground",
                            "plants/ac",
                            Range.closed(12_000, 48_000),
                            "33000")
                    .optional())
            .output("yield_pct", "Of the best yield", "%")
            .output("slope_pct", "Gained by 1000 plants more", "%")
            .formula(
                    "15.01 + 4.693 P − 0.07737 P² + 1.0109 D − 0.01851 D²; with a best stand 100 − 0.07737 × (30.33 ÷ best)² × (P − best)² less the date's loss")
            .source("Fit to the 182 cells of [nafziger-1994]", PRACTICE)
            .validity(
                    "10,000 to 36,000 plants, or to 1.25 times the best stand, and 10 April to 9 June; outside refused. Without a date as on the best day.")
            .caution(
                    "Tables disagree: for 20,000 plants 91.7 % here, 81 % by Iowa 2004. Below about 112 bu/ac more plants can cost yield.")
            .example("plants_ac=24000 planted=2026-04-25", "yield_pct=96.68 slope_pct=0.979", "check 1a, 1c", COMPUTED)
            .example("plants_ac=16000 planted=2026-04-25", "yield_pct=83.89", "check 1a; the table has 84", COMPUTED)
            .example("plants_ac=30000 planted=2026-05-20", "yield_pct=91.26", "check 1a; the table has 91", COMPUTED)
            .example("plants_ac=28000 planted=2026-05-30", "yield_pct=80.97 slope_pct=.360", "check 1b, 1c", COMPUTED)
            .example("plants_ac=12000 planted=2026-06-09", "yield_pct=41.81", "check 1b", COMPUTED)
            .example(
                    "plants_ac=33000 best_plants_ac=33000",
                    "yield_pct=100 slope_pct=0",
                    "at its best stand, by definition",
                    COMPUTED)
            .model(CornResponse::solve);

    private CornResponse() {}

    /** r of the table's own fit [%]; P in 1000/ac, D in days after 1 April. */
    static double tablePct(double plants, double days) {
        return LEVEL + PER_PLANT * plants - CURVATURE * plants * plants + PER_DAY * days - DAY_CURVATURE * days * days;
    }

    /**
     * Yield kept by a stand [% of that of the best stand], 0 to 100, for any number of plants.
     *
     * @param plants that live [1000/ac], 0 or more
     * @param best the best stand [1000/ac], 10 or more
     * @param sharpness times the table's curvature, above 0
     */
    public static double keptPct(double plants, double best, double sharpness) {
        double read = Math.max(FEWEST_THOUSAND, Math.min(MOST_OF_BEST * best, plants));
        double off = (read - best) / best;
        double kept = Math.max(0, 100 - sharpness * CURVATURE * BEST_THOUSAND * BEST_THOUSAND * off * off);
        return plants < FEWEST_THOUSAND ? kept * plants / FEWEST_THOUSAND : kept;
    }

    /** Yield lost by a planting date [points of the best yield], 0 on the best day; days after 1 April. */
    public static double dateLossPct(double days) {
        return DAY_CURVATURE * (days - BEST_DAY) * (days - BEST_DAY);
    }

    private static Outputs solve(Given given, Working working) {
        double plants = given.number("plants_ac") / 1000;
        boolean table = !given.has("best_plants_ac");
        double best = table ? BEST_THOUSAND : given.number("best_plants_ac") / 1000;
        if (plants > (table ? MOST_OF_TABLE : MOST_OF_BEST * best)) {
            throw given.refuse(
                    "plants_ac",
                    table
                            ? "10,000 to 36,000 plants, the range of the table"
                            : "10,000 plants up to 1.25 times the best stand");
        }
        double days = given.has("planted") ? PlantedOn.days(given, "planted", FIRST_DAY, LAST_DAY, DATES) : BEST_DAY;
        double curvature = CURVATURE * (BEST_THOUSAND / best) * (BEST_THOUSAND / best);
        double kept = table
                ? working.line(
                        "of the best yield",
                        tablePct(plants, days),
                        "% of yield",
                        "{} + {} × {} − {} × {}² + {} × {} − {} × {}²",
                        LEVEL,
                        PER_PLANT,
                        plants,
                        CURVATURE,
                        plants,
                        PER_DAY,
                        days,
                        DAY_CURVATURE,
                        days)
                : working.line(
                        "of the best yield",
                        keptPct(plants, best, 1) - dateLossPct(days),
                        "% of yield",
                        "100 − {} × ({} − {})² − {} × ({} − {})²",
                        curvature,
                        plants,
                        best,
                        DAY_CURVATURE,
                        days,
                        BEST_DAY);
        double slope = table
                ? working.line(
                        "gained by 1000 plants more",
                        PER_PLANT - 2 * CURVATURE * plants,
                        "% of yield",
                        "{} − 2 × {} × {}",
                        PER_PLANT,
                        CURVATURE,
                        plants)
                : working.line(
                        "gained by 1000 plants more",
                        2 * curvature * (best - plants),
                        "% of yield",
                        "2 × {} × ({} − {})",
                        curvature,
                        best,
                        plants);
        return new Outputs().put("yield_pct", kept).put("slope_pct", slope);
    }
}
