package plumbrow.science.weather;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import java.time.LocalDate;
import java.util.Locale;
import java.util.OptionalDouble;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Sunrise and sunset by the clock of a place.
 *
 *   cos H = cos 90.833°/(cos φ·cos δ) − tan φ·tan δ;  |cos H| > 1: no rise and no set
 *   sunrise = 720 − 4(lon + H) − EoT;  sunset = 720 − 4(lon − H) − EoT      [min UTC], lon east positive
 *
 * δ and EoT of {@link Sun} are taken at the answer itself, by repeating. 90.833° is 34′ of refraction and 16′ of the sun's
 * radius (physics.csbsju.edu). The clock is the offset given: standard time, unless daylight time is asked for.
 *
 * Source: Meeus, Astronomical Algorithms; checked against Reda & Andreas, NREL/TP-560-34302, Table A2.1, within seconds.
 */
public final class SunTimes {
    private static final double ZENITH = Math.toRadians(90.833);
    private static final double NOON_MINUTES = 720;
    private static final double MINUTES_PER_DEGREE = 4;
    private static final double MINUTES_PER_DAY = 1440;
    private static final double MINUTES_PER_HOUR = 60;
    private static final int ROUNDS = 4;

    public static final Figure FIGURE = Figure.declare("sun-times", Subject.WEATHER)
            .question("When does the sun rise and set?")
            .alsoAsked("Until when may I spray before dark?")
            .input(Asked.LATITUDE)
            .input(Asked.LONGITUDE)
            .input(Asked.DATE)
            .input(Asked.OFFSET)
            .output("sunrise", "Sunrise", "")
            .output("sunset", "Sunset", "")
            .output("day_length_h", "From sunrise to sunset", "h")
            .sometimes("sunrise_h", "Sunrise, hours of the clock", "h")
            .sometimes("sunset_h", "Sunset, hours of the clock", "h")
            .formula(
                    "cos H = cos 90.833° ÷ (cos φ × cos δ) − tan φ × tan δ; minutes UTC = 720 − 4 × (longitude ± H) − equation of time")
            .source("[meeus]; [reda-andreas]", VERIFIED)
            .validity(
                    "1900 to 2100, flat horizon, to the nearest minute. Where the sun does not rise or set that day the times are the word none.")
            .caution("The clock is the offset you give: add an hour of daylight time to it from March to November.")
            .example(
                    "latitude=35 longitude=0 date=1994-01-02 utc_offset_h=0",
                    "sunrise=07:08 sunset=17:00 sunrise_h=7.137 sunset_h=16.999",
                    "[reda-andreas], Table A2.1: 7:08:12.8, 16:59:55.9",
                    VERIFIED)
            .example(
                    "latitude=-35 longitude=0 date=1996-07-05 utc_offset_h=0",
                    "sunrise=07:08 sunset=17:01 sunrise_h=7.138 sunset_h=17.018",
                    "[reda-andreas], Table A2.1: 7:08:15.4, 17:01:04.5",
                    VERIFIED)
            .example(
                    "latitude=42.0347 longitude=-93.62 date=2024-05-15 utc_offset_h=-6",
                    "sunrise=04:53 sunset=19:29 day_length_h=14.594",
                    "4:53:20, 19:28:59",
                    COMPUTED)
            .example(
                    "latitude=42.0347 longitude=-93.62 date=2024-06-20 utc_offset_h=-6",
                    "sunrise=04:39 sunset=19:54",
                    "4:38:49, 19:53:41",
                    COMPUTED)
            .example(
                    "latitude=40.8136 longitude=-96.7026 date=2024-05-15 utc_offset_h=-6",
                    "sunrise=05:09 sunset=19:38",
                    "5:08:55, 19:38:02",
                    COMPUTED)
            .model(SunTimes::solve);

    private SunTimes() {}

    /** Sunrise [min UTC, from the start of the date], or empty where the sun does not rise. */
    public static OptionalDouble sunriseUtc(double latitude, double longitude, LocalDate date) {
        return crossing(latitude, longitude, Sun.julianDay(date), -1);
    }

    /** Sunset [min UTC, from the start of the date, may pass 1440], or empty where the sun does not set. */
    public static OptionalDouble sunsetUtc(double latitude, double longitude, LocalDate date) {
        return crossing(latitude, longitude, Sun.julianDay(date), 1);
    }

    private static OptionalDouble crossing(double latitude, double longitude, double midnight, int side) {
        double minutes = NOON_MINUTES - MINUTES_PER_DEGREE * longitude;
        for (int i = 0; i < ROUNDS; i++) {
            Sun sun = Sun.at(midnight + minutes / MINUTES_PER_DAY);
            double cosine = hourAngleCosine(latitude, sun.declination());
            if (Math.abs(cosine) > 1) {
                return OptionalDouble.empty();
            }
            double hourAngle = Math.toDegrees(Math.acos(cosine));
            minutes = NOON_MINUTES - MINUTES_PER_DEGREE * (longitude - side * hourAngle) - sun.equationOfTimeMinutes();
        }
        return OptionalDouble.of(minutes);
    }

    private static double hourAngleCosine(double latitude, double declination) {
        double phi = Math.toRadians(latitude);
        return Math.cos(ZENITH) / (Math.cos(phi) * Math.cos(declination)) - Math.tan(phi) * Math.tan(declination);
    }

    /** Whether the sun stands above the horizon at its highest of the date. */
    private static boolean upAtNoon(double latitude, double longitude, LocalDate date) {
        double noon = Sun.julianDay(date) + 0.5 - longitude / 360;
        return hourAngleCosine(latitude, Sun.at(noon).declination()) < 1;
    }

    private static Outputs solve(Given given, Working working) {
        double latitude = given.number("latitude");
        double longitude = given.number("longitude");
        double offset = given.number("utc_offset_h") * MINUTES_PER_HOUR;
        LocalDate date = Asked.date(given);
        // Noon must fall on the date asked for: just west of the date line the clock may be a day ahead of the sun.
        long daysAhead = Math.round((offset - MINUTES_PER_DEGREE * longitude) / MINUTES_PER_DAY);
        LocalDate sunDate = date.minusDays(daysAhead);
        double shift = offset + daysAhead * -MINUTES_PER_DAY;
        OptionalDouble rise = sunriseUtc(latitude, longitude, sunDate);
        OptionalDouble set = sunsetUtc(latitude, longitude, sunDate);
        if (rise.isEmpty() || set.isEmpty()) {
            boolean up = upAtNoon(latitude, longitude, sunDate);
            working.caution(up ? "The sun does not set that day." : "The sun does not rise that day.");
            double hours = working.step("day length", up ? "the sun stays up" : "the sun stays down", up ? 24 : 0, "h");
            return new Outputs().put("sunrise", "none").put("sunset", "none").put("day_length_h", hours);
        }
        double sunrise = showClock(working, "sunrise", rise.getAsDouble(), shift);
        double sunset = showClock(working, "sunset", set.getAsDouble(), shift);
        double hours = working.line(
                "day length",
                (set.getAsDouble() - rise.getAsDouble()) / MINUTES_PER_HOUR,
                "h",
                "({} − {}) ÷ 60",
                sunset,
                sunrise);
        return new Outputs()
                .put("sunrise", clock(sunrise))
                .put("sunset", clock(sunset))
                .put("day_length_h", hours)
                .put("sunrise_h", sunrise / MINUTES_PER_HOUR)
                .put("sunset_h", sunset / MINUTES_PER_HOUR);
    }

    private static double showClock(Working working, String label, double utc, double shift) {
        double minutes = working.line(label + ", minutes of the clock", utc + shift, "min", "{} + {}", utc, shift);
        if (minutes < 0 || minutes >= MINUTES_PER_DAY) {
            working.caution(
                    "By this clock the " + label + " falls on the " + (minutes < 0 ? "day before." : "next day."));
        }
        return minutes;
    }

    /** Minutes of the day as HH:MM, to the nearest minute. */
    static String clock(double minutes) {
        int whole = Math.floorMod(Math.round(minutes), (int) MINUTES_PER_DAY);
        return String.format(Locale.ROOT, "%02d:%02d", whole / 60, whole % 60);
    }
}
