package plumbrow.science.weather;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import java.util.ArrayList;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Which hours of a day are fit for spraying, and why the others are not.
 *
 *   an hour passes where least ≤ wind ≤ most, least ≤ ΔT ≤ most, no rain, and it lies outside the time of inversions: from
 *   sunset less 2 h to sunrise and 1 h
 *
 * Every rule that fails is named. The longest run of hours that pass counts more than their number.
 *
 * Source: wind 3 to 8 mph pesticidestewardship.org (here 3 to 10, as many labels); ΔT 2 to 8, marginal to 10, after GRDC;
 * time of inversions GRDC Module 10.8. All of them are settings.
 */
public final class SprayHours {
    private static final double BEST_DELTA_T = 8;

    public static final Figure FIGURE = Figure.declare("spray-hours", Subject.WEATHER)
            .question("Which of these hours are fit for spraying?")
            .input(list("hour", "Hour of the clock", "h", Range.closed(0, 24), "5,7,9,11,13,15,17,18,20"))
            .input(list(
                    "temperature_c",
                    "Air temperature",
                    "°C",
                    Range.closed(-20, 50),
                    "11,14.5,19,23.5,27,28.5,27,24.5,18"))
            .input(list("humidity_pct", "Relative humidity", "%", Range.closed(5, 99), "96,82,64,48,38,32,36,45,74"))
            .input(list(
                    "wind_mph",
                    "Wind at the height of the label's limit",
                    "mph",
                    Range.closed(0, 200),
                    "2,4.5,6,8.5,9.5,12,9,5,1.5"))
            .input(list("rain_in", "Rain", "in", Range.closed(0, 20), "0,0,0,0,0,0,0,0,0")
                    .optional())
            .input(number("sunrise_h", "Sunrise", "h", Range.closed(0, 24), "4.889"))
            .input(number("sunset_h", "Sunset", "h", Range.closed(0, 24), "19.483"))
            .input(number("wind_least_mph", "Least wind", "mph", Range.closed(0, 20), "3")
                    .orElse("3"))
            .input(number("wind_most_mph", "Most wind", "mph", Range.closed(0, 40), "10")
                    .orElse("10"))
            .input(number("delta_least_c", "Least delta T", "°C", Range.closed(0, 20), "2")
                    .orElse("2"))
            .input(number("delta_most_c", "Most delta T", "°C", Range.closed(0, 30), "10")
                    .orElse("10"))
            .input(number("before_sunset_h", "Inversions from so long before sunset", "h", Range.closed(0, 8), "2")
                    .orElse("2"))
            .input(number("after_sunrise_h", "Inversions until so long after sunrise", "h", Range.closed(0, 8), "1")
                    .orElse("1"))
            .output("passing", "Hours that pass", "")
            .output("longest_run", "Longest run of them", "")
            .output("delta_t_c", "Delta T of each hour", "°C")
            .output("results", "Each hour", "")
            .formula(
                    "pass where wind and delta T lie in their limits, no rain, and not within 2 h before sunset to 1 h after sunrise")
            .source("Rules of [pesticide-stewardship] and [grdc-manual], as settings", PRACTICE)
            .validity(
                    "Delta T by Stull 2011: 5 to 99 % humidity, −20 to 50 °C. A run breaks where listed hours do not follow each other.")
            .caution(
                    "The label's wind, hours and inversion words are the law. A forecast wind is at 10 m, a label's usually lower.")
            .caution("Two hours before sunset is not always enough: in June inversions began earlier at some places.")
            .example(
                    "hour=5,7,9,11,13,15,17,18,20 temperature_c=11,14.5,19,23.5,27,28.5,27,24.5,18"
                            + " humidity_pct=96,82,64,48,38,32,36,45,74 wind_mph=2,4.5,6,8.5,9.5,12,9,5,1.5 sunrise_h=4.889 sunset_h=19.483",
                    "passing=5 longest_run=1 delta_t_c=.47,2.03,4.39,7.09,9.35,10.84,9.72,7.71,3.11",
                    "5 of 9, Ames, 15 May 2024",
                    COMPUTED)
            .example(
                    "hour=9,10,11 temperature_c=19,21,23.5 humidity_pct=64,56,48 wind_mph=6,7,8.5 rain_in=0,0.1,0 sunrise_h=5 sunset_h=20",
                    "passing=2 longest_run=1",
                    "rain in the middle, by hand",
                    COMPUTED)
            .model(SprayHours::solve);

    private SprayHours() {}

    private static Outputs solve(Given given, Working working) {
        double[] hours = given.list("hour");
        double[] warmth = same(given, "temperature_c", hours.length);
        double[] humidity = same(given, "humidity_pct", hours.length);
        double[] wind = same(given, "wind_mph", hours.length);
        double[] rain = given.has("rain_in") ? same(given, "rain_in", hours.length) : new double[hours.length];
        if (given.number("sunset_h") <= given.number("sunrise_h")) {
            throw given.refuse("sunset_h", "an hour after sunrise_h");
        }
        double[] deltas = new double[hours.length];
        List<String> results = new ArrayList<>();
        int passing = 0;
        int run = 0;
        int longest = 0;
        for (int i = 0; i < hours.length; i++) {
            if (!WetBulb.holds(warmth[i], humidity[i])) {
                throw given.refuse(
                        "humidity_pct", "air that is not both cold and dry: the wet bulb is not known there");
            }
            double wet = WetBulb.celsius(warmth[i], humidity[i]);
            deltas[i] = i == 0
                    ? working.line("delta T of the first hour", warmth[i] - wet, "", "{} − {}", warmth[i], wet)
                    : warmth[i] - wet;
            List<String> faults = faults(given, hours[i], wind[i], deltas[i], rain[i]);
            boolean follows = i > 0 && hours[i] - hours[i - 1] <= 1 && hours[i] > hours[i - 1];
            run = faults.isEmpty() ? (follows ? run + 1 : 1) : 0;
            longest = Math.max(longest, run);
            passing += faults.isEmpty() ? 1 : 0;
            results.add(
                    faults.isEmpty()
                            ? (deltas[i] > BEST_DELTA_T ? "pass, marginal delta T" : "pass")
                            : "fail " + String.join(", ", faults));
        }
        return new Outputs()
                .put("passing", passing)
                .put("longest_run", longest)
                .put("delta_t_c", deltas)
                .put("results", results);
    }

    private static List<String> faults(Given given, double hour, double wind, double delta, double rain) {
        List<String> faults = new ArrayList<>();
        if (wind < given.number("wind_least_mph")) {
            faults.add("wind too low");
        }
        if (wind > given.number("wind_most_mph")) {
            faults.add("wind too high");
        }
        if (delta < given.number("delta_least_c")) {
            faults.add("delta T too low");
        }
        if (delta > given.number("delta_most_c")) {
            faults.add("delta T too high");
        }
        if (rain > 0) {
            faults.add("rain");
        }
        boolean inversions = hour < given.number("sunrise_h") + given.number("after_sunrise_h")
                || hour > given.number("sunset_h") - given.number("before_sunset_h");
        if (inversions) {
            faults.add("time of inversions");
        }
        return faults;
    }

    private static double[] same(Given given, String key, int count) {
        double[] values = given.list(key);
        if (values.length != count) {
            throw given.refuse(key, "as many numbers as hour has (" + count + ")");
        }
        return values;
    }
}
