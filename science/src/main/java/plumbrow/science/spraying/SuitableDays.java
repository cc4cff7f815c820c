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
 * How many days are fit for the field, and what must be done on each.
 *
 *   days = Σ weeks − 0.7·weeks where Sundays rest;  acres a day = acres/days;  acres an hour = that/hours
 *
 * Source: Iowa State A3-25, October 2014, medians of 1964 to 2013.
 */
public final class SuitableDays {
    private static final double SUNDAY_DAYS_PER_WEEK = 0.7;

    public static final Figure FIGURE = Figure.declare("suitable-days", Subject.SPRAYING)
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
            .source("[iowa-a3-25]", VERIFIED)
            .validity("Medians for a usual year; for a careful plan take the 15th to 20th percentile of the weeks.")
            .caution("Iowa springs ran from less than 20 days (1993) to 60 (1977).")
            .example(
                    "week_days=4.0,4.3 acres=1600 hours_day=14",
                    "days=8.3 ac_day=192.8 ac_h=13.8",
                    "[iowa-a3-25]",
                    VERIFIED)
            .example("week_days=4.0,4.3 acres=1600 hours_day=14 sundays=rest", "days=6.9", "0.7 a week less", COMPUTED)
            .model(SuitableDays::solve);

    private SuitableDays() {}

    private static Outputs solve(Given given, Working working) {
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
