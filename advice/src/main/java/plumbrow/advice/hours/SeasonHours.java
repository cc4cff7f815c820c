package plumbrow.advice.hours;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import plumbrow.advice.field.Field;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;

/**
 * Fit hours of each day of a season, by the rules of the spray that is planned nearest to it.
 *
 * @param says in words what is known
 * @param days the days on which any hour is on file, in order
 */
public record SeasonHours(String says, List<Day> days) {
    /** Nothing on file. */
    public static final SeasonHours UNKNOWN = new SeasonHours(
            "unknown: no hourly weather on file. Look at the forecast for wind, rain and temperature on the day.",
            List.of());

    public SeasonHours {
        days = List.copyOf(days);
    }

    /** One day: its fit hours and those of which it is not known. */
    public record Day(LocalDate day, int fit, int unknown) {}

    /** Of a program between two days. */
    public static SeasonHours of(
            Season season, Field field, Program program, HourlyWeather weather, LocalDate first, LocalDate last) {
        List<SprayTrip> trips = SprayTrip.of(season, field, program).stream()
                .filter(trip -> trip.sprayed() && trip.date() != null)
                .toList();
        if (trips.isEmpty()) {
            return new SeasonHours(
                    "not asked: no spray of this program goes through the air on a planned day.", List.of());
        }
        List<SprayHours> held = new ArrayList<>();
        for (SprayTrip trip : trips) {
            Optional<Site> site = Site.of(
                    field,
                    weather,
                    trip.plan() == null ? null : trip.plan().boomIn(),
                    trip.plan() == null ? null : trip.plan().cropHeightIn());
            if (site.isEmpty()) {
                return new SeasonHours(
                        "unknown: where the sun stands is not known, since the county is not.", List.of());
            }
            held.add(new SprayHours(
                    weather,
                    site.get(),
                    SprayRules.of(season, field, trip.products(), trip.leaves(), Practice.DEFAULT)));
        }
        List<Day> days = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            LocalDate at = day;
            int nearest = IntStream.range(0, trips.size())
                    .boxed()
                    .min(Comparator.comparingLong(i -> Math.abs(ChronoUnit.DAYS.between(
                            at, Objects.requireNonNull(trips.get(i).date())))))
                    .orElseThrow();
            List<SprayHour> hours = held.get(nearest).days(day, day);
            if (hours.stream()
                    .noneMatch(hour ->
                            hour.weather().windMph() != null || hour.weather().temperatureC() != null)) {
                continue;
            }
            int fit = (int) hours.stream().filter(SprayHour::fit).count();
            int unknown = (int) hours.stream()
                    .filter(hour -> hour.standing() == SprayHour.Standing.UNKNOWN)
                    .count();
            days.add(new Day(day, fit, unknown));
        }
        if (days.isEmpty()) {
            return new SeasonHours(
                    "unknown: the hourly weather on file (" + weather.source() + ") is of none of these days.",
                    List.of());
        }
        int fit = days.stream().mapToInt(Day::fit).sum();
        int unknown = days.stream().mapToInt(Day::unknown).sum();
        return new SeasonHours(
                fit + " hours fit on "
                        + days.stream().filter(day -> day.fit() > 0).count() + " of " + days.size()
                        + " days on file, " + unknown + " unknown, by the rules of the spray nearest in days ("
                        + weather.source() + "). Days without a bar have no hour on file or none that is fit.",
                days);
    }
}
