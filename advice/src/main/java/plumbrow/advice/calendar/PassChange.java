package plumbrow.advice.calendar;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A pass as somebody would have it.
 *
 * @param pass its number in the program as it is kept
 * @param date another day; null leaves it
 * @param rate another rate per acre, in the unit of the pass; null leaves it
 */
public record PassChange(
        int pass, @Nullable LocalDate date, @Nullable Double rate) {}
