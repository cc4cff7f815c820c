package plumbrow.science.trials;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Student's t: how far a mean of few strips strays from the truth, in its own standard errors.
 *
 * Degrees of freedom are more than 0 and need not be whole.
 */
public final class StudentT {
    private StudentT() {}

    /** The chance of a value at or below t. */
    public static double below(double t, double degreesOfFreedom) {
        return TDistribution.of(degreesOfFreedom).cumulativeProbability(t);
    }

    /** The t not passed with a chance strictly between 0 and 1. */
    public static double quantile(double chance, double degreesOfFreedom) {
        return TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(chance);
    }

    /** The chance of a value as far from 0 as t, on either side. */
    public static double bothTails(double t, double degreesOfFreedom) {
        return 2 * TDistribution.of(degreesOfFreedom).survivalProbability(Math.abs(t));
    }

    /** The t that a confidence, such as .95, allows on either side. */
    public static double forConfidence(double confidence, double degreesOfFreedom) {
        return quantile((1 + confidence) / 2, degreesOfFreedom);
    }
}
