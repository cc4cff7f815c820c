package plumbrow.science.weather;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import plumbrow.science.checks.Check;
import plumbrow.science.checks.CheckList;
import plumbrow.science.figure.Subject;

/** Air, sun and a day in May hour by hour: values from outside. */
public final class WeatherChecks {
    private WeatherChecks() {}

    public static List<Check> all() {
        CheckList checks = CheckList.of(Subject.WEATHER);
        air(checks);
        dayInMay(checks);
        sun(checks);
        return checks.all();
    }

    private static void air(CheckList checks) {
        checks.from("[sirad], es(25.1, 19.1)", VERIFIED)
                .value("mean saturation, kPa", "2.698918", () -> (fao(25.1) + fao(19.1)) / 2)
                .from("[fao-56], examples 3 and 5", MEMORY)
                .value("saturation at 24.5 °C, kPa", "3.075", () -> fao(24.5))
                .value("saturation at 15 °C, kPa", "1.705", () -> fao(15))
                .value("their mean", "2.39", () -> (fao(24.5) + fao(15)) / 2)
                .value(
                        "vapour of 18 °C at 82 % and 25 °C at 54 %, kPa",
                        "1.70", () -> (fao(18) * .82 + fao(25) * .54) / 2)
                .from("[fao-56], example 14", MEMORY)
                .figure("wind-at-two-metres", "speed=3.2 height=10 | speed=2.4")
                .from("independent arithmetic", COMPUTED)
                .value("saturation at 20 °C, hPa", "23.334", () -> AirMoisture.saturationHpa(20))
                .from("stations that give a dew point", COMPUTED)
                .value("Delta T of 24.4 °C, dew point 10.6 °C", "8.20", () -> deltaT(24.4, 10.6))
                .value("humidity of 76 °F, dew point 51 °F", "41.6", () -> AirMoisture.humidityPct(220 / 9.0, 95 / 9.0))
                .value("Delta T of 76 °F, dew point 51 °F", "8.25", () -> deltaT(220 / 9.0, 95 / 9.0));
    }

    private static double fao(double celsius) {
        return AirMoisture.saturationKpaFao(celsius);
    }

    private static double deltaT(double celsius, double dewPoint) {
        return celsius - WetBulb.celsius(celsius, AirMoisture.humidityPct(celsius, dewPoint));
    }

    private static void dayInMay(CheckList checks) {
        checks.from("a day in May", COMPUTED);
        for (String row : """
                11.0 96 .47 10.39 .053
                14.5 82 2.03 11.46 .297
                19.0 64 4.39 12.04 .791
                23.5 48 7.09 11.86 1.506
                27.0 38 9.35 11.48 2.211
                28.5 32 10.84 10.21 2.646
                27.0 36 9.72 10.66 2.282
                24.5 45 7.71 11.79 1.691
                18.0 74 3.11 13.30 .537""".lines().toList()) {
            String[] cells = row.split(" ", -1);
            String air = "temperature_c=" + cells[0] + " humidity_pct=" + cells[1];
            checks.figure("delta-t", air + " | delta_c=" + cells[2])
                    .figure("dew-point", air + " | dew_point_c=" + cells[3])
                    .figure("vapour-deficit", air + " | kpa=" + cells[4]);
        }
    }

    private static void sun(CheckList checks) {
        for (String row : """
                35 0 1994-01-02 0 07:08:12.8 16:59:55.9
                -35 0 1996-07-05 0 07:08:15.4 17:01:04.5""".lines().toList()) {
            times(checks.from("[reda-andreas], Table A2.1, within 1 s", VERIFIED), row, 1);
        }
        for (String row : """
                42.0347 -93.62 2024-05-15 -6 04:53:21 19:28:56
                42.0347 -93.62 2024-06-20 -6 04:38:51 19:53:37
                40.8136 -96.7026 2024-05-15 -6 05:08:56 19:37:59""".lines().toList()) {
            times(checks.from("an independent ephemeris, within 10 s", COMPUTED), row, 10);
        }
        Sun october = Sun.at(Sun.julianDay(LocalDate.of(1992, 10, 13)));
        checks.from("[meeus], examples 7.a, 25.a, 28.b", MEMORY)
                .value("Julian day of 1957-10-4.81", "2436116.31", () -> Sun.julianDay(LocalDate.of(1957, 10, 4)) + .81)
                .value("declination of 13 October 1992", "-7.785", () -> Math.toDegrees(october.declination()))
                .value("equation of time of 13 October 1992, min", "13.71", october::equationOfTimeMinutes)
                .from(
                        "[reda-andreas], 17 October 2003: with refraction and parallax, which are left out here",
                        VERIFIED)
                .near("azimuth", "194.34024", .005, () -> october2003("azimuth_deg"))
                .near(
                        "elevation, 90° less the zenith of 50.11162°",
                        "39.88838",
                        .02,
                        () -> october2003("elevation_deg"));
    }

    /** Latitude, longitude, date, clock, sunrise, sunset; compared in seconds of the day. */
    private static void times(CheckList checks, String row, double seconds) {
        String[] cells = row.split(" ", -1);
        double latitude = Double.parseDouble(cells[0]);
        double longitude = Double.parseDouble(cells[1]);
        LocalDate date = LocalDate.parse(cells[2]);
        double offset = Double.parseDouble(cells[3]) * 3600;
        String place = " at " + cells[0] + ", " + cells[1] + " on " + date + ", seconds of the day";
        checks.near(
                        "sunrise " + cells[4] + place,
                        secondsOf(cells[4]),
                        seconds,
                        () -> SunTimes.sunriseUtc(latitude, longitude, date).orElseThrow() * 60 + offset)
                .near(
                        "sunset " + cells[5] + place,
                        secondsOf(cells[5]),
                        seconds,
                        () -> SunTimes.sunsetUtc(latitude, longitude, date).orElseThrow() * 60 + offset);
    }

    private static String secondsOf(String clock) {
        return "%.1f".formatted(LocalTime.parse(clock).toNanoOfDay() / 1e9);
    }

    private static double october2003(String key) {
        return SunElevation.FIGURE
                .answer(SunElevation.FIGURE.examples().get(0).inputs())
                .number(key);
    }
}
