package plumbrow.science.chance;

/**
 * A share whose log-odds are normal, such as control by a product from trial to trial.
 *
 *   ln(c/(1 − c)) = ln(m/(1 − m)) + s·Z
 *
 * It stays within 0 and 1 and is widest about a half. The mean lies nearer to a half than the median does.
 *
 * @param median m, strictly between 0 and 1
 * @param logitSd s, standard deviation of the log-odds [-], 0 or more
 * Source: the form is common practice.
 */
public record LogitNormalDistribution(double median, double logitSd) implements Distribution {
    private static final int STEPS = 2000;
    private static final double END = 8;

    public LogitNormalDistribution {
        Refusal.unless(median > 0 && median < 1, "the median must be above 0 and below 1");
        Refusal.unless(logitSd >= 0 && Double.isFinite(logitSd), "the spread of the log-odds must be 0 or more");
    }

    private double at(double z) {
        return logitSd == 0 ? median : 1 / (1 + (1 - median) / median * Math.exp(-logitSd * z));
    }

    @Override
    public double quantile(double chance) {
        return logitSd == 0 ? median : at(StandardNormal.quantile(chance));
    }

    /** By the trapezium rule in Z, to more digits than the distribution is known to. */
    @Override
    public double mean() {
        return moment(0, 1);
    }

    @Override
    public double sd() {
        return Math.sqrt(moment(mean(), 2));
    }

    private double moment(double about, int power) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i <= STEPS; i++) {
            double z = END * (2.0 * i / STEPS - 1);
            double weight = StandardNormal.density(z);
            sum += weight * Math.pow(at(z) - about, power);
            weights += weight;
        }
        return sum / weights;
    }
}
