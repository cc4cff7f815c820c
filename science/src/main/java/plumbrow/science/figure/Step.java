package plumbrow.science.figure;

/**
 * One line of arithmetic that a person can redo by hand.
 *
 * @param label what the line answers, such as "seed cost per acre"
 * @param arithmetic the formula with its numbers and units written in, such as "300 $ ÷ 80,000 seeds × 34,000 seeds/ac"
 * @param value the result, finite
 * @param unit the unit of the result, empty for a bare number
 */
public record Step(String label, String arithmetic, double value, String unit) {
    public Step {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(label + ": the result is not a number");
        }
    }

    /** The line as text: label, arithmetic, result and unit. */
    public String text() {
        String result = Numbers.plain(value) + (unit.isEmpty() ? "" : " " + unit);
        return arithmetic.isEmpty() ? label + " = " + result : label + " = " + arithmetic + " = " + result;
    }
}
