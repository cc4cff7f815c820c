package plumbrow.science.chance;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.jspecify.annotations.Nullable;

/**
 * A number between two fixed ends.
 *
 *   x = a + (b − a)·B,  B beta with shapes α, β
 *   from mean and CV: m = (μ−a)/(b−a), v = (CV·μ/(b−a))², κ = m(1−m)/v − 1, α = mκ, β = (1−m)κ
 *
 * The quantile is found at a few hundred chances at the first call and polished by Newton's rule at each call, which is
 * about ten times faster than searching the distribution anew. Many draws at once take {@link #strata}.
 */
public final class FourParameterBeta implements Distribution {
    private final double low;
    private final double high;
    private final double alpha;
    private final double beta;
    private final BetaDistribution unit;
    private volatile @Nullable BetaQuantile polished;

    /**
     * @param low a
     * @param high b, more than a
     * @param alpha α, more than 0
     * @param beta β, more than 0
     */
    public FourParameterBeta(double low, double high, double alpha, double beta) {
        Refusal.unless(low < high && Double.isFinite(high - low), "the lower end must be below the upper end");
        Refusal.unless(alpha > 0 && beta > 0 && Double.isFinite(alpha + beta), "both shapes must be more than 0");
        this.low = low;
        this.high = high;
        this.alpha = alpha;
        this.beta = beta;
        this.unit = BetaDistribution.of(alpha, beta);
    }

    /** The distribution on [low, high] with a given mean and coefficient of variation; too wide a spread is refused. */
    public static FourParameterBeta ofMeanAndCv(double mean, double cv, double low, double high) {
        Refusal.unless(low < mean && mean < high, "the mean must lie between the ends");
        Refusal.unless(cv * mean > 0, "the coefficient of variation must be more than 0");
        double middle = (mean - low) / (high - low);
        double spread = cv * mean / (high - low);
        double concentration = middle * (1 - middle) / (spread * spread) - 1;
        Refusal.unless(concentration > 0, "the coefficient of variation is too large for these ends");
        return new FourParameterBeta(low, high, middle * concentration, (1 - middle) * concentration);
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }

    public double alpha() {
        return alpha;
    }

    public double beta() {
        return beta;
    }

    @Override
    public double quantile(double chance) {
        BetaQuantile found = polished;
        if (found == null) {
            found = new BetaQuantile(unit);
            polished = found;
        }
        return low + (high - low) * found.at(chance);
    }

    @Override
    public double[] strata(int count) {
        double[] strata = BetaStrata.of(unit, count);
        for (int i = 0; i < count; i++) {
            strata[i] = low + (high - low) * strata[i];
        }
        return strata;
    }

    @Override
    public double mean() {
        return low + (high - low) * alpha / (alpha + beta);
    }

    @Override
    public double sd() {
        double sum = alpha + beta;
        return (high - low) * Math.sqrt(alpha * beta / (sum + 1)) / sum;
    }

    /** Third standardised moment: below 0 where the bad years lie farther out than the good ones. */
    public double skew() {
        double sum = alpha + beta;
        return 2 * (beta - alpha) * Math.sqrt(sum + 1) / ((sum + 2) * Math.sqrt(alpha * beta));
    }
}
