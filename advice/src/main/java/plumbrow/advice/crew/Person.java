package plumbrow.advice.crew;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Someone who applies.
 *
 * @param name unique in the book
 * @param licence number of the applicator licence; null for none on file
 * @param state the state that gave it, two-letter code
 * @param validUntil last day it is valid
 */
public record Person(
        String name,
        @Nullable String licence,
        @Nullable String state,
        @Nullable LocalDate validUntil) {}
