package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The vapour that the air of a day holds, from its ends.
 *
 *   e = 0.6108·exp(17.27·T/(T + 237.3)) [kPa];  ea = [e(Tmin)·RHmax + e(Tmax)·RHmin]/200
 *
 *   T  [°C];  RH  relative humidity [%], the highest at the lowest temperature
 *
 * Source: Allen et al. 1998, FAO-56 equations 11, 12 and 17 (example 5 as in NCL; example 3 from memory).
 */
public final class AirVapourDay {
    public static final Figure FIGURE = Figure.declare("air-vapour-day", Subject.WEATHER)
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
            .source("[fao-56], equations 11, 12 and 17, as in [ncl-fao56]", VERIFIED)
            .validity("Daily values. The form of FAO-56, within 0.3 % of the one the other humidity figures use.")
            .example(
                    "tmin_c=18 tmax_c=25 humidity_most_pct=82 humidity_least_pct=54",
                    "vapour_kpa=1.7015",
                    "[fao-56], example 5, as in [ncl-fao56]",
                    VERIFIED)
            .example(
                    "tmin_c=15 tmax_c=24.5 humidity_most_pct=100 humidity_least_pct=100",
                    "full_kpa=2.39 vapour_kpa=2.39 missing_kpa=0",
                    "[fao-56], example 3",
                    MEMORY)
            .model(AirVapourDay::solve);

    private AirVapourDay() {}

    private static Outputs solve(Given given, Working working) {
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

    /** Vapour pressure of saturated air by FAO-56 [kPa], −40 to 50 °C. */
    private static double fullKpa(double celsius) {
        return 0.6108 * Math.exp(17.27 * celsius / (celsius + 237.3));
    }
}
