package plumbrow.science.chance;

/**
 * The distribution of one uncertain number: a price, a yield, a pest count.
 *
 * <p>Implementations are immutable and safe to share between threads. {@link #quantile} allocates nothing except in the
 * beta family, where the distribution's own series does: draw many values of those by {@link #strata}.
 */
public sealed interface Distribution
        permits FourParameterBeta,
                EmpiricalDistribution,
                FixedDistribution,
                LogitNormalDistribution,
                LognormalDistribution,
                NormalDistribution,
                PertDistribution,
                TriangularDistribution,
                UniformDistribution,
                WeibullDistribution {

    /**
     * The value that is not passed with a given chance.
     *
     * @param chance p, strictly between 0 and 1; distributions with finite ends also take 0 and 1
     */
    double quantile(double chance);

    /**
     * The quantiles at (i + ½)/N for i = 0 … N−1: the middle of N equal shares of chance, from low to high.
     *
     * @param count N, at least 1
     */
    default double[] strata(int count) {
        double[] strata = new double[count];
        for (int i = 0; i < count; i++) {
            strata[i] = quantile((i + 0.5) / count);
        }
        return strata;
    }

    double mean();

    /** Standard deviation. */
    double sd();
}
