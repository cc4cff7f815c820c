package plumbrow.science.chance;

/**
 * Every value between two ends as likely as the next: quantile = a + p·(b − a).
 *
 * @param low a
 * @param high b, a &lt; b
 */
public record UniformDistribution(double low, double high) implements Distribution {
    public UniformDistribution {
        Refusal.unless(low < high && Double.isFinite(high - low), "low must lie below high");
    }

    @Override
    public double quantile(double chance) {
        return low + chance * (high - low);
    }

    @Override
    public double mean() {
        return (low + high) / 2;
    }

    @Override
    public double sd() {
        return (high - low) / Math.sqrt(12);
    }
}
