package plumbrow.documents.weather;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.WeatherHour;
import plumbrow.documents.weather.WeatherText.Line;

/**
 * A plain CSV, a line an hour, with headings as they are or mapped to these keys:
 *
 *   time_ending, time_beginning                  a moment such as 2026-05-04 13:00; one of them, or
 *   date (or year, month, day), hour_ending      1 to 24, or hour_beginning, 0 to 23
 *   temperature_c, temperature_f, dew_point_c, dew_point_f, humidity_pct
 *   wind_mph, wind_m_s, wind_km_h, gust_mph, gust_m_s, gust_km_h, wind_from_deg
 *   rain_in, rain_mm, rain_chance_pct, cloud_pct, cloud_tenths, forecast (yes or no)
 *
 * Time is of the clock asked for, standard time all year, unless an offset stands behind it. A blank is missing.
 */
public final class PlainCsv {
    /** The keys, in order. */
    public static final List<String> KEYS = List.of(
            "time_ending",
            "time_beginning",
            "date",
            "year",
            "month",
            "day",
            "hour_ending",
            "hour_beginning",
            "temperature_c",
            "temperature_f",
            "dew_point_c",
            "dew_point_f",
            "humidity_pct",
            "wind_mph",
            "wind_m_s",
            "wind_km_h",
            "gust_mph",
            "gust_m_s",
            "gust_km_h",
            "wind_from_deg",
            "rain_in",
            "rain_mm",
            "rain_chance_pct",
            "cloud_pct",
            "cloud_tenths",
            "forecast");

    private static final List<DateTimeFormatter> MOMENTS = List.of(
            DateTimeFormatter.ISO_LOCAL_DATE_TIME,
            DateTimeFormatter.ofPattern("yyyy-MM-dd H:mm[:ss]", Locale.US),
            DateTimeFormatter.ofPattern("M/d/yyyy H:mm[:ss]", Locale.US));
    private static final List<DateTimeFormatter> DAYS =
            List.of(DateTimeFormatter.ISO_LOCAL_DATE, DateTimeFormatter.ofPattern("M/d/yyyy", Locale.US));

    private final WeatherAsked asked;
    private final Map<String, String> headings = new LinkedHashMap<>();

    private PlainCsv(WeatherAsked asked) {
        this.asked = asked;
    }

    static WeatherRead read(String text, WeatherAsked asked, String file) {
        return new PlainCsv(asked).read(text, file);
    }

    private WeatherRead read(String text, String file) {
        List<Line> lines = WeatherText.csv(text);
        if (lines.isEmpty()) {
            throw new WeatherTrouble("The file " + file + " holds no hour; expected a header line and a line an hour.");
        }
        map(lines.get(0));
        Map<Instant, WeatherHour> hours = new HashMap<>();
        Map<Instant, Integer> from = new HashMap<>();
        for (Line line : lines) {
            Instant begin = begin(line);
            WeatherHour hour = hour(line, begin);
            if (hours.put(begin, hour) != null) {
                throw new WeatherTrouble("Lines " + from.get(begin) + " and " + line.number()
                        + " are of the same hour; expected each hour once. Clocks that go back in autumn make an hour"
                        + " twice: give the file in standard time or UTC.");
            }
            from.put(begin, line.number());
        }
        return WeatherRead.hours("CSV", asked, file, hours, List.of());
    }

    private void map(Line first) {
        asked.columns().forEach((key, heading) -> {
            if (!KEYS.contains(key)) {
                throw new WeatherTrouble(
                        "There is no '" + key + "' of an hour; expected one of " + String.join(", ", KEYS) + ".");
            }
            if (!first.has(heading)) {
                throw new WeatherTrouble("The file has no heading '" + WeatherTrouble.shown(heading)
                        + "'; its headings are "
                        + WeatherTrouble.shown(String.join(", ", first.places().keySet())) + ".");
            }
            headings.put(key, heading);
        });
        KEYS.stream().filter(first::has).forEach(key -> headings.putIfAbsent(key, key));
        boolean dated = has("time_ending")
                || has("time_beginning")
                || ((has("date") || (has("year") && has("month") && has("day")))
                        && (has("hour_ending") || has("hour_beginning")));
        if (!dated) {
            throw new WeatherTrouble(
                    "No heading says when an hour is; expected time_ending or time_beginning, or a date"
                            + " with hour_ending or hour_beginning. Headings of another name are mapped with"
                            + " --columns time_ending=HEADING.");
        }
        List<String> measured = KEYS.subList(KEYS.indexOf("temperature_c"), KEYS.size() - 1);
        if (measured.stream().noneMatch(this::has)) {
            throw new WeatherTrouble("No heading holds weather; expected some of " + String.join(", ", measured)
                    + ". Headings of another name are mapped with --columns wind_mph=HEADING.");
        }
    }

    private boolean has(String key) {
        return headings.containsKey(key);
    }

    private String cell(Line line, String key) {
        String heading = headings.get(key);
        return heading == null ? "" : line.cell(heading);
    }

    private Instant begin(Line line) {
        if (has("time_ending")) {
            return whole(line, moment(line, cell(line, "time_ending")).minus(1, ChronoUnit.HOURS));
        }
        if (has("time_beginning")) {
            return whole(line, moment(line, cell(line, "time_beginning")));
        }
        LocalDate day = day(line);
        boolean ends = has("hour_ending");
        Double hour = number(line, ends ? "hour_ending" : "hour_beginning", 0, 24);
        if (hour == null || hour != Math.rint(hour) || (!ends && hour > 23)) {
            throw WeatherTrouble.line(
                    line.number(),
                    cell(line, ends ? "hour_ending" : "hour_beginning"),
                    ends ? "an hour from 1 to 24" : "an hour from 0 to 23");
        }
        return day.atStartOfDay().plusHours(hour.longValue() - (ends ? 1 : 0)).toInstant(asked.clock());
    }

    private Instant whole(Line line, Instant begin) {
        if (!begin.truncatedTo(ChronoUnit.HOURS).equals(begin)) {
            throw WeatherTrouble.line(line.number(), String.valueOf(line.cells().get(0)), "times on the full hour");
        }
        return begin;
    }

    private Instant moment(Line line, String cell) {
        try {
            return OffsetDateTime.parse(cell.replace(' ', 'T')).toInstant();
        } catch (DateTimeException noOffset) {
            for (DateTimeFormatter form : MOMENTS) {
                try {
                    return LocalDateTime.parse(cell, form).toInstant(asked.clock());
                } catch (DateTimeException other) {
                    // Perhaps it is written in the next form.
                }
            }
        }
        throw WeatherTrouble.line(line.number(), cell, "a time such as 2026-05-04 13:00");
    }

    private LocalDate day(Line line) {
        if (has("date")) {
            for (DateTimeFormatter form : DAYS) {
                try {
                    return LocalDate.parse(cell(line, "date"), form);
                } catch (DateTimeException other) {
                    // Perhaps it is written in the next form.
                }
            }
            throw WeatherTrouble.line(line.number(), cell(line, "date"), "a date such as 2026-05-04");
        }
        try {
            return LocalDate.of(whole(line, "year"), whole(line, "month"), whole(line, "day"));
        } catch (DateTimeException fault) {
            throw WeatherTrouble.line(
                    line.number(),
                    cell(line, "year") + "-" + cell(line, "month") + "-" + cell(line, "day"),
                    "a day that there is");
        }
    }

    private int whole(Line line, String key) {
        try {
            return Integer.parseInt(cell(line, key));
        } catch (NumberFormatException fault) {
            throw WeatherTrouble.line(line.number(), cell(line, key), key + " as a whole number");
        }
    }

    private @Nullable Double number(Line line, String key, double low, double high) {
        return has(key) ? WeatherText.number(line.number(), cell(line, key), key, low, high) : null;
    }

    private static @Nullable Double first(List<@Nullable Double> values) {
        for (Double value : values) {
            if (value != null) {
                return value;
            }
        }
        return null;
    }

    private @Nullable Double temperature(Line line, String what) {
        Double celsius = number(line, what + "_c", -60, 60);
        return celsius != null ? celsius : WeatherText.celsius(number(line, what + "_f", -80, 140));
    }

    private @Nullable Double speed(Line line, String what) {
        List<@Nullable Double> all = new ArrayList<>();
        all.add(number(line, what + "_mph", 0, 250));
        all.add(WeatherText.times(number(line, what + "_m_s", 0, 110), WeatherText.MPH_PER_M_S));
        all.add(WeatherText.times(number(line, what + "_km_h", 0, 400), WeatherText.MPH_PER_KM_H));
        return first(all);
    }

    private WeatherHour hour(Line line, Instant begin) {
        Double air = temperature(line, "temperature");
        Double humidity = number(line, "humidity_pct", 0, 100);
        Double inches = number(line, "rain_in", 0, 20);
        Double cloud = number(line, "cloud_pct", 0, 100);
        String forecast = cell(line, "forecast");
        if (!forecast.isEmpty() && !forecast.equalsIgnoreCase("yes") && !forecast.equalsIgnoreCase("no")) {
            throw WeatherTrouble.line(line.number(), forecast, "yes or no under forecast");
        }
        return new WeatherHour(
                begin,
                forecast.equalsIgnoreCase("yes"),
                air,
                humidity != null ? humidity : WeatherText.humidity(air, temperature(line, "dew_point")),
                speed(line, "wind"),
                speed(line, "gust"),
                number(line, "wind_from_deg", 0, 360),
                inches != null
                        ? inches
                        : WeatherText.times(number(line, "rain_mm", 0, 500), 1 / WeatherText.MM_PER_INCH),
                false,
                number(line, "rain_chance_pct", 0, 100),
                cloud != null ? cloud : WeatherText.times(number(line, "cloud_tenths", 0, 10), 10));
    }
}
