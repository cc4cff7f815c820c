package plumbrow.app.desk.field;

import org.jspecify.annotations.Nullable;

/**
 * One line of what is known of a field.
 *
 * @param value as it is shown; null where nobody knows
 * @param lookUp where an unknown value can be looked up
 */
public record Fact(String label, @Nullable String value, String lookUp) {}
