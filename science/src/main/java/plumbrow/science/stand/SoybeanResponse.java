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
 * Soybean yield by final stand and planting date.
 *
 *   r(P) = 100·(1 − e^(−k·P)) × date share,   k = ln 50 / P98
 *
 *   r    % of the yield of a full stand on the best date;  P plants that live [1000/ac]
 *   P98  plants that bring 98 % of it, the agronomic optimum [1000/ac];  k = 0.03909 gives 100
 *
 * k from 66 against 79 bu/ac at 46,000 and 171,000 plants on four Indiana sites. Agrees with statements it was not fitted to:
 * 100,000 near the maximum, 70,000 90 to 95 %, 80,000 keeps yield if even. 25,000 to 275,000 plants.
 *
 * Contested: optimum 127,000 on ground below 59.6 bu/ac and 97,000 above 64.1 (78 responses of 9 site-years; poor ground needs
 * more plants); northern states reached 90 % only at 117,000 (P98 198,000), the south was near the maximum at 75,000.
 *
 * Date: 10 May 100, 20 May 98, 30 May 95, 10 June 88, 20 June 76 %, between them in proportion, times the share of the stand.
 *
 * Source: Penn State (dates, agreement); Carciochi et al. 2019, Agron. J.; Naeve 2012; k derived; product common practice.
 */
public final class SoybeanResponse {
    /** Share of the full yield at the agronomic optimum: 1 − 1/50. */
    private static final double LN_50 = Math.log(50);

    static final double PER_THOUSAND = 0.03909;

    /** First and last day of the dates, in days after 1 April; before the first as on it. */
    public static final int FIRST_DAY = 39;

    public static final int LAST_DAY = 80;
    private static final double[] DAYS = {39, 49, 59, 70, 80};
    private static final double[] DATE_PCT = {100, 98, 95, 88, 76};

    public static final Figure FIGURE = Figure.declare("soybean-stand-response", Subject.STAND)
            .question("What share of its best yield do soybeans bring with so many plants, planted on that day?")
            .input(number("plants_ac", "Plants that live", "plants/ac", Range.closed(25_000, 275_000), "100000"))
            .input(text("planted", "Planting date", "2026-05-20").optional())
            .input(number(
                            "best_plants_ac",
                            "Plants that bring 98 % of the full yield",
                            "plants/ac",
                            Range.closed(40_000, 250_000),
                            "104000")
                    .optional())
            .output("yield_pct", "Of the best yield", "%")
            .formula("100 × (1 − e^(−k P)) × date share; k = 0.03909 per 1000 plants, or ln 50 ÷ best plants")
            .source(
                    "Derived from four Indiana sites, 46,000 and 171,000 plants; dates: [pennsylvania-soybean]",
                    PRACTICE)
            .validity(
                    "25,000 to 275,000 plants; planted up to 20 June; outside refused. Without a date as on the best day.")
            .caution(
                    "Sites disagree: 98 % of the yield at 75,000 plants in the south, at 198,000 in the north. Gaps over 2 ft cost more.")
            .example("plants_ac=46000", "yield_pct=83.44", "check 1k", COMPUTED)
            .example("plants_ac=70000", "yield_pct=93.52", "check 1k; 90 to 95 printed by Penn State", COMPUTED)
            .example("plants_ac=100000", "yield_pct=97.99", "check 1k", COMPUTED)
            .example("plants_ac=127000", "yield_pct=99.30", "check 1k", COMPUTED)
            .example("plants_ac=127000 best_plants_ac=127000", "yield_pct=98", "by definition", COMPUTED)
            .example("plants_ac=275000 planted=2026-05-25", "yield_pct=96.50", "half way from 98 to 95", COMPUTED)
            .model(SoybeanResponse::solve);

    private SoybeanResponse() {}

    /** Yield kept by a stand [% of that of a full one], 0 to 100; both in 1000 plants/ac, {@code best} the stand of 98 %. */
    public static double keptPct(double plants, double best) {
        return 100 * (1 - Math.exp(-LN_50 * plants / best));
    }

    /** Share of the yield that a planting date leaves [%]; days after 1 April, as on the first or last date outside. */
    public static double datePct(double days) {
        if (days <= DAYS[0]) {
            return DATE_PCT[0];
        }
        int at = 0;
        while (at < DAYS.length - 2 && days > DAYS[at + 1]) {
            at++;
        }
        double right = Math.min(1, (days - DAYS[at]) / (DAYS[at + 1] - DAYS[at]));
        return DATE_PCT[at] + right * (DATE_PCT[at + 1] - DATE_PCT[at]);
    }

    private static Outputs solve(Given given, Working working) {
        double plants = given.number("plants_ac") / 1000;
        double k = given.has("best_plants_ac") ? LN_50 / (given.number("best_plants_ac") / 1000) : PER_THOUSAND;
        double kept = working.line(
                "kept by the stand", -100 * Math.expm1(-k * plants), "% of yield", "100 × (1 − exp({}))", -k * plants);
        if (given.has("planted")) {
            double share = datePct(PlantedOn.days(
                    given, "planted", 0, LAST_DAY, "a date from 1 April to 20 June, such as 2026-05-20"));
            kept = working.line("with the date", kept * share / 100, "% of yield", "{} × {} ÷ 100", kept, share);
        }
        return new Outputs().put("yield_pct", kept);
    }
}
