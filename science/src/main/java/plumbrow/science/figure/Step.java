package plumbrow.science.figure;

import org.jspecify.annotations.Nullable;

/**
 * One line of arithmetic that a person can redo by hand.
 *
 * @param label what the line answers, such as "seed cost per acre"
 * @param arithmetic the formula with its numbers and units written in, such as "300 $ ÷ 80,000 seeds × 34,000 seeds/ac"
 * @param value the result, finite
 * @param unit the unit of the result, empty for a bare number
 * @param figure the figure whose page explains the line and names its source; none for plain arithmetic
 */
public record Step(
        String label,
        String arithmetic,
        double value,
        String unit,
        @Nullable String figure) {
    public Step {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(label + ": the result is not a number");
        }
    }

    /** A line of plain arithmetic. */
    public Step(String label, String arithmetic, double value, String unit) {
        this(label, arithmetic, value, unit, null);
    }

    /** The line as text: label, arithmetic, result and unit. */
    public String text() {
        String result = Numbers.plain(value) + (unit.isEmpty() ? "" : " " + unit);
        return arithmetic.isEmpty() ? label + " = " + result : label + " = " + arithmetic + " = " + result;
    }
}
