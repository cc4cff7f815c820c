package plumbrow.app.weather;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.MeasuredDays;
import plumbrow.advice.season.Season;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.app.book.Book;
import plumbrow.documents.weather.WeatherAsked;
import plumbrow.documents.weather.WeatherFile;
import plumbrow.documents.weather.WeatherRead;
import plumbrow.science.reference.Counties;

/** Takes a weather file into the book: hours beside the seasons, days into the latest season's sheet of measured days. */
public final class WeatherIntake {
    private WeatherIntake() {}

    /** What was taken in, and whether the book had it already. */
    public record Taken(WeatherRead read, boolean already) {}

    /**
     * What must be said of the file, checked.
     *
     * @throws IllegalArgumentException with a sentence, where something of it can't be
     */
    public static WeatherAsked asked(
            Season season,
            String place,
            ZoneId zone,
            @Nullable ZoneOffset offset,
            @Nullable Double latitude,
            @Nullable Double longitude,
            @Nullable Double windHeightM,
            @Nullable Map<String, String> columns,
            @Nullable String source) {
        if (season.field(place).isEmpty() && county(place).isEmpty()) {
            throw new IllegalArgumentException("There is no field or county '" + place
                    + "'; expected a field of the season, or a county as \"IA: Story\".");
        }
        if ((latitude == null) != (longitude == null)
                || (latitude != null && longitude != null && (Math.abs(latitude) > 90 || Math.abs(longitude) > 180))) {
            throw new IllegalArgumentException(
                    "The station needs both latitude, −90 to 90, and longitude, −180 to 180, or neither.");
        }
        double height = windHeightM == null ? HourlyWeather.STATION_WIND_M : windHeightM;
        if (!(height >= 0.5 && height <= 100)) {
            throw new IllegalArgumentException("The height of the wind is " + height + " m; expected 0.5 to 100 m.");
        }
        return new WeatherAsked(
                county(place).isEmpty() ? place : county(place),
                zone,
                offset,
                latitude,
                longitude,
                height,
                columns == null ? Map.of() : columns,
                source);
    }

    /** The county as fields have it; empty where the place is none. */
    private static String county(String place) {
        int colon = place.indexOf(':');
        if (colon < 0) {
            return "";
        }
        String state = place.substring(0, colon).strip();
        return Counties.named(state, place.substring(colon + 1).strip())
                .map(county -> state + ": " + county.name())
                .orElse("");
    }

    /** Reads the file and keeps it, whole or not at all. */
    public static Taken take(Book book, String name, byte[] bytes, WeatherAsked asked, Instant at) {
        WeatherRead read = WeatherFile.read(name, bytes, asked);
        if (read.days().isEmpty()) {
            boolean already = book.keepWeather(name, bytes, read, at).already();
            int years = days(book, MeasuredDays.of(read.weather()));
            return new Taken(years == 0 ? read : told(read, years), already);
        }
        int years = days(book, read.days());
        return new Taken(told(read, years), years == 0);
    }

    /** Puts days into the latest season; how many whole seasons of them were new. */
    private static int days(Book book, List<WeatherDay> days) {
        if (days.isEmpty()) {
            return 0;
        }
        AtomicInteger years = new AtomicInteger();
        book.change(season -> {
            Season with = withDays(season, days);
            int more = with.pests().weedBook().days().size()
                    - season.pests().weedBook().days().size();
            years.set(with.equals(season) ? 0 : Math.max(1, more / DAYS_OF_SEASON));
            return with;
        });
        return years.get();
    }

    private static WeatherRead told(WeatherRead read, int years) {
        List<String> notes = new ArrayList<>(read.notes());
        notes.add(
                years == 0
                        ? "No new season was whole from March 1 to September 30, so no days went to the season."
                        : (years == 1 ? "One whole season" : years + " whole seasons")
                                + " of days went to the measured days of the season, from which lateness is calculated.");
        return new WeatherRead(read.format(), read.weather(), read.days(), notes);
    }

    /** Whole seasons only, from 1 March to 30 September: a year with a gap is none of the seasons that may come. */
    private static Season withDays(Season season, List<WeatherDay> days) {
        WeedBook book = season.pests().weedBook();
        Map<List<Object>, WeatherDay> all = new LinkedHashMap<>();
        book.days().forEach(day -> all.put(List.of(day.place(), day.date()), day));
        Map<Integer, List<WeatherDay>> years = days.stream()
                .filter(day -> day.date().getMonthValue() >= MARCH && day.date().getMonthValue() <= SEPTEMBER)
                .filter(day -> day.date().getYear() > season.year() - MOST_YEARS)
                .collect(Collectors.groupingBy(day -> day.date().getYear(), TreeMap::new, Collectors.toList()));
        years.values().stream()
                .filter(year -> year.size() == DAYS_OF_SEASON)
                .forEach(year -> year.forEach(day -> all.put(List.of(day.place(), day.date()), day)));
        return season.withPests(season.pests().withWeedBook(book.withDays(new ArrayList<>(all.values()))));
    }

    private static final int MARCH = 3;
    private static final int SEPTEMBER = 9;
    private static final int DAYS_OF_SEASON = 214;
    private static final int MOST_YEARS = 40;
}
