package plumbrow.science.stand;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import plumbrow.science.figure.Given;

/** A planting date as days after 1 April of its year. */
public final class PlantedOn {
    private static final MonthDay FIRST = MonthDay.of(4, 1);

    private PlantedOn() {}

    /** Days after 1 April of the same year; below 0 before. */
    public static int daysAfterFirstOfApril(LocalDate day) {
        return day.getDayOfYear() - FIRST.atYear(day.getYear()).getDayOfYear();
    }

    static int days(Given given, String key, int from, int to, String expected) {
        try {
            int days = daysAfterFirstOfApril(LocalDate.parse(given.word(key)));
            if (days >= from && days <= to) {
                return days;
            }
        } catch (DateTimeException notADate) {
            throw given.refuse(key, expected);
        }
        throw given.refuse(key, expected);
    }
}
