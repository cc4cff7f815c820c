package plumbrow.science.chance;

/**
 * A positive number whose logarithm is normal, such as a futures price some time ahead.
 *
 *   S = F·exp(−s²/2 + s·Z),  mean F,  median F·exp(−s²/2),  SD F·√(exp(s²) − 1)
 *
 * The mean stays F however wide the distribution is, as for a futures price. With s → 0 the value is F. Fat tails are not
 * modelled.
 *
 * @param mean F, more than 0
 * @param logSd s, standard deviation of the logarithm [-], 0 or more; for a price s = σ·√T
 * Source: Black 1976, J. Financial Econ. 3:167 (value from memory), without discounting.
 */
public record LognormalDistribution(double mean, double logSd) implements Distribution {
    public LognormalDistribution {
        Refusal.unless(mean > 0 && Double.isFinite(mean), "the mean must be more than 0");
        Refusal.unless(logSd >= 0 && Double.isFinite(logSd), "the spread of the logarithm must be 0 or more");
    }

    /** The price distribution from futures [$/bu], volatility per year [1/√yr] and years to harvest. */
    public static LognormalDistribution ofPrice(double futures, double volatility, double years) {
        Refusal.unless(volatility >= 0 && years >= 0, "volatility and years must be 0 or more");
        return new LognormalDistribution(futures, volatility * Math.sqrt(years));
    }

    /** The distribution with a given median, more than 0. */
    public static LognormalDistribution ofMedian(double median, double logSd) {
        return new LognormalDistribution(median * Math.exp(logSd * logSd / 2), logSd);
    }

    /** The distribution with a given mean and coefficient of variation: s² = ln(1 + CV²). */
    public static LognormalDistribution ofMeanAndCv(double mean, double cv) {
        Refusal.unless(cv >= 0, "the coefficient of variation must be 0 or more");
        return new LognormalDistribution(mean, Math.sqrt(Math.log1p(cv * cv)));
    }

    /** The value at a standard normal z. */
    public static double at(double mean, double logSd, double z) {
        return mean * Math.exp(logSd * (z - logSd / 2));
    }

    /** The value of this distribution at a standard normal z. */
    public double at(double z) {
        return at(mean, logSd, z);
    }

    @Override
    public double quantile(double chance) {
        return logSd == 0 ? mean : at(StandardNormal.quantile(chance));
    }

    @Override
    public double sd() {
        return mean * Math.sqrt(Math.expm1(logSd * logSd));
    }

    /** P(S > K) = Φ(d₂), d₂ = [ln(F/K) − s²/2]/s, for K more than 0. A fixed price passes only a strike below it. */
    public double chanceAbove(double strike) {
        return logSd == 0 ? (mean > strike ? 1 : 0) : StandardNormal.below(d2(strike));
    }

    /** E[max(K − S, 0)] = K·Φ(−d₂) − F·Φ(−d₁), d₁ = d₂ + s: what falls short of K, on the average of all years. */
    public double shortfallBelow(double strike) {
        if (logSd == 0) {
            return Math.max(strike - mean, 0);
        }
        double d2 = d2(strike);
        return strike * StandardNormal.below(-d2) - mean * StandardNormal.below(-d2 - logSd);
    }

    /** Mean of S in the cases where S < K: F·Φ(−d₁)/Φ(−d₂); K itself where the chance of that is nil. */
    public double meanBelow(double strike) {
        double chance = 1 - chanceAbove(strike);
        return chance <= 0 ? strike : strike - shortfallBelow(strike) / chance;
    }

    /** d₂, the distance of a strike from the median in spreads; for a spread above 0. */
    public double d2(double strike) {
        return (Math.log(mean / strike) - logSd * logSd / 2) / logSd;
    }
}
