package plumbrow.app.book;

import java.time.Instant;

/**
 * A file of hourly weather that was taken in.
 *
 * @param hours how many it holds, from {@code first} to the end of the last one
 */
public record WeatherOnFile(
        int number,
        String place,
        String name,
        String format,
        String source,
        Instant takenAt,
        int hours,
        Instant first,
        Instant until) {}
