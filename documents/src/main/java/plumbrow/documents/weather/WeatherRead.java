package plumbrow.documents.weather;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.WeatherHour;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.science.figure.Numbers;

/**
 * What a weather file holds: hours, or days where it is a file of days.
 *
 * @param format what kind of file it is, in words
 * @param weather its hours, none in a file of days
 * @param days its whole days, none in a file of hours
 * @param notes what whoever reads it should know, a sentence each
 */
public record WeatherRead(String format, HourlyWeather weather, List<WeatherDay> days, List<String> notes) {
    public WeatherRead {
        days = List.copyOf(days);
        notes = List.copyOf(notes);
    }

    static WeatherRead hours(
            String format, WeatherAsked asked, String file, Map<Instant, WeatherHour> hours, List<String> notes) {
        return hours(format, asked, asked.latitude(), asked.longitude(), file, hours, notes);
    }

    static WeatherRead hours(
            String format,
            WeatherAsked asked,
            @Nullable Double latitude,
            @Nullable Double longitude,
            String file,
            Map<Instant, WeatherHour> hours,
            List<String> notes) {
        List<WeatherHour> all = List.copyOf(new TreeMap<>(hours).values());
        List<String> said = new ArrayList<>(notes);
        if (!all.isEmpty()) {
            missing(said, all, "rain", hour -> hour.rainIn() == null && hour.rainChancePct() == null && !hour.trace());
            missing(said, all, "wind", hour -> hour.windMph() == null);
            missing(said, all, "temperature", hour -> hour.temperatureC() == null);
            missing(said, all, "humidity or dew point", hour -> hour.humidityPct() == null);
            if (all.stream().allMatch(hour -> hour.gustMph() == null)) {
                said.add("The file holds no gusts: measure them in the field.");
            }
        }
        String source = asked.source();
        return new WeatherRead(
                format,
                new HourlyWeather(
                        asked.place(),
                        asked.zone(),
                        latitude,
                        longitude,
                        asked.windHeightM(),
                        source == null ? format + ", " + file : source,
                        all),
                List.of(),
                said);
    }

    private static void missing(
            List<String> notes, List<WeatherHour> hours, String what, Predicate<WeatherHour> lacks) {
        long count = hours.stream().filter(lacks).count();
        if (count > 0) {
            notes.add(Numbers.fixed((double) count, 0) + " of "
                    + Numbers.fixed(hours.size(), 0) + " hours lack " + what
                    + ": unknown, and never fit for spraying.");
        }
    }
}
