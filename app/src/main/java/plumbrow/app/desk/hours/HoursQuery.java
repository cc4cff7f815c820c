package plumbrow.app.desk.hours;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.springframework.util.MultiValueMap;
import plumbrow.advice.field.Field;
import plumbrow.advice.hours.HourlyWeather;
import plumbrow.advice.hours.HoursAsked;
import plumbrow.advice.hours.Practice;
import plumbrow.advice.hours.TripHours;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.desk.DeskBook;
import plumbrow.app.weather.Decided;

/** What an address asks of the hours of a field, and the answer. */
record HoursQuery(SprayTrip trip, HoursAsked asked) {
    private static final int WEEK = 7;

    /**
     * Reads an address.
     *
     * @throws IllegalArgumentException with a sentence, where it asks for what there is not
     */
    static HoursQuery read(DeskBook book, Season season, Field field, MultiValueMap<String, String> asked) {
        SprayTrip trip = Decided.trip(
                season, field, book.choices(season.year()), text(asked, "program"), whole(asked, "pass"), true);
        LocalDate from = day(asked, "from");
        LocalDate first = from != null ? from : trip.date();
        if (first == null) {
            throw new IllegalArgumentException("The pass has no planned day; name the first day.");
        }
        Integer days = whole(asked, "days");
        String machine = text(asked, "machine");
        if (machine != null
                && trip.machines(season).stream().noneMatch(one -> one.name().equals(machine))) {
            throw new IllegalArgumentException("There is no sprayer “" + machine + "” on " + field.farm() + ".");
        }
        return new HoursQuery(
                trip,
                new HoursAsked(
                        first,
                        first.plusDays(Math.max(0, Math.min(40, days == null ? WEEK : days) - 1L)),
                        machine,
                        day(asked, "window_from"),
                        day(asked, "window_until"),
                        Practice.DEFAULT));
    }

    /** The hours; null where no weather is on file. */
    @Nullable
    TripHours answer(DeskBook book, Season season) {
        HourlyWeather weather = book.weather(trip.field()).orElse(null);
        return weather == null
                ? null
                : TripHours.of(season, trip, weather, asked)
                        .orElseThrow(() -> new IllegalArgumentException("Where the sun stands at "
                                + trip.field().name() + " is not known: its county is not on the map."));
    }

    private static @Nullable String text(MultiValueMap<String, String> asked, String key) {
        String text = asked.getFirst(key);
        return text == null || text.isBlank() ? null : text;
    }

    private static @Nullable Integer whole(MultiValueMap<String, String> asked, String key) {
        String text = text(asked, key);
        if (text == null) {
            return null;
        }
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException fault) {
            throw new IllegalArgumentException(
                    "“" + shortened(text) + "” stands under " + key + "; expected a whole number.");
        }
    }

    private static @Nullable LocalDate day(MultiValueMap<String, String> asked, String key) {
        String text = text(asked, key);
        if (text == null) {
            return null;
        }
        try {
            LocalDate day = LocalDate.parse(text.strip());
            if (day.getYear() < 1900 || day.getYear() > 2100) {
                throw new DateTimeException("year");
            }
            return day;
        } catch (DateTimeException fault) {
            throw new IllegalArgumentException("“" + shortened(text) + "” stands under " + key.replace('_', ' ')
                    + "; expected a day such as 2026-05-24.");
        }
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 37) + "…" : text;
    }
}
