package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.OptionalDouble;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** What a rating of a residual herbicide says, and what control from day to day it comes from. The distribution is {@link RatingTrial}. */
public final class ResidualRating {
    private static final double GOOD = .8;
    private static final int LAST_DAY = 365;
    private static final double SLOWEST = 1e-4;
    private static final double QUICKEST = 1e4;

    /** DT50/b that b of 1.5 to 5 and DT50 of 10 to 90 days can give [d]. */
    private static final double USUAL_LEAST = 2;

    private static final double USUAL_MOST = 60;
    private static final Input SCALE = number(
                    "scale_d",
                    "Days after application by which 63 % of the weed is up, where the trial was",
                    "d",
                    Range.above(0, LAST_DAY),
                    "35")
            .orElse("35");
    private static final Input SHAPE = number("shape", "Shape of that curve", "", Range.above(0, 20), "1.8")
            .orElse("1.8");
    private static final Input SLOPE = number("slope", "Slope of control over dose", "", Range.above(0, 20), "3");
    private static final Range DAY = Range.closed(1, LAST_DAY);
    private static final String SOURCE = "First-order loss and log-logistic response; a rating counts all that came up";

    public static final Figure FIGURE = Figure.declare("residual-rating", Subject.WEEDS)
            .question("What rating does a fading soil herbicide get?")
            .input(ResidualLeft.DT50)
            .input(SLOPE)
            .input(number("dose_ratio", "Dose over the dose that controls half", "", Range.POSITIVE, "7"))
            .input(number("days", "Whole days after application", "d", DAY, "28"))
            .input(SCALE)
            .input(SHAPE)
            .input(number(
                            "up_before_share",
                            "Weeds up at application, for each that comes up later",
                            "",
                            Range.closed(0, 100),
                            "0")
                    .orElse("0"))
            .input(number("dry_days", "Whole days before rain puts it to work", "d", Range.closed(0, LAST_DAY), "0")
                    .orElse("0"))
            .input(number(
                            "age_power",
                            "Power of age by which a plant counts: 0 for a count, 2 for size",
                            "",
                            Range.closed(0, 4),
                            "0")
                    .orElse("0"))
            .output("rating_pct", "Rating: control of all that came up", "%")
            .output("control_pct", "Control of what comes up on that day", "%")
            .output("half_day", "Day on which a seedling has an even chance", "d")
            .output("log_odds_per_day", "Fall of the log-odds of control", "1/d")
            .formula(
                    "control of day s = 1 ÷ (1 + exp(k (s − h))), k = slope × ln 2 ÷ DT50, h = DT50 × log2(dose ratio);"
                            + " rating = Σ came up × control ÷ Σ came up, day by day")
            .source(SOURCE, MEMORY)
            .validity(
                    "Weeds come up by 1 − exp(−(day ÷ scale)^shape) of the days since application. Survivors die of other causes as"
                            + " in the check.")
            .caution("The rating stays above the control of the day: a residual is over before its rating says so.")
            .example(
                    "dt50_d=20 slope=3 dose_ratio=7 days=28",
                    "rating_pct=97.96 control_pct=94.91 half_day=56.147 log_odds_per_day=.10397",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "dt50_d=20 slope=3 dose_ratio=7 days=56",
                    "rating_pct=90.70 control_pct=50.38",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "dt50_d=15 slope=2.5 dose_ratio=6 days=56",
                    "rating_pct=71.44 control_pct=12.03 half_day=38.774",
                    "independent arithmetic",
                    COMPUTED)
            .example("dt50_d=20 slope=3 dose_ratio=3.5 days=56", "rating_pct=66.26", "half the rate", COMPUTED)
            .example(
                    "dt50_d=20 slope=3 dose_ratio=7 days=28 dry_days=10",
                    "rating_pct=77.67",
                    "no rain for ten days",
                    COMPUTED)
            .example("dt50_d=20 slope=3 dose_ratio=7 days=56 age_power=2", "rating_pct=97.10", "by size", COMPUTED)
            .model(ResidualRating::solve);

    public static final Figure FIT = Figure.declare("residual-rating-fit", Subject.WEEDS)
            .question("What daily control gives one rating?")
            .input(number("rating_pct", "Rating: control of all that came up", "%", Range.open(0, 100), "90"))
            .input(number("day", "Whole days after application", "d", DAY, "28"))
            .input(ResidualLeft.DT50)
            .input(SLOPE)
            .input(SCALE)
            .input(SHAPE)
            .input(number("later_day", "Whole days to look ahead to", "d", DAY, "56")
                    .orElse("56"))
            .output("half_day", "Day on which a seedling has an even chance", "d")
            .output("dose_ratio", "Dose over the dose that controls half", "")
            .output("control_pct", "Control of what comes up on the day of the rating", "%")
            .output("day_of_80", "Day on which that control is 80 %", "d")
            .output("later_pct", "Rating on the later day", "%")
            .formula("h such that the rating comes out; dose ratio = 2^(h ÷ DT50)")
            .source(SOURCE, MEMORY)
            .validity("Weeds come up by 1 − exp(−(day ÷ scale)^shape); DT50 and slope from elsewhere; rain at once.")
            .example(
                    "rating_pct=90 day=28 dt50_d=20 slope=3",
                    "half_day=39.703 dose_ratio=3.959 control_pct=77.15 day_of_80=26.37 later_pct=71.91",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rating_pct=85 day=42 dt50_d=20 slope=3",
                    "half_day=43.267 dose_ratio=4.480 control_pct=53.29 day_of_80=29.93 later_pct=77.07",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rating_pct=80 day=56 dt50_d=30 slope=2.5 later_day=84",
                    "half_day=54.217 dose_ratio=3.500 control_pct=47.43 day_of_80=30.22 later_pct=75.95",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "rating_pct=95 day=28 dt50_d=15 slope=3 scale_d=20 shape=1.5",
                    "half_day=37.786 dose_ratio=5.732 control_pct=79.52 day_of_80=27.79",
                    "independent arithmetic",
                    COMPUTED)
            .model(ResidualRating::solveOne);

    public static final Figure RECORD = Figure.declare("residual-record", Subject.WEEDS)
            .question("What does a record of fading control say of the soil herbicide?")
            .input(number("first_pct", "Rating at the first look", "%", Range.open(0, 100), "95"))
            .input(number("later_pct", "Rating at the later look", "%", Range.open(0, 100), "80"))
            .input(number("first_day", "Whole days after application, first look", "d", DAY, "28"))
            .input(number("later_day", "Whole days after application, later look", "d", DAY, "56"))
            .input(SCALE)
            .input(SHAPE)
            .output("log_odds_per_day", "Fall of the log-odds of a day's control", "1/d")
            .output("dt50_over_slope_d", "DT50 divided by slope", "d")
            .output("half_day", "Day on which a seedling has an even chance", "d")
            .output("day_of_80", "Day on which control of that day's seedlings is 80 %", "d")
            .output("between_pct", "Mean control of what came up between the looks", "%")
            .formula(
                    "k and h such that both ratings come out; DT50 ÷ b = ln 2 ÷ k; between = (R2 E2 − R1 E1) ÷ (E2 − E1)")
            .source(SOURCE, MEMORY)
            .validity("Ratings count all that came up, along 1 − exp(−(day ÷ scale)^shape). Between R1 E1 ÷ E2 and"
                    + " (R1 E1 + E2 − E1) ÷ E2, and not above the first: else no fading control gives both.")
            .caution("Ratings read as control of the day make a residual last one to two weeks too long.")
            .example(
                    "first_pct=95 later_pct=80 first_day=28 later_day=56",
                    "log_odds_per_day=.11484 dt50_over_slope_d=6.036 half_day=44.608 day_of_80=32.54",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "first_pct=98 later_pct=85 first_day=28 later_day=56",
                    "log_odds_per_day=.14315 dt50_over_slope_d=4.842 half_day=46.779 day_of_80=37.09",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "first_pct=93 later_pct=80 first_day=28 later_day=42",
                    "log_odds_per_day=.15509 dt50_over_slope_d=4.469 half_day=36.188 day_of_80=27.25",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "first_pct=99 later_pct=95 first_day=28 later_day=56 scale_d=20 shape=1.5",
                    "log_odds_per_day=.16179 dt50_over_slope_d=4.284 half_day=45.757",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "first_pct=95 later_pct=57 first_day=28 later_day=56 scale_d=45 shape=2",
                    "dt50_over_slope_d=3.21 half_day=34.9 between_pct=30.9",
                    "S-metolachlor on waterhemp in corn, [steckel-2002], Table 3",
                    COMPUTED)
            .model(ResidualRating::solveRecord);

    private ResidualRating() {}

    private static int whole(Given given, String key) {
        double typed = given.number(key);
        if (typed != Math.rint(typed)) {
            throw given.refuse(key, "a whole number of days");
        }
        return (int) typed;
    }

    private static Outputs solve(Given given, Working working) {
        int day = whole(given, "days");
        int dry = whole(given, "dry_days");
        double perDay = perDay(given, working);
        double halfAt = working.line(
                "day of an even chance",
                given.number("dt50_d") * Math.log(given.number("dose_ratio")) / Math.log(2),
                "d",
                "{} × log2({})",
                given.number("dt50_d"),
                given.number("dose_ratio"));
        RatingTrial trial = RatingTrial.weibull(given.number("scale_d"), given.number("shape"), day)
                .withUpBefore(given.number("up_before_share"))
                .withoutRainFor(dry);
        double today = today(working, perDay, halfAt, day);
        double rating = working.line(
                "rating",
                100 * trial.rating(perDay, halfAt, day, given.number("age_power")),
                "%",
                "what came up on each of {} days × its control, over all that came up",
                day);
        return new Outputs()
                .put("rating_pct", rating)
                .put("control_pct", today)
                .put("half_day", halfAt)
                .put("log_odds_per_day", perDay);
    }

    private static Outputs solveOne(Given given, Working working) {
        int day = whole(given, "day");
        int later = whole(given, "later_day");
        double perDay = perDay(given, working);
        RatingTrial trial = RatingTrial.weibull(given.number("scale_d"), given.number("shape"), Math.max(day, later));
        OptionalDouble found = trial.halfAt(given.number("rating_pct") / 100, day, perDay);
        if (found.isEmpty()) {
            throw given.refuse("rating_pct", "a rating that some dose gives where weeds come up as said");
        }
        double halfAt = working.line(
                "day of an even chance",
                found.getAsDouble(),
                "d",
                "found by halving until {} % of what came up by day {} is controlled",
                given.number("rating_pct"),
                day);
        double ratio = working.line(
                "dose over ED50",
                Math.pow(2, halfAt / given.number("dt50_d")),
                "",
                "2^({} ÷ {})",
                halfAt,
                given.number("dt50_d"));
        double today = today(working, perDay, halfAt, day);
        double good = goodDay(working, perDay, halfAt);
        double ahead = working.line(
                "rating on day " + later,
                100 * trial.rating(perDay, halfAt, later),
                "%",
                "what came up on each of {} days × its control, over all that came up",
                later);
        return new Outputs()
                .put("half_day", halfAt)
                .put("dose_ratio", ratio)
                .put("control_pct", today)
                .put("day_of_80", good)
                .put("later_pct", ahead);
    }

    private static Outputs solveRecord(Given given, Working working) {
        int from = whole(given, "first_day");
        int to = whole(given, "later_day");
        if (to <= from) {
            throw given.refuse("later_day", "a day after first_day");
        }
        double first = given.number("first_pct") / 100;
        double later = given.number("later_pct") / 100;
        RatingTrial trial = RatingTrial.weibull(given.number("scale_d"), given.number("shape"), to);
        if (!(trial.upBy(to) > trial.upBy(from))) {
            throw given.refuse("scale_d", "such that some of the weed comes up between the looks");
        }
        double[] bounds = trial.bounds(first, from, to);
        working.line(
                "least that the later rating can be",
                100 * bounds[0],
                "%",
                "{} × {} ÷ {}: what was controlled does not come back",
                100 * first,
                trial.upBy(from),
                trial.upBy(to));
        double between = working.line(
                "control between the looks",
                100 * trial.between(first, from, later, to),
                "%",
                "({} × {} − {} × {}) ÷ ({} − {})",
                100 * later,
                trial.upBy(to),
                100 * first,
                trial.upBy(from),
                trial.upBy(to),
                trial.upBy(from));
        OptionalDouble found = trial.perDay(first, from, later, to);
        if (found.isEmpty()) {
            throw given.refuse("later_pct", refused(first, later, bounds));
        }
        double perDay = working.line(
                "fall of the log-odds per day",
                found.getAsDouble(),
                "",
                "found by halving until both ratings come out of what came up by days {} and {}",
                from,
                to);
        double halfAt = trial.halfAt(first, from, perDay).orElseThrow();
        working.line("day of an even chance", halfAt, "d", "goes with it");
        double ratio = working.line("DT50 over slope", Math.log(2) / perDay, "d", "ln(2) ÷ {}", perDay);
        if (ratio < USUAL_LEAST || ratio > USUAL_MOST) {
            working.caution(
                    "DT50 ÷ slope of " + (ratio < USUAL_LEAST ? "less than 2" : "more than 60")
                            + " days is hardly a herbicide's: the weeds may have come up otherwise than said, or were rated by size.");
        }
        double good = goodDay(working, perDay, halfAt);
        if (good < from || good > to) {
            working.caution("The day of 80 % lies outside the two looks: it is extrapolated.");
        }
        return new Outputs()
                .put("log_odds_per_day", perDay)
                .put("dt50_over_slope_d", ratio)
                .put("half_day", halfAt)
                .put("day_of_80", good)
                .put("between_pct", between);
    }

    private static String refused(double first, double later, double[] bounds) {
        return later >= first
                ? "less than first_pct: control that does not fall shows no loss"
                : "more than " + Math.ceil(1000 * bounds[0]) / 10
                        + " %: what was controlled by the first look does not come back, so weeds came up otherwise than said,"
                        + " were rated by size, or grew back";
    }

    private static double perDay(Given given, Working working) {
        double perDay = given.number("slope") * Math.log(2) / given.number("dt50_d");
        if (!(perDay > SLOWEST && perDay < QUICKEST)) {
            throw given.refuse("dt50_d", "with this slope, one by which control fades within 365 days");
        }
        return working.line(
                "fall of the log-odds per day",
                perDay,
                "",
                "{} × ln(2) ÷ {}",
                given.number("slope"),
                given.number("dt50_d"));
    }

    private static double today(Working working, double perDay, double halfAt, int day) {
        return working.line(
                "control of the day",
                100 * RatingTrial.control(perDay, halfAt, day),
                "%",
                "100 ÷ (1 + exp({} × ({} − {})))",
                perDay,
                day,
                halfAt);
    }

    private static double goodDay(Working working, double perDay, double halfAt) {
        return working.line(
                "day of 80 %", halfAt - Math.log(GOOD / (1 - GOOD)) / perDay, "d", "{} − ln(4) ÷ {}", halfAt, perDay);
    }
}
