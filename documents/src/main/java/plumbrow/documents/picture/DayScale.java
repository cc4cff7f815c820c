package plumbrow.documents.picture;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Days on a straight line.
 *
 * @param first first day, {@code last} last day
 * @param left where the first day's middle lies [px]
 * @param right where the last day's middle lies [px]
 */
record DayScale(LocalDate first, LocalDate last, double left, double right) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMM d", Locale.US);

    double x(LocalDate day) {
        return x(day.toEpochDay() - first.toEpochDay());
    }

    double x(long dayFromFirst) {
        return left + dayFromFirst * perDay();
    }

    double perDay() {
        return (right - left) / Math.max(1, days() - 1);
    }

    int days() {
        return (int) (last.toEpochDay() - first.toEpochDay()) + 1;
    }

    boolean holds(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    /** The nearest day that is shown. */
    LocalDate held(LocalDate day) {
        return day.isBefore(first) ? first : day.isAfter(last) ? last : day;
    }

    static String words(LocalDate day) {
        return DAY.format(day);
    }
}
