package plumbrow.science.stand;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Wheat yield by the plants of a spring count, by two tables that disagree.
 *
 *   forgiving  r(d) = 100·(1 − e^(−0.201·d))
 *   strict     straight lines through (13, 65), (16.5, 77.5), (19.5, 92.5), (22, 100)
 *
 *   r  % of the yield of a full stand;  d plants on a square foot
 *
 * Strict is the middle of Pennsylvania's bands; forgiving is fitted to Ontario's column of 1986 to 1990 (80.0, 85.5, 89.5,
 * 96.0, 99.8) at 7.5-inch rows, a spacing that is not printed there. At 11 plants they differ by 20 points and more, and
 * which holds here is drawn as doubt. Below 13 plants the strict table says to plant another crop: taken in proportion.
 *
 * Source: Penn State and Ontario tables of plants and yield; lines and curve derived.
 */
public final class WheatResponse {
    static final double PER_PLANT = 0.201;
    private static final double SQUARE_FEET = 43.560;
    private static final double[] PLANTS = {0, 13, 16.5, 19.5, 22};
    private static final double[] STRICT_PCT = {0, 65, 77.5, 92.5, 100};
    private static final double FEWEST_STRICT = 13;

    public static final Figure FIGURE = Figure.declare("wheat-stand-response", Subject.STAND)
            .question("What share of its best yield does wheat bring with so many plants on a square foot?")
            .input(number("plants_ft2", "Plants on a square foot", "plants/ft²", Range.closed(1, 60), "15"))
            .input(word(
                    "table",
                    "Forgiving (Ontario) or strict (Pennsylvania)",
                    List.of("forgiving", "strict"),
                    "forgiving"))
            .output("yield_pct", "Of the best yield", "%")
            .formula(
                    "forgiving 100 × (1 − e^(−0.201 d)); strict by straight lines 13: 65, 16.5: 77.5, 19.5: 92.5, 22: 100")
            .source("tables of [ontario-wheat] and [pennsylvania-wheat]; curve and lines derived", VERIFIED)
            .validity("1 to 60 plants, strict from 13; outside refused. Evenly spread, healthy plants.")
            .caution("The two tables differ by 20 points at 11 plants on a square foot: look at both.")
            .example("plants_ft2=8 table=forgiving", "yield_pct=80.0", "check 1l; Ontario prints 80", COMPUTED)
            .example("plants_ft2=12 table=forgiving", "yield_pct=91.0", "check 1l", COMPUTED)
            .example("plants_ft2=15 table=forgiving", "yield_pct=95.1", "check 1l", COMPUTED)
            .example("plants_ft2=20 table=forgiving", "yield_pct=98.2", "check 1l", COMPUTED)
            .example("plants_ft2=18 table=strict", "yield_pct=85.0", "half way from 77.5 to 92.5", COMPUTED)
            .model(WheatResponse::solve);

    private WheatResponse() {}

    /** Yield kept by a stand [%], 0 to 100; {@code plants} in 1000 an acre, {@code strict} 1 by the strict table, 0 by the other. */
    public static double keptPct(double plants, double strict) {
        double perSquareFoot = plants / SQUARE_FEET;
        return strict * strictPct(perSquareFoot) + (1 - strict) * forgivingPct(perSquareFoot);
    }

    static double forgivingPct(double plants) {
        return -100 * Math.expm1(-PER_PLANT * plants);
    }

    static double strictPct(double plants) {
        if (plants >= PLANTS[PLANTS.length - 1]) {
            return 100;
        }
        int at = 0;
        while (plants > PLANTS[at + 1]) {
            at++;
        }
        double right = (plants - PLANTS[at]) / (PLANTS[at + 1] - PLANTS[at]);
        return STRICT_PCT[at] + right * (STRICT_PCT[at + 1] - STRICT_PCT[at]);
    }

    private static Outputs solve(Given given, Working working) {
        double plants = given.number("plants_ft2");
        if (given.word("table").equals("forgiving")) {
            return new Outputs()
                    .put(
                            "yield_pct",
                            working.line(
                                    "of the best yield",
                                    forgivingPct(plants),
                                    "% of yield",
                                    "100 × (1 − exp({}))",
                                    -PER_PLANT * plants));
        }
        if (plants < FEWEST_STRICT) {
            throw given.refuse(
                    "plants_ft2", "13 or more: with fewer plants the strict table says to plant another crop");
        }
        return new Outputs()
                .put(
                        "yield_pct",
                        working.step(
                                "of the best yield",
                                "between the points of the strict table, in proportion",
                                strictPct(plants),
                                "% of yield"));
    }
}
