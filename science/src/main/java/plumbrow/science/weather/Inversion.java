package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether cold air lies under warm, so that fine droplets hang and drift far.
 *
 *   measured: warmer above than below by more than the error of the sensors → present; within it undetermined; else absent
 *   not measured: from 2 h before sunset to 1 h after sunrise likely with wind below 3 mph and cloud below 25 %, else
 *   possible; outside that time unlikely. A wind or cloud that is not known never makes it less.
 *
 * In June and July more than 60 % of Missouri evenings had one, some from 4 pm: two hours before sunset are not always enough.
 *
 * Source: time: GRDC Spray Application Manual, module 10.8; break-up above 3 mph: agprofessional.com; the scoring is ours.
 */
public final class Inversion {
    private static final double CALM_MPH = 3;
    private static final double CLEAR_PCT = 25;

    public static final Figure FIGURE = Figure.declare("inversion", Subject.WEATHER)
            .question("Does cold air lie under warm?")
            .alsoAsked("Is there an inversion tonight?")
            .input(number("hours_to_sunset", "Hours until sunset, negative after it", "h", Range.closed(-24, 24), "1"))
            .input(number(
                    "hours_since_sunrise", "Hours since sunrise, negative before it", "h", Range.closed(-24, 24), "13"))
            .input(number("wind_mph", "Wind", "mph", Range.closed(0, 200), "2").optional())
            .input(number("cloud_pct", "Cloud", "%", Range.PERCENT, "10").optional())
            .input(number(
                            "upper_less_lower_f",
                            "Measured: air at 8 to 30 ft less air near the ground",
                            "°F",
                            Range.closed(-60, 60),
                            "0.8")
                    .optional())
            .input(number("error_f", "Error of both sensors together", "°F", Range.closed(0, 10), "1")
                    .orElse("1"))
            .input(number("before_sunset_h", "Window opens before sunset", "h", Range.closed(0, 8), "2")
                    .orElse("2"))
            .input(number("after_sunrise_h", "Window closes after sunrise", "h", Range.closed(0, 8), "1")
                    .orElse("1"))
            .output("inversion", "An inversion is", "")
            .formula(
                    "measured: present, undetermined or absent; else by window, wind and cloud: likely, possible or unlikely")
            .source("[grdc-manual], module 10.8; [ndsu-ae1705]; scoring ours", VERIFIED)
            .validity("Shaded sensors. The window of two hours is not always enough in summer.")
            .caution(
                    "Smoke or dust lying flat, dew, ground fog, a clear calm evening: do not spray, whatever this says.")
            .example(
                    "hours_to_sunset=1 hours_since_sunrise=13 upper_less_lower_f=2",
                    "inversion=present",
                    "the rule counted apart from this code",
                    COMPUTED)
            .example(
                    "hours_to_sunset=6 hours_since_sunrise=8 upper_less_lower_f=-3",
                    "inversion=absent",
                    "the rule counted apart from this code",
                    COMPUTED)
            .example(
                    "hours_to_sunset=1 hours_since_sunrise=13 upper_less_lower_f=.8",
                    "inversion=undetermined",
                    "the rule counted apart from this code",
                    COMPUTED)
            .example(
                    "hours_to_sunset=1 hours_since_sunrise=13 wind_mph=2 cloud_pct=10",
                    "inversion=likely",
                    "the rule counted apart from this code",
                    COMPUTED)
            .example(
                    "hours_to_sunset=1 hours_since_sunrise=13 wind_mph=5 cloud_pct=10",
                    "inversion=possible",
                    "the rule counted apart from this code",
                    COMPUTED)
            .example(
                    "hours_to_sunset=1 hours_since_sunrise=13",
                    "inversion=likely",
                    "wind and cloud unknown, never clear",
                    COMPUTED)
            .example(
                    "hours_to_sunset=6 hours_since_sunrise=8 wind_mph=6 cloud_pct=10",
                    "inversion=unlikely",
                    "the rule counted apart from this code",
                    COMPUTED)
            .model(Inversion::solve);

    private Inversion() {}

    /**
     * Whether a moment lies in the time of inversions.
     *
     * @param hoursToSunset until sunset, negative after it [h]
     * @param hoursSinceSunrise since sunrise, negative before it [h]
     */
    public static boolean inWindow(
            double hoursToSunset, double hoursSinceSunrise, double beforeSunsetH, double afterSunriseH) {
        return hoursToSunset <= beforeSunsetH || hoursSinceSunrise <= afterSunriseH;
    }

    /**
     * What is to be thought where nobody measured: likely, possible or unlikely.
     *
     * @param windMph near the ground [mph]; 0 where unknown
     * @param cloudPct sky covered [%]; 0 where unknown
     */
    public static String unmeasured(boolean inWindow, double windMph, double cloudPct) {
        if (!inWindow) {
            return "unlikely";
        }
        return windMph < CALM_MPH && cloudPct < CLEAR_PCT ? "likely" : "possible";
    }

    private static Outputs solve(Given given, Working working) {
        if (given.has("upper_less_lower_f")) {
            double warmer = working.line(
                    "warmer above by",
                    given.number("upper_less_lower_f"),
                    "°F",
                    "{}",
                    given.number("upper_less_lower_f"));
            double error = given.number("error_f");
            String found = warmer > error ? "present" : warmer < -error ? "absent" : "undetermined";
            return new Outputs().put("inversion", found);
        }
        double sunset = given.number("hours_to_sunset");
        double sunrise = given.number("hours_since_sunrise");
        boolean inWindow = inWindow(sunset, sunrise, given.number("before_sunset_h"), given.number("after_sunrise_h"));
        working.line("until sunset", sunset, "h", "{}", sunset);
        working.line("since sunrise", sunrise, "h", "{}", sunrise);
        if (!given.has("wind_mph") || !given.has("cloud_pct")) {
            working.caution("Wind or cloud is unknown and counted as calm and clear.");
        }
        return new Outputs()
                .put("inversion", unmeasured(inWindow, given.numberOr("wind_mph", 0), given.numberOr("cloud_pct", 0)));
    }
}
