package plumbrow.documents.weather;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.json.simple.JSONArray;
import org.json.simple.JSONObject;
import org.json.simple.parser.JSONParser;
import org.json.simple.parser.ParseException;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.WeatherHour;

/**
 * The National Weather Service's forecast as its interface gives it, saved to a file: the grid of the place (layers of values with
 * a start and a duration) or the hourly product (periods with words such as "5 to 10 mph", of which the higher counts).
 *
 * A value holds for every hour of its duration; an amount of rain is the total of it and is spread. A value that is null is missing.
 * A unit that is not known here is refused, not guessed.
 *
 * Source: the interface's documentation and samples; that rain is the total of its interval from memory.
 */
final class ForecastJson {
    private static final Pattern WIND = Pattern.compile("(?:(\\d+) to )?(\\d+) (mph|km/h)");
    private static final Pattern INTERVAL = Pattern.compile("(.+)/P(?:(\\d+)D)?(T.+)?");
    private static final List<String> POINTS =
            List.of("N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW");

    private ForecastJson() {}

    static WeatherRead read(String text, WeatherAsked asked, String file) {
        Object parsed;
        try {
            parsed = new JSONParser().parse(text);
        } catch (ParseException broken) {
            throw new WeatherTrouble(
                    "The file " + file + " is no JSON; it is broken at character " + broken.getPosition() + ".");
        } catch (RuntimeException | Error broken) {
            throw new WeatherTrouble("The file " + file + " is no JSON that can be read.");
        }
        if (!(parsed instanceof JSONObject all) || !(all.get("properties") instanceof JSONObject properties)) {
            throw new WeatherTrouble(
                    "The file " + file + " has no properties; expected the hourly forecast or the forecast"
                            + " grid of the National Weather Service.");
        }
        double[] middle = middle(all.get("geometry"));
        Double latitude = middle == null ? asked.latitude() : Double.valueOf(middle[1]);
        Double longitude = middle == null ? asked.longitude() : Double.valueOf(middle[0]);
        boolean periods = properties.get("periods") instanceof JSONArray;
        Map<Instant, WeatherHour> hours =
                properties.get("periods") instanceof JSONArray list ? periods(list) : grid(properties, file);
        if (hours.isEmpty()) {
            throw new WeatherTrouble("The file " + file + " holds no hour of a forecast.");
        }
        Object made = properties.get(periods ? "generatedAt" : "updateTime");
        List<String> notes = new ArrayList<>();
        notes.add("A forecast" + (made == null ? "" : " of " + made) + ": it is not a promise. Measure on the day.");
        return WeatherRead.hours("National Weather Service forecast", asked, latitude, longitude, file, hours, notes);
    }

    private static Map<Instant, WeatherHour> periods(JSONArray periods) {
        Map<Instant, WeatherHour> hours = new HashMap<>();
        for (Object each : periods) {
            if (!(each instanceof JSONObject period)) {
                throw new WeatherTrouble(
                        "The forecast has a period that is none; expected startTime, temperature, windSpeed.");
            }
            Instant begin = moment(String.valueOf(period.get("startTime"))).truncatedTo(ChronoUnit.HOURS);
            Double air = temperature(period);
            Double dewPoint = value(period.get("dewpoint"));
            Double humidity = value(period.get("relativeHumidity"));
            String wind = String.valueOf(period.get("windSpeed"));
            int point = POINTS.indexOf(String.valueOf(period.get("windDirection")));
            hours.put(
                    begin,
                    new WeatherHour(
                            begin,
                            true,
                            air,
                            humidity != null ? humidity : WeatherText.humidity(air, dewPoint),
                            period.get("windSpeed") == null ? null : wind(wind),
                            period.get("windGust") == null ? null : wind(String.valueOf(period.get("windGust"))),
                            point < 0 ? null : Double.valueOf(point * 22.5),
                            null,
                            false,
                            value(period.get("probabilityOfPrecipitation")),
                            null));
        }
        return hours;
    }

    private static @Nullable Double temperature(JSONObject period) {
        Object value = period.get("temperature");
        if (!(value instanceof Number number)) {
            return null;
        }
        String unit = String.valueOf(period.get("temperatureUnit"));
        return switch (unit) {
            case "F" -> WeatherText.celsius(number.doubleValue());
            case "C" -> Double.valueOf(number.doubleValue());
            default ->
                throw new WeatherTrouble(
                        "The forecast's temperatureUnit is '" + WeatherTrouble.shown(unit) + "'; expected F or C.");
        };
    }

    private static double wind(String words) {
        Matcher parts = WIND.matcher(words);
        if (!parts.matches()) {
            throw new WeatherTrouble("The forecast's wind is '" + WeatherTrouble.shown(words)
                    + "'; expected words such as 8 mph or 5 to 10 mph.");
        }
        double speed = Double.parseDouble(parts.group(2));
        return parts.group(3).equals("mph") ? speed : speed * WeatherText.MPH_PER_KM_H;
    }

    /** A value with its unit; degrees and percent alone come so. */
    private static @Nullable Double value(@Nullable Object quantity) {
        if (!(quantity instanceof JSONObject object) || !(object.get("value") instanceof Number number)) {
            return null;
        }
        return convert(number.doubleValue(), String.valueOf(object.get("unitCode")));
    }

    private static double convert(double value, String unit) {
        return switch (unit.replaceFirst("^(wmoUnit|unit|uc):", "")) {
            case "degC", "percent", "degree_(angle)", "mm" -> value;
            case "degF" -> (value - 32) * 5 / 9;
            case "km_h-1" -> value * WeatherText.MPH_PER_KM_H;
            case "m_s-1" -> value * WeatherText.MPH_PER_M_S;
            default ->
                throw new WeatherTrouble("The forecast has the unit '" + WeatherTrouble.shown(unit)
                        + "'; expected degC, percent, degree_(angle), km_h-1, m_s-1 or mm.");
        };
    }

    private static Map<Instant, WeatherHour> grid(JSONObject properties, String file) {
        Map<Instant, Double> air = layer(properties, "temperature", false);
        Map<Instant, Double> dewPoint = layer(properties, "dewpoint", false);
        Map<Instant, Double> humidity = layer(properties, "relativeHumidity", false);
        Map<Instant, Double> wind = layer(properties, "windSpeed", false);
        Map<Instant, Double> gust = layer(properties, "windGust", false);
        Map<Instant, Double> from = layer(properties, "windDirection", false);
        Map<Instant, Double> cloud = layer(properties, "skyCover", false);
        Map<Instant, Double> chance = layer(properties, "probabilityOfPrecipitation", false);
        Map<Instant, Double> rain = layer(properties, "quantitativePrecipitation", true);
        TreeSet<Instant> all = new TreeSet<>();
        List.of(air, dewPoint, humidity, wind, chance, rain).forEach(layer -> all.addAll(layer.keySet()));
        if (all.isEmpty()) {
            throw new WeatherTrouble(
                    "The file " + file + " has neither periods nor layers such as temperature and windSpeed;"
                            + " expected the hourly forecast or the forecast grid of the National Weather Service.");
        }
        Map<Instant, WeatherHour> hours = new TreeMap<>();
        for (Instant begin : all) {
            Double humid = humidity.get(begin);
            hours.put(
                    begin,
                    new WeatherHour(
                            begin,
                            true,
                            air.get(begin),
                            humid != null ? humid : WeatherText.humidity(air.get(begin), dewPoint.get(begin)),
                            wind.get(begin),
                            gust.get(begin),
                            from.get(begin),
                            WeatherText.times(rain.get(begin), 1 / WeatherText.MM_PER_INCH),
                            false,
                            chance.get(begin),
                            cloud.get(begin)));
        }
        return hours;
    }

    private static Map<Instant, Double> layer(JSONObject properties, String name, boolean total) {
        Map<Instant, Double> hours = new HashMap<>();
        if (!(properties.get(name) instanceof JSONObject layer) || !(layer.get("values") instanceof JSONArray values)) {
            return hours;
        }
        String unit = String.valueOf(layer.get("uom"));
        for (Object each : values) {
            if (!(each instanceof JSONObject value) || !(value.get("value") instanceof Number number)) {
                continue; // null is missing
            }
            String valid = String.valueOf(value.get("validTime"));
            Matcher parts = INTERVAL.matcher(valid);
            if (!parts.matches()) {
                throw new WeatherTrouble("The forecast's validTime is '" + WeatherTrouble.shown(valid)
                        + "'; expected a start and a duration such as 2024-05-15T18:00:00+00:00/PT3H.");
            }
            Instant begin = moment(parts.group(1)).truncatedTo(ChronoUnit.HOURS);
            long count = duration(valid, parts);
            double converted = convert(number.doubleValue(), unit) / (total ? count : 1);
            for (long i = 0; i < count; i++) {
                hours.put(begin.plus(i, ChronoUnit.HOURS), converted);
            }
        }
        return hours;
    }

    private static long duration(String valid, Matcher parts) {
        try {
            long days = parts.group(2) == null
                    ? 0
                    : Duration.parse("P" + parts.group(2) + "D").toDays();
            long hours = parts.group(3) == null
                    ? 0
                    : Duration.parse("P" + parts.group(3)).toHours();
            long all = days * 24 + hours;
            if (all > 0 && all <= 24 * 31) {
                return all;
            }
        } catch (DateTimeException fault) {
            // told below
        }
        throw new WeatherTrouble("The forecast's validTime is '" + WeatherTrouble.shown(valid)
                + "'; expected whole hours, such as PT3H or P1DT6H.");
    }

    private static Instant moment(String text) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException fault) {
            throw new WeatherTrouble("The forecast has the time '" + WeatherTrouble.shown(text)
                    + "'; expected one such as 2024-05-15T18:00:00+00:00.");
        }
    }

    /** The middle of the corners of the forecast's square; null without one. */
    private static double @Nullable [] middle(@Nullable Object geometry) {
        if (!(geometry instanceof JSONObject shape) || !(shape.get("coordinates") instanceof JSONArray coordinates)) {
            return null;
        }
        List<double[]> points = new ArrayList<>();
        collect(coordinates, points);
        if (points.isEmpty()) {
            return null;
        }
        return new double[] {
            points.stream().mapToDouble(point -> point[0]).average().orElseThrow(),
            points.stream().mapToDouble(point -> point[1]).average().orElseThrow()
        };
    }

    private static void collect(JSONArray array, List<double[]> points) {
        if (array.size() >= 2 && array.get(0) instanceof Number x && array.get(1) instanceof Number y) {
            if (Math.abs(x.doubleValue()) <= 180 && Math.abs(y.doubleValue()) <= 90) {
                points.add(new double[] {x.doubleValue(), y.doubleValue()});
            }
            return;
        }
        for (Object each : array) {
            if (each instanceof JSONArray inner) {
                collect(inner, points);
            }
        }
    }
}
