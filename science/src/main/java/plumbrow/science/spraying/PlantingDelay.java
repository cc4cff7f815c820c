package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What waiting with planting costs, by single slopes, and how many days are fit for the field.
 *
 *   loss = slope·days late;  soybean [bu/ac/d]: Nebraska 0.25 (2003) to 0.63 (2004) after 1 May, Illinois 0.5 in June,
 *   Minnesota 0.33 in late May;  corn: Iowa 1 % a day after 10 May
 *
 * Slopes differ by a factor of two between years: show both ends. For corn the tables are better than any slope.
 *
 * Source: Corn & Soybean Digest (Nebraska); Illinois Bulletin 5 June 2009; farms.com 123149 (Minnesota); ISU 2009 (corn);
 * ISU A3-25, October 2014 (days fit).
 */
public final class PlantingDelay {
    private static final List<String> RULES =
            List.of("nebraska-2003", "nebraska-2004", "illinois-june", "minnesota-late-may", "iowa-corn");
    private static final double[] PER_DAY = {0.25, 0.63, 0.5, 1.0 / 3, Double.NaN};
    private static final double CORN_PCT_PER_DAY = 1;
    private static final double SUNDAY_DAYS_PER_WEEK = 0.7;

    public static final Figure FIGURE = Figure.declare("planting-delay", Subject.SPRAYING)
            .question("What do so many days of waiting with planting cost?")
            .input(word("rule", "Slope of the state and crop", RULES, "nebraska-2004"))
            .input(number("days", "Days late", "d", Range.closed(0, 45), "10"))
            .input(number("yield_bu_ac", "Yield if on time", "bu/ac", Range.POSITIVE, "60"))
            .input(number("price_usd_bu", "Crop price received", "$/bu", Range.POSITIVE, "10.50"))
            .output("loss_bu_ac", "Yield lost", "bu/ac")
            .output("loss_usd_ac", "Worth of it", "$/ac")
            .formula("loss = bushels a day × days; corn: 1 % of the yield a day")
            .source("Corn & Soybean Digest; Illinois Bulletin 5 June 2009; farms.com 123149; Iowa State 2009", VERIFIED)
            .validity(
                    "Nebraska counts from 1 May, Illinois in June, Minnesota in late May, Iowa corn from about 10 May.")
            .caution(
                    "One slope of one year: in Nebraska the next year was two and a half times as steep. Try both ends.")
            .example(
                    "rule=nebraska-2004 days=10 yield_bu_ac=60 price_usd_bu=10.50",
                    "loss_bu_ac=6.3 loss_usd_ac=66.15",
                    "0.63 a day",
                    COMPUTED)
            .example(
                    "rule=nebraska-2003 days=10 yield_bu_ac=60 price_usd_bu=10.50",
                    "loss_bu_ac=2.5",
                    "0.25 a day",
                    COMPUTED)
            .example(
                    "rule=iowa-corn days=5 yield_bu_ac=200 price_usd_bu=4.50",
                    "loss_bu_ac=10 loss_usd_ac=45",
                    "1 % a day",
                    COMPUTED)
            .model(PlantingDelay::solve);

    public static final Figure SUITABLE = Figure.declare("suitable-days", Subject.SPRAYING)
            .question("How many acres a day, and an hour, must be done in the days fit for the field?")
            .input(list("week_days", "Days fit for the field in each week", "d", Range.closed(0, 7), "4.0,4.3"))
            .input(number("acres", "Acres", "ac", Range.POSITIVE, "1600"))
            .input(number("hours_day", "Hours in the field on a day", "h", Range.above(0, 24), "14"))
            .input(word("sundays", "Whether Sundays are worked", List.of("worked", "rest"), "worked")
                    .orElse("worked"))
            .output("days", "Days fit for the field", "d")
            .output("ac_day", "Acres a day", "ac/d")
            .output("ac_h", "Acres an hour", "ac/h")
            .formula("days = sum of the weeks, less 0.7 a week where Sundays rest; acres ÷ days ÷ hours")
            .source("ISU A3-25, October 2014", VERIFIED)
            .validity("Medians for a usual year; for a careful plan take the 15th to 20th percentile of the weeks.")
            .caution("Iowa springs ran from less than 20 days (1993) to 60 (1977).")
            .example(
                    "week_days=4.0,4.3 acres=1600 hours_day=14",
                    "days=8.3 ac_day=192.8 ac_h=13.8",
                    "ISU A3-25",
                    VERIFIED)
            .example("week_days=4.0,4.3 acres=1600 hours_day=14 sundays=rest", "days=6.9", "0.7 a week less", COMPUTED)
            .model(PlantingDelay::solveSuitable);

    private PlantingDelay() {}

    private static Outputs solve(Given given, Working working) {
        int rule = RULES.indexOf(given.word("rule"));
        double days = given.number("days");
        double yield = given.number("yield_bu_ac");
        double lost = Double.isNaN(PER_DAY[rule])
                ? working.line(
                        "yield lost",
                        yield * CORN_PCT_PER_DAY * days / 100,
                        "bu/ac",
                        "{} × {} ÷ 100 × {}",
                        yield,
                        CORN_PCT_PER_DAY,
                        days)
                : working.line("yield lost", PER_DAY[rule] * days, "bu/ac", "{} × {}", PER_DAY[rule], days);
        if (lost > yield) {
            throw given.refuse("days", "days that leave some yield: the slope holds for a few weeks only");
        }
        double price = given.number("price_usd_bu");
        return new Outputs()
                .put("loss_bu_ac", lost)
                .put("loss_usd_ac", working.line("worth of it", lost * price, "$/ac", "{} × {}", lost, price));
    }

    private static Outputs solveSuitable(Given given, Working working) {
        double[] weeks = given.list("week_days");
        double sum = working.step(
                "days of the weeks", Numbers.terms(weeks), Arrays.stream(weeks).sum(), "d");
        double rest = given.word("sundays").equals("rest") ? SUNDAY_DAYS_PER_WEEK * weeks.length : 0;
        double days = working.line("days fit for the field", sum - rest, "d", "{} − {}", sum, rest);
        if (days <= 0) {
            throw given.refuse("week_days", "weeks with some day fit for the field");
        }
        double acres = given.number("acres");
        double hours = given.number("hours_day");
        double perDay = working.line("acres a day", acres / days, "", "{} ÷ {}", acres, days);
        return new Outputs()
                .put("days", days)
                .put("ac_day", perDay)
                .put("ac_h", working.line("acres an hour", perDay / hours, "", "{} ÷ {}", perDay, hours));
    }
}
