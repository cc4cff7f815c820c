package plumbrow.science.chance;

/**
 * The normal distribution.
 *
 *   quantile = μ + σ·Φ⁻¹(p)
 *
 * @param mean μ
 * @param sd σ, 0 or more; at 0 the value is fixed
 */
public record NormalDistribution(double mean, double sd) implements Distribution {
    public NormalDistribution {
        Refusal.unless(Double.isFinite(mean), "the mean must be a number");
        Refusal.unless(sd >= 0 && Double.isFinite(sd), "the standard deviation must be 0 or more");
    }

    @Override
    public double quantile(double chance) {
        return sd == 0 ? mean : mean + sd * StandardNormal.quantile(chance);
    }
}
