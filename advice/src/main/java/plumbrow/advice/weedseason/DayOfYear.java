package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.time.Month;

/** Days of a year of 365, as the weed season counts them: 29 February falls together with 28 February. */
final class DayOfYear {
    private DayOfYear() {}

    static int of(LocalDate date) {
        boolean past = date.isLeapYear() && !date.isBefore(LocalDate.of(date.getYear(), Month.FEBRUARY, 29));
        return date.getDayOfYear() - (past ? 1 : 0);
    }

    /** The date of such a day in a year. */
    static LocalDate date(int year, int dayOfYear) {
        LocalDate common = LocalDate.ofYearDay(2025, Math.min(365, Math.max(1, dayOfYear)));
        return LocalDate.of(year, common.getMonth(), common.getDayOfMonth());
    }
}
