package plumbrow.documents.weather;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.WeatherHour;
import plumbrow.documents.weather.WeatherText.Line;

/**
 * NOAA's Local Climatological Data as CSV: reports in local standard time all year, °F, mph, inches.
 *
 * A report from the half hour on is of the hour that ends next. Of several in an hour the routine one (FM-15) is kept, of several
 * routine ones the last. Letters behind a number mark it as suspect (s) or variable (V) and are taken off; a star is missing; T is
 * a trace of rain; VRB is no direction. Rows of days and months are skipped.
 *
 * Source: documentation of the data set; flags and FM-15 from memory.
 */
final class LocalClimate {
    private static final String AIR = "HourlyDryBulbTemperature";
    private static final Pattern NUMBER = Pattern.compile("(-?\\d*\\.?\\d+)[A-Za-z]?");
    private static final Pattern OKTAS = Pattern.compile("[A-Z]{2,3}:(\\d\\d)");
    private static final String ROUTINE = "FM-15";

    private LocalClimate() {}

    static boolean looksLike(String firstLine) {
        return firstLine.contains(AIR);
    }

    private record Report(boolean routine, LocalDateTime at, WeatherHour hour) {}

    static WeatherRead read(String text, WeatherAsked asked, String file) {
        Map<Instant, Report> kept = new HashMap<>();
        List<String> notes = new ArrayList<>();
        int suspect = 0;
        Double latitude = asked.latitude();
        Double longitude = asked.longitude();
        for (Line line : WeatherText.csv(text)) {
            if (line.has("LATITUDE") && line.has("LONGITUDE") && latitude == null) {
                latitude = WeatherText.number(line.number(), line.cell("LATITUDE"), "a latitude", -90, 90);
                longitude = WeatherText.number(line.number(), line.cell("LONGITUDE"), "a longitude", -180, 180);
            }
            String type = line.cell("REPORT_TYPE");
            if (type.startsWith("SO")
                    || (line.cell(AIR).isEmpty() && line.cell("HourlyWindSpeed").isEmpty())) {
                continue; // summary of a day or a month
            }
            LocalDateTime at;
            try {
                at = LocalDateTime.parse(line.cell("DATE").replace(' ', 'T'));
            } catch (DateTimeException fault) {
                throw WeatherTrouble.line(line.number(), line.cell("DATE"), "a DATE such as 2024-05-15T12:53:00");
            }
            if ((line.cell(AIR) + line.cell("HourlyWindSpeed")).matches(".*[sS*].*")) {
                suspect++;
            }
            LocalDateTime ends = at.plusMinutes(30).truncatedTo(ChronoUnit.HOURS);
            Instant begin = ends.minusHours(1).toInstant(asked.clock());
            Report report = new Report(type.startsWith(ROUTINE), at, hour(line, begin));
            kept.merge(begin, report, LocalClimate::better);
        }
        if (suspect > 0) {
            notes.add(suspect
                    + " reports are marked as suspect or starred; numbers were taken as printed, stars as missing.");
        }
        Map<Instant, WeatherHour> hours = new HashMap<>();
        kept.forEach((begin, report) -> hours.put(begin, report.hour()));
        return WeatherRead.hours("NOAA Local Climatological Data", asked, latitude, longitude, file, hours, notes);
    }

    private static Report better(Report one, Report other) {
        if (one.routine() != other.routine()) {
            return one.routine() ? one : other;
        }
        return other.at().isBefore(one.at()) ? one : other;
    }

    private static WeatherHour hour(Line line, Instant begin) {
        Double air = WeatherText.celsius(number(line, AIR, -80, 140));
        Double dewPoint = WeatherText.celsius(number(line, "HourlyDewPointTemperature", -100, 110));
        Double humidity = number(line, "HourlyRelativeHumidity", 0, 100);
        String rain = line.cell("HourlyPrecipitation");
        boolean trace = rain.startsWith("T");
        Double from =
                line.cell("HourlyWindDirection").equals("VRB") ? null : number(line, "HourlyWindDirection", 0, 360);
        return new WeatherHour(
                begin,
                false,
                air,
                humidity != null ? humidity : WeatherText.humidity(air, dewPoint),
                number(line, "HourlyWindSpeed", 0, 250),
                number(line, "HourlyWindGustSpeed", 0, 300),
                from == null || from == 0 ? null : from,
                trace ? Double.valueOf(0) : number(line, "HourlyPrecipitation", 0, 20),
                trace,
                null,
                sky(line.cell("HourlySkyConditions")));
    }

    private static @Nullable Double number(Line line, String heading, double low, double high) {
        String cell = line.cell(heading);
        if (cell.isEmpty() || cell.contains("*")) {
            return null;
        }
        Matcher number = NUMBER.matcher(cell);
        if (!number.matches()) {
            throw WeatherTrouble.line(
                    line.number(), cell, heading + " as a number, a number with one letter, or a blank");
        }
        return WeatherText.number(line.number(), number.group(1), heading, low, high);
    }

    /** The most eighths that any layer covers [%]. */
    private static @Nullable Double sky(String cell) {
        Double most = null;
        Matcher layers = OKTAS.matcher(cell);
        while (layers.find()) {
            double covered = Math.min(100, Integer.parseInt(layers.group(1)) * 12.5);
            most = most == null ? Double.valueOf(covered) : Double.valueOf(Math.max(most, covered));
        }
        return most;
    }
}
