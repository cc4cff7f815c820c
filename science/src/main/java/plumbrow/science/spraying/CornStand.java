package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Corn yield by planting date and final stand, and what replanting gains.
 *
 *   percent of the best yield, bilinear in a table of dates (rows, 10 April to 9 June by 5 days) and stands (columns, 10,000
 *   to 36,000 by 2000 plants an acre); gain = (replant − keep)/100·full yield·price − cost
 *
 * Keep: read at the first planting date with the stand that is left. Replant: at the new date with the new stand. Tables
 * disagree: for 20,000 plants on the best date 81 % (Iowa 2001), 89 % (Iowa 2010), 92 % here. Outside the table refused.
 *
 * Source: Purdue Pest & Crop 2012 no. 15, Table 1, after Nafziger 1994, J. Prod. Agric. 7:59.
 */
public final class CornStand {
    private static final MonthDay FIRST_DATE = MonthDay.of(4, 10);
    private static final double DAYS_PER_ROW = 5;
    private static final double FEWEST = 10_000;
    private static final double MOST = 36_000;
    private static final double PLANTS_PER_COLUMN = 2000;
    private static final double[][] PERCENT = {
        {62, 68, 73, 78, 82, 85, 88, 91, 92, 93, 94, 94, 93, 91},
        {65, 71, 76, 81, 85, 88, 91, 94, 95, 96, 97, 96, 96, 94},
        {67, 73, 78, 83, 87, 90, 93, 96, 97, 98, 99, 98, 98, 96},
        {68, 74, 79, 84, 88, 92, 94, 97, 98, 99, 100, 100, 99, 97},
        {68, 74, 79, 84, 88, 92, 95, 97, 99, 100, 100, 100, 99, 97},
        {67, 73, 79, 83, 87, 91, 94, 96, 98, 99, 99, 99, 98, 97},
        {65, 71, 77, 82, 86, 89, 92, 94, 96, 97, 97, 97, 96, 95},
        {63, 69, 74, 79, 83, 87, 89, 92, 93, 94, 95, 95, 94, 92},
        {59, 65, 71, 75, 80, 83, 86, 88, 90, 91, 91, 91, 90, 89},
        {55, 61, 66, 71, 75, 79, 81, 84, 85, 86, 87, 87, 86, 84},
        {49, 55, 61, 65, 70, 73, 76, 78, 80, 81, 81, 81, 80, 79},
        {43, 49, 54, 59, 63, 67, 70, 72, 74, 75, 75, 75, 74, 73},
        {36, 42, 47, 52, 56, 60, 62, 65, 66, 67, 68, 68, 67, 65}
    };

    public static final Figure FIGURE = Figure.declare("corn-stand-yield", Subject.SPRAYING)
            .question("What share of its best yield does corn of this date and stand give?")
            .input(text("planted", "Planting date", "2024-04-28"))
            .input(number("plants_ac", "Plants on an acre", "plants/ac", Range.closed(FEWEST, MOST), "21000"))
            .output("yield_pct", "Of the best yield", "%")
            .formula("between the values of the table in proportion, by date and by stand")
            .source("[nafziger-1994]", VERIFIED)
            .validity("10 April to 9 June, 10,000 to 36,000 plants. Fields below 100 bu gain little above 24,000.")
            .caution(
                    "Tables disagree by ten points for thin stands. Gaps cost 2 to 6 points more: judge 4 to 5 days after the injury.")
            .example("planted=2024-04-25 plants_ac=30000", "yield_pct=100", "[nafziger-1994]", VERIFIED)
            .example("planted=2024-04-25 plants_ac=18000", "yield_pct=88", "[nafziger-1994]", VERIFIED)
            .example("planted=2024-05-20 plants_ac=30000", "yield_pct=91", "[nafziger-1994]", VERIFIED)
            .example("planted=2024-04-28 plants_ac=21000", "yield_pct=93.3", "independent arithmetic", COMPUTED)
            .example("planted=2024-05-23 plants_ac=31000", "yield_pct=88.6", "independent arithmetic", COMPUTED)
            .example("planted=2024-05-02 plants_ac=17000", "yield_pct=85.6", "independent arithmetic", COMPUTED)
            .model(CornStand::solve);

    public static final Figure REPLANT = Figure.declare("replant-gain", Subject.SPRAYING)
            .question("Does replanting return more than it costs?")
            .input(number("keep_pct", "Yield of the stand that is left, of the best", "%", Range.closed(0, 120), "88"))
            .input(number("replant_pct", "Yield of the replanted crop, of the best", "%", Range.closed(0, 120), "91"))
            .input(number("full_bu_ac", "Best yield of the field", "bu/ac", Range.POSITIVE, "180"))
            .input(number("price_usd_bu", "Crop price received", "$/bu", Range.POSITIVE, "4.50"))
            .input(number("cost_usd_ac", "Seed, trips and killing the old stand", "$/ac", Range.NOT_NEGATIVE, "0")
                    .orElse("0"))
            .output("gain_usd_ac", "Gain from replanting", "$/ac")
            .output("gain_bu_ac", "More bushels", "bu/ac")
            .formula("gain = (replant − keep) ÷ 100 × best yield × price − cost")
            .source("Arithmetic", PRACTICE)
            .validity("Both shares from one table.")
            .example(
                    "keep_pct=88 replant_pct=91 full_bu_ac=180 price_usd_bu=4.50",
                    "gain_bu_ac=5.4 gain_usd_ac=24.30",
                    "before cost",
                    COMPUTED)
            .model(CornStand::solveReplant);

    private CornStand() {}

    /** Share of the best yield [%] at days after 10 April, 0 to 60, and plants an acre, 10,000 to 36,000. */
    public static double yieldPct(double days, double plantsPerAcre) {
        double row = days / DAYS_PER_ROW;
        double column = (plantsPerAcre - FEWEST) / PLANTS_PER_COLUMN;
        int top = (int) Math.min(Math.floor(row), PERCENT.length - 2);
        int left = (int) Math.min(Math.floor(column), PERCENT[0].length - 2);
        double down = row - top;
        double right = column - left;
        return (1 - down) * ((1 - right) * PERCENT[top][left] + right * PERCENT[top][left + 1])
                + down * ((1 - right) * PERCENT[top + 1][left] + right * PERCENT[top + 1][left + 1]);
    }

    private static Outputs solve(Given given, Working working) {
        LocalDate planted = planted(given);
        double days = working.line(
                "days after 10 April",
                planted.getDayOfYear() - FIRST_DATE.atYear(planted.getYear()).getDayOfYear(),
                "d",
                "of the calendar");
        if (days < 0 || days > DAYS_PER_ROW * (PERCENT.length - 1)) {
            throw given.refuse("planted", "a date from 10 April to 9 June, such as 2024-04-28");
        }
        double plants = given.number("plants_ac");
        return new Outputs()
                .put(
                        "yield_pct",
                        working.line(
                                "share of the best yield",
                                yieldPct(days, plants),
                                "%",
                                "table at day {} and {} plants, in proportion",
                                days,
                                plants));
    }

    private static LocalDate planted(Given given) {
        try {
            return LocalDate.parse(given.word("planted"));
        } catch (DateTimeException e) {
            throw given.refuse("planted", "a date from 10 April to 9 June, such as 2024-04-28");
        }
    }

    private static Outputs solveReplant(Given given, Working working) {
        double keep = given.number("keep_pct");
        double replant = given.number("replant_pct");
        double full = given.number("full_bu_ac");
        double bushels = working.line(
                "more bushels", (replant - keep) / 100 * full, "bu/ac", "({} − {}) ÷ 100 × {}", replant, keep, full);
        double price = given.number("price_usd_bu");
        double cost = given.number("cost_usd_ac");
        return new Outputs()
                .put(
                        "gain_usd_ac",
                        working.line(
                                "gain",
                                bushels * price - cost,
                                "$/ac",
                                "{} bu/ac × {} $/bu − {} $/ac",
                                bushels,
                                price,
                                cost))
                .put("gain_bu_ac", bushels);
    }
}
