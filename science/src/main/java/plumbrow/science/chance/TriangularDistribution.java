package plumbrow.science.chance;

/**
 * Low, likely and high, joined by straight lines.
 *
 *   mean = (a + m + b)/3,  variance = (a² + m² + b² − am − ab − mb)/18
 *   quantile = a + √(p(b−a)(m−a)) for p ≤ (m−a)/(b−a), else b − √((1−p)(b−a)(b−m))
 *
 * @param low a, the absolute lower end
 * @param likely m, the likeliest value, a ≤ m ≤ b
 * @param high b, the absolute upper end, a < b
 */
public record TriangularDistribution(double low, double likely, double high) implements Distribution {
    public TriangularDistribution {
        Refusal.unless(
                low <= likely && likely <= high && low < high && Double.isFinite(high - low),
                "low, likely and high must rise in this order");
    }

    @Override
    public double quantile(double chance) {
        double width = high - low;
        return chance <= (likely - low) / width
                ? low + Math.sqrt(chance * width * (likely - low))
                : high - Math.sqrt((1 - chance) * width * (high - likely));
    }

    @Override
    public double mean() {
        return (low + likely + high) / 3;
    }

    @Override
    public double sd() {
        // The variance of the formula, written with differences so that it can't turn negative by rounding.
        double up = likely - low;
        double width = high - low;
        return Math.sqrt((up * up + width * width - up * width) / 18);
    }
}
