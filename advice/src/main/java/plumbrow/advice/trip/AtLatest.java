package plumbrow.advice.trip;

import java.time.LocalDate;
import java.time.LocalDateTime;

/** Plans and the log know days, not hours: what runs from the end of an application runs from the end of its day at the latest. */
public final class AtLatest {
    private AtLatest() {}

    /** When so many hours after an application on a day are over, at the latest. */
    public static LocalDateTime over(LocalDate day, int hours) {
        return day.plusDays(1).atStartOfDay().plusHours(hours);
    }
}
