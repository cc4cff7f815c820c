package plumbrow.science.chance;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Low, likely and high as a smooth distribution that trusts the likely value more than a triangle does.
 *
 *   beta on [a, b] with α = 1 + 4(m−a)/(b−a), β = 1 + 4(b−m)/(b−a)
 *   mean = (a + 4m + b)/6,  variance = (mean − a)(b − mean)/7
 *
 * The shortcut (b − a)/6 for the standard deviation is an approximation and is not used.
 */
public final class PertDistribution implements Distribution {
    private static final double ONE_IN_TWENTY = 0.05;
    private static final double CLOSE = 1e-12;
    private static final int MOST_ROUNDS = 2000;

    private final double likely;
    private final FourParameterBeta distribution;

    /**
     * @param low a, the absolute lower end
     * @param likely m, the likeliest value, a ≤ m ≤ b
     * @param high b, the absolute upper end, a < b
     */
    public PertDistribution(double low, double likely, double high) {
        Refusal.unless(
                low <= likely && likely <= high && low < high && Double.isFinite(high - low),
                "low, likely and high must rise in this order");
        this.likely = likely;
        this.distribution =
                new FourParameterBeta(low, high, shape(likely - low, high - low), shape(high - likely, high - low));
    }

    /**
     * The distribution in which low and high are each passed one year in twenty, which is what most people mean by them.
     *
     * <p>The ends a and b are moved until F(low) = 0.05 and F(high) = 0.95 with the likely value kept.
     *
     * @param low value undercut once in twenty, low ≤ likely
     * @param high value passed once in twenty, likely ≤ high, low < high
     */
    public static PertDistribution ofOneInTwenty(double low, double likely, double high) {
        Refusal.unless(
                low <= likely && likely <= high && low < high && Double.isFinite(high - low),
                "low, likely and high must rise in this order");
        double width = high - low;
        double a = low;
        double b = high;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            BetaDistribution unit = BetaDistribution.of(shape(likely - a, b - a), shape(b - likely, b - a));
            double lowMiss = low - (a + (b - a) * unit.inverseCumulativeProbability(ONE_IN_TWENTY));
            double highMiss = high - (a + (b - a) * unit.inverseCumulativeProbability(1 - ONE_IN_TWENTY));
            a = Math.min(a + lowMiss, likely);
            b = Math.max(b + highMiss, likely);
            if (Math.abs(lowMiss) + Math.abs(highMiss) < CLOSE * width) {
                return new PertDistribution(a, likely, b);
            }
        }
        throw new IllegalArgumentException("no smooth curve has these values once in twenty");
    }

    public double low() {
        return distribution.low();
    }

    public double likely() {
        return likely;
    }

    public double high() {
        return distribution.high();
    }

    public double alpha() {
        return distribution.alpha();
    }

    public double beta() {
        return distribution.beta();
    }

    @Override
    public double quantile(double chance) {
        return distribution.quantile(chance);
    }

    @Override
    public double[] strata(int count) {
        return distribution.strata(count);
    }

    @Override
    public double mean() {
        return (low() + 4 * likely + high()) / 6;
    }

    @Override
    public double sd() {
        return Math.sqrt((mean() - low()) * (high() - mean()) / 7);
    }

    private static double shape(double part, double width) {
        return 1 + 4 * part / width;
    }
}
