package plumbrow.advice.gates;

/**
 * Whether a value lies past a limit, when both went through unit conversions.
 *
 * <p>A quart written as 32 fl oz and as 0.25 gal differ in the sixteenth digit. Exactly at the limit is within it, so a
 * billionth of the limit is not held against anyone.
 */
final class Rounding {
    private static final double NOISE = 1e-9;

    private Rounding() {}

    static boolean above(double measured, double limit) {
        return measured > limit + NOISE * Math.abs(limit);
    }

    static boolean below(double measured, double limit) {
        return measured < limit - NOISE * Math.abs(limit);
    }

    /** Rounded up to a tenth, so that a refuge is never short for rounding. */
    static double upToTenth(double value) {
        return Math.ceil(value * 10 * (1 - NOISE)) / 10;
    }
}
