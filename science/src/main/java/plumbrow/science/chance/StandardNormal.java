package plumbrow.science.chance;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The normal distribution of mean 0 and standard deviation 1: φ, Φ and Φ⁻¹. */
public final class StandardNormal {
    private static final NormalDistribution LAW = NormalDistribution.of(0, 1);
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private static volatile double[] lastStrata = {};

    private StandardNormal() {}

    /** φ(z). */
    public static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    /** Φ(z), the chance of a value at or below z. */
    public static double below(double z) {
        return LAW.cumulativeProbability(z);
    }

    /** Φ⁻¹(p), for p strictly between 0 and 1. */
    public static double quantile(double chance) {
        return LAW.inverseCumulativeProbability(chance);
    }

    /**
     * Φ⁻¹((i + ½)/N) for i = 0 … N − 1, low to high. Read only: one weighing asks for the same N over and over, so the
     * last answer is kept and shared.
     */
    public static double[] strata(int count) {
        double[] strata = lastStrata;
        if (strata.length != count) {
            strata = new double[count];
            for (int i = 0; i < count; i++) {
                strata[i] = quantile((i + 0.5) / count);
            }
            lastStrata = strata;
        }
        return strata;
    }
}
