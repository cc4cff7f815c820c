package plumbrow.science.weatheryears;

import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Daily rain of one month: wet or dry by the day before, amounts of wet days gamma.
 *
 *   π = P(W|D)/(1 + P(W|D) − P(W|W));  ρ = P(W|W) − P(W|D)
 *   Var(N) = nπ(1−π)(1+ρ)/(1−ρ) − 2π(1−π)ρ(1−ρⁿ)/(1−ρ)²
 *   total: mean E[N]αβ, variance E[N]αβ² + Var(N)(αβ)²
 *
 *   π  share of wet days [-];  N  wet days in n days;  α, β  shape [-] and scale [mm] of a wet day's amount
 *
 * @param wetAfterDry chance of a wet day after a dry one [0 to 1]
 * @param wetAfterWet after a wet one [0 to 1]
 * @param shape α, more than 0
 * @param scaleMm β [mm], more than 0
 * Source: Richardson 1981, Water Resour. Res. 17:182; Richardson &amp; Wright 1984, ARS-8.
 */
public record RainMonth(double wetAfterDry, double wetAfterWet, double shape, double scaleMm) {
    private static final double MOST = .95;

    public RainMonth {
        if (!(wetAfterDry > 0 && wetAfterDry < 1 && wetAfterWet > 0 && wetAfterWet < 1 && shape > 0 && scaleMm > 0)) {
            throw new IllegalArgumentException(
                    "rain of a month with chances " + wetAfterDry + " and " + wetAfterWet + ", shape " + shape
                            + ", scale " + scaleMm + " mm; expected chances between 0 and 1, the others above 0");
        }
    }

    /**
     * Rain of this many wet days and this much in all, which clusters as another does and has the shape of its amounts.
     *
     * @param wetDays in the month, above 0
     * @param totalMm in the month [mm], above 0
     * @param days of the month
     */
    static RainMonth fitted(double wetDays, double totalMm, int days, RainMonth like) {
        double wet = Math.min(.9, Math.max(.01, wetDays / days));
        double cluster = like.wetAfterWet - like.wetAfterDry;
        double afterDry = wet * (1 - cluster);
        return new RainMonth(
                afterDry, afterDry + cluster, like.shape, Math.max(.01, totalMm) / (wet * days) / like.shape);
    }

    /** Share of days that are wet [-]. */
    public double wetShare() {
        return wetAfterDry / (1 + wetAfterDry - wetAfterWet);
    }

    private double cluster() {
        return wetAfterWet - wetAfterDry;
    }

    /** Variance of the number of wet days among so many [days²]. */
    public double wetDaysVariance(int days) {
        double wet = wetShare();
        double rho = cluster();
        return days * wet * (1 - wet) * (1 + rho) / (1 - rho)
                - 2 * wet * (1 - wet) * rho * (1 - Math.pow(rho, days)) / ((1 - rho) * (1 - rho));
    }

    /** Mean rain of so many days [mm]. */
    public double meanMm(int days) {
        return days * wetShare() * shape * scaleMm;
    }

    /** Standard deviation between years of the rain of so many days [mm]. */
    public double sdMm(int days) {
        double each = shape * scaleMm;
        return Math.sqrt(days * wetShare() * shape * scaleMm * scaleMm + wetDaysVariance(days) * each * each);
    }

    /** Chance that none of so many days is wet. */
    public double dryChance(int days) {
        return (1 - wetShare()) * Math.pow(1 - wetAfterDry, days - 1);
    }

    /** Chance that a wet day brings more than an amount [mm]. */
    public double moreThan(double mm) {
        return GammaDistribution.of(shape, scaleMm).survivalProbability(mm);
    }

    /**
     * Whether a day is wet.
     *
     * @param chance drawn, 0 to 1
     * @param often times the chance after a dry day, for a month that is wetter or drier than usual
     */
    public boolean wet(boolean yesterday, double chance, double often) {
        return chance < (yesterday ? wetAfterWet : Math.min(MOST, wetAfterDry * often));
    }

    /** Rain of a wet day [mm], the quantile of a drawn chance. */
    public double amountMm(double chance) {
        return scaleMm * unitAmount(shape, chance);
    }

    /** The quantile at scale 1. */
    static double unitAmount(double shape, double chance) {
        return GammaDistribution.of(shape, 1).inverseCumulativeProbability(chance);
    }
}
