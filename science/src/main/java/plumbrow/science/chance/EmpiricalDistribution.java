package plumbrow.science.chance;

import java.util.Arrays;

/**
 * Past values as the distribution of the next: a farm's own yields, once the trend is taken out.
 *
 *   quantile = straight line between the sorted values at position (n−1)·p
 *
 * Nothing worse than the worst year on record can come out: with few years the tail is too short, and the reader must be
 * told. Six years or more are asked for in practice.
 */
public final class EmpiricalDistribution implements Distribution {
    private final double[] sorted;

    /** @param values past values in any order, at least one */
    public EmpiricalDistribution(double... values) {
        Refusal.unless(values.length > 0, "a distribution of past values needs at least one");
        sorted = values.clone();
        Arrays.sort(sorted);
        Refusal.unless(
                Double.isFinite(sorted[0]) && Double.isFinite(sorted[sorted.length - 1]),
                "past values must be numbers");
    }

    public int size() {
        return sorted.length;
    }

    @Override
    public double quantile(double chance) {
        return SortedDraws.quantile(sorted, chance);
    }

    /** Mean of the values themselves. */
    @Override
    public double mean() {
        return SortedDraws.mean(sorted);
    }

    /** Standard deviation of the values themselves, with n − 1; 0 for a single value. */
    @Override
    public double sd() {
        double mean = mean();
        double squares = 0;
        for (double value : sorted) {
            squares += (value - mean) * (value - mean);
        }
        return sorted.length == 1 ? 0 : Math.sqrt(squares / (sorted.length - 1));
    }
}
