package plumbrow.advice.hours;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of the hours of a trip.
 *
 * @param first first day, {@code last} last day, itself included
 * @param machine which sprayer; null for the farm's only or first one
 * @param windowFrom first day of the window in which it must be done; null for the days asked for
 * @param windowUntil last day of it
 */
public record HoursAsked(
        LocalDate first,
        LocalDate last,
        @Nullable String machine,
        @Nullable LocalDate windowFrom,
        @Nullable LocalDate windowUntil,
        Practice practice) {
    /** Most days that are answered in one go. */
    public static final int MOST_DAYS = 31;

    public HoursAsked {
        if (last.isBefore(first) || first.plusDays(MOST_DAYS).isBefore(last)) {
            throw new IllegalArgumentException("The days are " + first + " to " + last
                    + "; expected the first not after the" + " last, and " + MOST_DAYS + " days at most.");
        }
        if (windowFrom != null && windowUntil != null && windowUntil.isBefore(windowFrom)) {
            throw new IllegalArgumentException("The window is " + windowFrom + " to " + windowUntil
                    + "; expected its first day not after its last.");
        }
    }

    public static HoursAsked days(LocalDate first, LocalDate last) {
        return new HoursAsked(first, last, null, null, null, Practice.DEFAULT);
    }
}
