package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** What a soil-applied herbicide still controls, as a figure. The law is {@link ResidualHerbicide}. */
public final class ResidualControl {
    private static final double GOOD_PCT = 80;

    public static final Figure FIGURE = Figure.declare("residual-control", Subject.WEEDS)
            .question("What does the soil herbicide still control, and for how long?")
            .input(ResidualLeft.RATE)
            .input(ResidualLeft.DT50)
            .input(ResidualLeft.DAYS)
            .input(number("ed50", "Dose that controls half, in the unit of the rate", "", Range.POSITIVE, "200"))
            .input(number("slope", "Slope of control over dose", "", Range.above(0, 20), "3"))
            .input(ResidualLeft.LOST)
            .output("control_pct", "Control of what emerges now", "%")
            .output("days_above_80", "Days for which control is 80 % or better", "d")
            .output("left", "Left, in the unit of the rate", "")
            .formula(
                    "control = 100 ÷ (1 + (ED50 ÷ left)^b); days = DT50 × log2(rate × (1 − lost) ÷ (ED50 × 4^(1 ÷ b)))")
            .source("First-order loss; log-logistic response, Seefeldt et al. 1995, Weed Technol. 9:218", MEMORY)
            .validity(
                    "After rain has activated it, in the soil for which ED50 holds. Weeds that are up are not counted.")
            .caution("A record of control shows only DT50 ÷ slope, not each of the two: one field does not fix both.")
            .example(
                    "rate=1400 dt50_d=20 days=0 ed50=200 slope=3",
                    "control_pct=99.71",
                    "weeds.md 4.4, check 4b",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=14 ed50=200 slope=3",
                    "control_pct=98.77",
                    "weeds.md 4.4, check 4b",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=28 ed50=200 slope=3",
                    "control_pct=94.91 days_above_80=42.8138",
                    "weeds.md 4.4, checks 4b, 4c",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=42 ed50=200 slope=3",
                    "control_pct=81.32",
                    "weeds.md 4.4, check 4b",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=56 ed50=200 slope=3",
                    "control_pct=50.38",
                    "weeds.md 4.4, check 4b",
                    COMPUTED)
            .example(
                    "rate=1400 dt50_d=20 days=28 ed50=200 slope=3 lost_share=.4",
                    "days_above_80=28.0745",
                    "weeds.md 4.4, check 4c",
                    COMPUTED)
            .example(
                    "rate=700 dt50_d=20 days=28 ed50=200 slope=3",
                    "days_above_80=22.8138",
                    "half rate, check 4c, weeds.md 4.4",
                    COMPUTED)
            .model(ResidualControl::solve);

    public static final Figure RECORD = Figure.declare("residual-record", Subject.WEEDS)
            .question("What does a record of fading control say of the soil herbicide?")
            .input(number("first_pct", "Control at the first look", "%", Range.open(0, 100), "95"))
            .input(number("later_pct", "Control at the later look", "%", Range.open(0, 100), "57"))
            .input(number("first_day", "Days after application, first look", "d", Range.closed(0, 3650), "28"))
            .input(number("later_day", "Days after application, later look", "d", Range.closed(0, 3650), "56"))
            .output("log_odds_per_day", "Fall of the log-odds of control", "1/d")
            .output("dt50_over_slope_d", "DT50 divided by slope", "d")
            .output("day_of_80", "Day on which control is 80 %", "d")
            .formula("fall = (ln odds first − ln odds later) ÷ days; DT50 ÷ b = ln 2 ÷ fall")
            .source("Consequence of first-order loss and log-logistic response", COMPUTED)
            .validity(
                    "Control that falls between the looks; one application, rain before the first. A day outside the looks is extrapolated.")
            .example(
                    "first_pct=95 later_pct=57 first_day=28 later_day=56",
                    "log_odds_per_day=.0951 dt50_over_slope_d=7.290 day_of_80=44",
                    "S-metolachlor on waterhemp in corn, Steckel et al. 2002 Table 3; weeds.md 4.3 and check 4d",
                    COMPUTED)
            .example(
                    "first_pct=99 later_pct=85 first_day=28 later_day=56",
                    "dt50_over_slope_d=6.8 day_of_80=59",
                    "acetochlor, encapsulated 0.38 kg/L, weeds.md 4.3",
                    COMPUTED)
            .example(
                    "first_pct=98 later_pct=61 first_day=28 later_day=56",
                    "dt50_over_slope_d=5.6 day_of_80=48",
                    "acetochlor EC, weeds.md 4.3",
                    COMPUTED)
            .example(
                    "first_pct=91 later_pct=61 first_day=28 later_day=56",
                    "dt50_over_slope_d=10.4 day_of_80=42",
                    "dimethenamid, weeds.md 4.3",
                    COMPUTED)
            .example(
                    "first_pct=93 later_pct=46 first_day=28 later_day=56",
                    "dt50_over_slope_d=7.1 day_of_80=40",
                    "pendimethalin, weeds.md 4.3",
                    COMPUTED)
            .example(
                    "first_pct=99 later_pct=95 first_day=28 later_day=56",
                    "dt50_over_slope_d=11.8 day_of_80=82",
                    "acetochlor, encapsulated 0.46 kg/L, weeds.md 4.3",
                    COMPUTED)
            .model(ResidualControl::solveRecord);

    private ResidualControl() {}

    private static Outputs solve(Given given, Working working) {
        double left = ResidualLeft.showLeft(given, working);
        double ed50 = given.number("ed50");
        double slope = given.number("slope");
        double control = left == 0
                ? 0
                : working.line(
                        "control",
                        ResidualHerbicide.controlPct(left, ed50, slope),
                        "%",
                        "100 ÷ (1 + ({} ÷ {})^{})",
                        ed50,
                        left,
                        slope);
        double rate = given.number("rate");
        double lost = given.number("lost_share");
        double half = given.number("dt50_d");
        double days = ResidualHerbicide.daysAbove(GOOD_PCT, rate, lost, half, ed50, slope);
        working.line(
                "days of 80 % or better",
                days,
                "d",
                (days > 0 ? "" : "0, since not above 0 is ") + "{} × ln({} × (1 − {}) ÷ ({} × 4^(1 ÷ {}))) ÷ ln(2)",
                half,
                rate,
                lost,
                ed50,
                slope);
        return new Outputs()
                .put("control_pct", control)
                .put("days_above_80", days)
                .put("left", left);
    }

    private static Outputs solveRecord(Given given, Working working) {
        double first = given.number("first_pct");
        double later = given.number("later_pct");
        double from = given.number("first_day");
        double to = given.number("later_day");
        if (to <= from) {
            throw given.refuse("later_day", "a day after first_day");
        }
        if (later >= first) {
            throw given.refuse("later_pct", "less than first_pct: control that does not fall shows no loss");
        }
        double odds = working.line(
                "log-odds, first", ResidualHerbicide.logOdds(first), "", "ln({} ÷ (100 − {}))", first, first);
        double oddsLater = working.line(
                "log-odds, later", ResidualHerbicide.logOdds(later), "", "ln({} ÷ (100 − {}))", later, later);
        double fall = working.line(
                "fall per day",
                (odds - oddsLater) / (to - from),
                "",
                "({} − {}) ÷ ({} − {})",
                odds,
                oddsLater,
                to,
                from);
        double ratio = working.line("DT50 over slope", Math.log(2) / fall, "d", "ln(2) ÷ {}", fall);
        double day = working.line(
                "day of 80 %",
                from + (odds - ResidualHerbicide.logOdds(GOOD_PCT)) / fall,
                "d",
                "{} + ({} − ln(4)) ÷ {}",
                from,
                odds,
                fall);
        if (day < from || day > to) {
            working.caution("The day of 80 % lies outside the two looks: it is extrapolated.");
        }
        return new Outputs()
                .put("log_odds_per_day", fall)
                .put("dt50_over_slope_d", ratio)
                .put("day_of_80", day);
    }
}
