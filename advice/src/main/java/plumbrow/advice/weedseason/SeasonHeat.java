package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
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
        return FieldClimate.of(season.pests().weedBook(), field).map(climate -> new SeasonHeat(season.year(), climate));
    }

    /** Where the days come from. */
    public String source() {
        return climate.source();
    }

    /** The first day that is known, which heat before it is missing. */
    public LocalDate firstDay() {
        return LocalDate.ofYearDay(year, climate.days().first());
    }

    /** The day by whose end a share [0 to 1] of a weed's flush is up; empty where not by the end of September. */
    public Optional<LocalDate> up(Emergence emergence, double share) {
        OptionalInt day = emergence.dayOf(climate.days(), share);
        return day.isEmpty() ? Optional.empty() : Optional.of(LocalDate.ofYearDay(year, day.getAsInt()));
    }

    /** The day on which the heat of an insect's calendar [DD °F] has come together; empty where not by then. */
    public Optional<LocalDate> reached(HeatCalendar calendar, double degreeDaysF) {
        double sum = 0;
        int first = climate.days().first();
        for (int i = Math.max(0, calendar.fromDayOfYear() - first);
                i < climate.days().count();
                i++) {
            sum += calendar.rule()
                    .ofDay(
                            fahrenheit(climate.days().soilC(i)),
                            fahrenheit(climate.lows().airC(i)),
                            fahrenheit(climate.highs().airC(i)));
            if (sum >= degreeDaysF) {
                return Optional.of(LocalDate.ofYearDay(year, first + i));
            }
        }
        return Optional.empty();
    }

    private static double fahrenheit(double celsius) {
        return celsius * 1.8 + 32;
    }
}
