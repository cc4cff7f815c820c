package plumbrow.science.weather;

import static plumbrow.science.figure.Input.text;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.time.DateTimeException;
import java.time.LocalTime;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How high the sun stands, without refraction.
 *
 *   true solar time [min] = UTC + EoT + 4·lon;  hour angle = time/4 − 180 [°]
 *   sin(elevation) = sin φ·sin δ + cos φ·cos δ·cos(hour angle);  azimuth from north, clockwise
 *
 * Source: {@link Sun}; checked against Reda & Andreas, NREL/TP-560-34302, the case of 17 October 2003.
 */
public final class SunElevation {
    private static final double SECONDS_PER_DAY = 86_400;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double HOURS_PER_DAY = 24;

    public static final Figure FIGURE = Figure.declare("sun-elevation", Subject.WEATHER)
            .question("How high does the sun stand?")
            .input(Asked.LATITUDE)
            .input(Asked.LONGITUDE)
            .input(Asked.DATE)
            .input(text("time", "Time of the clock", "12:00"))
            .input(Asked.OFFSET)
            .output("elevation_deg", "Elevation above the horizon", "°")
            .output("azimuth_deg", "Direction, from north clockwise", "°")
            .formula("sin(elevation) = sin φ × sin δ + cos φ × cos δ × cos(hour angle)")
            .source("[meeus]; [reda-andreas]", VERIFIED)
            .validity("1900 to 2100; without refraction, which lifts the sun by half a degree at the horizon.")
            .example(
                    "latitude=39.742476 longitude=-105.1786 date=2003-10-17 time=12:30:30 utc_offset_h=-7",
                    "elevation_deg=39.872 azimuth_deg=194.343",
                    "published apparent elevation 39.888, azimuth 194.340",
                    COMPUTED)
            .example(
                    "latitude=42.0347 longitude=-93.62 date=2024-05-15 time=12:00 utc_offset_h=-6",
                    "elevation_deg=66.96",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "latitude=42.0347 longitude=-93.62 date=2024-06-20 time=18:00 utc_offset_h=-6",
                    "elevation_deg=18.35",
                    "independent arithmetic",
                    COMPUTED)
            .model(SunElevation::solve);

    private SunElevation() {}

    private static Outputs solve(Given given, Working working) {
        double offset = given.number("utc_offset_h");
        double clockSeconds = time(given).toSecondOfDay();
        double julianDay = Sun.julianDay(Asked.date(given)) + clockSeconds / SECONDS_PER_DAY - offset / HOURS_PER_DAY;
        Sun sun = Sun.at(julianDay);
        double utcMinutes = clockSeconds / SECONDS_PER_MINUTE - offset * 60;
        double angle = working.line(
                "hour angle",
                (utcMinutes + sun.equationOfTimeMinutes()) / 4 + given.number("longitude") - 180,
                "°",
                "({} + {}) ÷ 4 + {} − 180",
                utcMinutes,
                sun.equationOfTimeMinutes(),
                given.number("longitude"));
        working.line("declination", Math.toDegrees(sun.declination()), "°", "of the sun at this moment");
        double phi = Math.toRadians(given.number("latitude"));
        double hour = Math.toRadians(angle);
        double delta = sun.declination();
        double sine = Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.cos(hour);
        double elevation = working.step(
                "elevation",
                "angle whose sine is sin φ × sin δ + cos φ × cos δ × cos(hour angle)",
                Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine)))),
                "°");
        double south = Math.atan2(Math.sin(hour), Math.cos(hour) * Math.sin(phi) - Math.tan(delta) * Math.cos(phi));
        return new Outputs()
                .put("elevation_deg", elevation)
                .put("azimuth_deg", (Math.toDegrees(south) + 180 + 360) % 360);
    }

    private static LocalTime time(Given given) {
        try {
            return LocalTime.parse(given.word("time"));
        } catch (DateTimeException e) {
            throw given.refuse("time", "a time of the day such as 06:30 or 18:05");
        }
    }
}
