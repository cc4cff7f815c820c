package plumbrow.science.trials;

/**
 * A difference of treatment means with what is known of it.
 *
 * @param estimate in the yields' unit
 * @param standardError in the yields' unit, more than 0
 * @param degreesOfFreedom of its t, more than 0, need not be whole
 */
public record Contrast(double estimate, double standardError, double degreesOfFreedom) {
    /** Its distance from 0 in standard errors. */
    public double t() {
        return estimate / standardError;
    }

    /** The chance of a difference as far from 0, on either side, were there none. */
    public double bothTails() {
        return StudentT.bothTails(t(), degreesOfFreedom);
    }

    /** Half the interval of a confidence such as .95. */
    public double halfWidth(double confidence) {
        return StudentT.forConfidence(confidence, degreesOfFreedom) * standardError;
    }

    /** The chance that the true difference is above a break-even, nothing else being known. */
    public double chanceAbove(double breakEven) {
        return StudentT.below((estimate - breakEven) / standardError, degreesOfFreedom);
    }
}
