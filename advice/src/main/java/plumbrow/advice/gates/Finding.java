package plumbrow.advice.gates;

import org.jspecify.annotations.Nullable;

/**
 * What one gate says of one thing in a course.
 *
 * @param gate id of the gate
 * @param subject the pass, product or ingredient it speaks of
 * @param says one sentence with the reason
 * @param measured the value found, where the gate measures one
 * @param limit the limit it is held against, where there is one
 * @param unit unit of both
 * @param source where the limit stands
 * @param clears what would clear it: the condition to keep, what to look up and where, or what to change; empty
 *     where it is clear
 */
public record Finding(
        String gate,
        Protects protects,
        Standing standing,
        String subject,
        String says,
        @Nullable Double measured,
        @Nullable Double limit,
        String unit,
        String source,
        String clears) {}
