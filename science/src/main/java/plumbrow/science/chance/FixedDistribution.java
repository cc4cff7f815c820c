package plumbrow.science.chance;

/** A number that is taken as known. */
public record FixedDistribution(double value) implements Distribution {
    public FixedDistribution {
        Refusal.unless(Double.isFinite(value), "a known number must be finite");
    }

    @Override
    public double quantile(double chance) {
        return value;
    }

    @Override
    public double mean() {
        return value;
    }

    @Override
    public double sd() {
        return 0;
    }
}
