package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.science.insects.HeatCalendar;
import plumbrow.science.weedseason.Emergence;

/** The days of a field as the calendars of weeds and insects ask for them: on which day has so much come together. */
public final class SeasonHeat {
    private final int year;
    private final FieldClimate climate;

    private SeasonHeat(int year, FieldClimate climate) {
        this.year = year;
        this.climate = climate;
    }

    /** Of a field, from its own days or months, else its county's; empty where the book has neither. */
    public static Optional<SeasonHeat> of(Season season, Field field) {
        return FieldClimate.of(season, field).map(climate -> new SeasonHeat(season.year(), climate));
    }

    /** Where the days come from. */
    public String source() {
        return climate.source();
    }

    /** The first day that is known, which heat before it is missing. */
    public LocalDate firstDay() {
        return LocalDate.ofYearDay(year, climate.middle().days().first());
    }

    /** The day by whose end a share [0 to 1] of a weed's flush is up; empty where not by the end of September. */
    public Optional<LocalDate> up(Emergence emergence, double share) {
        return inSeasons(season -> emergence.dayOf(season.days(), share)).map(Days::middle);
    }

    /** The same with the days between which it comes in eight seasons of ten. */
    public Optional<Days> upInSeasons(Emergence emergence, double share) {
        return inSeasons(season -> emergence.dayOf(season.days(), share));
    }

    /** The day on which the heat of an insect's calendar [DD °F] has come together; empty where not by then. */
    public Optional<LocalDate> reached(HeatCalendar calendar, double degreeDaysF) {
        return reachedInSeasons(calendar, degreeDaysF).map(Days::middle);
    }

    /** The same with the days between which it comes in eight seasons of ten. */
    public Optional<Days> reachedInSeasons(HeatCalendar calendar, double degreeDaysF) {
        return inSeasons(season -> reached(season, calendar, degreeDaysF));
    }

    /**
     * When something comes.
     *
     * @param early it comes before this day in one season of ten, after {@code late} in another
     * @param middle as often earlier as later
     */
    public record Days(LocalDate early, LocalDate middle, LocalDate late) {}

    private Optional<Days> inSeasons(Function<SeasonDays, OptionalInt> when) {
        int never = WeatherOnFile.LAST_DAY + 1;
        int[] days = climate.seasons().stream()
                .mapToInt(season -> when.apply(season).orElse(never))
                .sorted()
                .toArray();
        int off = days.length / 10;
        return days[days.length / 2] == never
                ? Optional.empty()
                : Optional.of(
                        new Days(date(days[off]), date(days[days.length / 2]), date(days[days.length - 1 - off])));
    }

    private LocalDate date(int day) {
        return LocalDate.ofYearDay(year, day);
    }

    private static OptionalInt reached(SeasonDays season, HeatCalendar calendar, double degreeDaysF) {
        double sum = 0;
        int first = season.days().first();
        for (int i = Math.max(0, calendar.fromDayOfYear() - first);
                i < season.days().count();
                i++) {
            sum += calendar.rule()
                    .ofDay(
                            fahrenheit(season.days().soilC(i)),
                            fahrenheit(season.lows().airC(i)),
                            fahrenheit(season.highs().airC(i)));
            if (sum >= degreeDaysF) {
                return OptionalInt.of(first + i);
            }
        }
        return OptionalInt.empty();
    }

    private static double fahrenheit(double celsius) {
        return celsius * 1.8 + 32;
    }
}
