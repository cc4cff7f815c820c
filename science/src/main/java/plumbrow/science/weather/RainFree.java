package plumbrow.science.weather;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether the spray dries before rain, and the vapour in the air of a day from its ends.
 *
 *   rain hour = first hour with chance ≥ p or amount ≥ a;  spare = hour − label's rain-free hours
 *   e = 0.6108·exp(17.27·T/(T + 237.3)) [kPa];  ea = [e(Tmin)·RHmax + e(Tmax)·RHmin]/200
 *
 * Source: the label for the rain-free hours, 40 % and 0.02 in common practice; Allen et al. 1998, FAO-56 eq. 11 and 17
 * (example 5 from memory).
 */
public final class RainFree {
    public static final Figure FIGURE = Figure.declare("rain-free", Subject.WEATHER)
            .question("Does the forecast leave the rain-free hours the label asks for?")
            .input(list(
                    "chance_pct",
                    "Chance of rain in each hour after the spray ends",
                    "%",
                    Range.PERCENT,
                    "10,20,20,30,50"))
            .input(list(
                    "amount_in",
                    "Rain forecast for each of these hours",
                    "in",
                    Range.closed(0, 20),
                    "0,0,0.01,0.01,0.1"))
            .input(number("label_h", "Rain-free hours of the label", "h", Range.closed(0, 72), "4"))
            .input(number("limit_pct", "Chance that counts as rain", "%", Range.above(0, 100), "40")
                    .orElse("40"))
            .input(number("limit_in", "Amount that counts as rain", "in", Range.above(0, 5), "0.02")
                    .orElse("0.02"))
            .output("verdict", "In words", "")
            .output("dry_h", "Hours before the first that counts", "h")
            .output("spare_h", "Hours to spare; negative are missing", "h")
            .formula("dry hours = hours before the first with its chance or amount at the limit; spare = dry − label")
            .source("Limits common practice; the hours are the label's", PRACTICE)
            .validity(
                    "Whole hours of one forecast. Where the forecast ends sooner than the label's hours: unknown, not dry.")
            .caution("A forecast is not a promise. The label's hours are the law; some products wash off for longer.")
            .example(
                    "chance_pct=10,20,20,30,50 amount_in=0,0,0.01,0.01,0.1 label_h=4",
                    "verdict=long enough dry_h=4 spare_h=0",
                    "fifth hour counts, by hand",
                    COMPUTED)
            .example(
                    "chance_pct=10,60,20 amount_in=0,0,0 label_h=2",
                    "verdict=too short dry_h=1 spare_h=-1",
                    "by hand",
                    COMPUTED)
            .example(
                    "chance_pct=10,10 amount_in=0,0 label_h=4",
                    "verdict=unknown dry_h=2",
                    "the forecast ends",
                    COMPUTED)
            .model(RainFree::solve);

    public static final Figure DAY = Figure.declare("air-vapour-day", Subject.WEATHER)
            .question("How much vapour does the air of a day hold?")
            .input(number("tmin_c", "Lowest temperature", "°C", Range.closed(-40, 50), "18"))
            .input(number("tmax_c", "Highest temperature", "°C", Range.closed(-40, 50), "25"))
            .input(number("humidity_most_pct", "Highest humidity, at the lowest temperature", "%", Range.PERCENT, "82"))
            .input(number(
                    "humidity_least_pct", "Lowest humidity, at the highest temperature", "%", Range.PERCENT, "54"))
            .output("vapour_kpa", "Vapour pressure of the air", "kPa")
            .output("full_kpa", "If it were full, mean of both ends", "kPa")
            .output("missing_kpa", "What it could still take up", "kPa")
            .formula(
                    "e = 0.6108 × exp(17.27 × T ÷ (T + 237.3)); vapour = (e(lowest) × highest humidity + e(highest) × lowest humidity) ÷ 200")
            .source("Allen et al. 1998, FAO-56 equations 11, 12 and 17", MEMORY)
            .validity("Daily values. The form of FAO-56, within 0.3 % of the one the other humidity figures use.")
            .example(
                    "tmin_c=18 tmax_c=25 humidity_most_pct=82 humidity_least_pct=54",
                    "vapour_kpa=1.70",
                    "FAO-56 example 5",
                    MEMORY)
            .example(
                    "tmin_c=15 tmax_c=24.5 humidity_most_pct=100 humidity_least_pct=100",
                    "full_kpa=2.39 vapour_kpa=2.39 missing_kpa=0",
                    "FAO-56 example 3",
                    MEMORY)
            .model(RainFree::solveDay);

    private RainFree() {}

    private static Outputs solve(Given given, Working working) {
        double[] chances = given.list("chance_pct");
        double[] amounts = given.list("amount_in");
        if (chances.length != amounts.length) {
            throw given.refuse("amount_in", "as many hours as chance_pct (" + chances.length + ")");
        }
        int dry = 0;
        while (dry < chances.length
                && chances[dry] < given.number("limit_pct")
                && amounts[dry] < given.number("limit_in")) {
            dry++;
        }
        double label = given.number("label_h");
        double spare = working.line("hours to spare", dry - label, "h", "{} − {}", dry, label);
        boolean ends = dry == chances.length;
        String verdict = spare >= 0 ? "long enough" : ends ? "unknown" : "too short";
        return new Outputs().put("verdict", verdict).put("dry_h", dry).put("spare_h", spare);
    }

    /** Vapour pressure of saturated air by FAO-56 [kPa], −40 to 50 °C. */
    private static double fullKpa(double celsius) {
        return 0.6108 * Math.exp(17.27 * celsius / (celsius + 237.3));
    }

    private static Outputs solveDay(Given given, Working working) {
        double min = given.number("tmin_c");
        double max = given.number("tmax_c");
        double most = given.number("humidity_most_pct");
        double least = given.number("humidity_least_pct");
        if (min > max) {
            throw given.refuse("tmin_c", "a number not above tmax_c");
        }
        if (least > most) {
            throw given.refuse("humidity_least_pct", "a number not above humidity_most_pct");
        }
        double low = working.line(
                "full at the lowest", fullKpa(min), "kPa", "0.6108 × exp(17.27 × {} ÷ ({} + 237.3))", min, min);
        double high = working.line(
                "full at the highest", fullKpa(max), "kPa", "0.6108 × exp(17.27 × {} ÷ ({} + 237.3))", max, max);
        double vapour = working.line(
                "vapour",
                (low * most + high * least) / 200,
                "kPa",
                "({} × {} + {} × {}) ÷ 200",
                low,
                most,
                high,
                least);
        double full = working.line("if it were full", (low + high) / 2, "kPa", "({} + {}) ÷ 2", low, high);
        return new Outputs()
                .put("vapour_kpa", vapour)
                .put("full_kpa", full)
                .put("missing_kpa", working.line("missing", full - vapour, "kPa", "{} − {}", full, vapour));
    }
}
