package plumbrow.advice.assumptions;

import plumbrow.science.chance.EmpiricalDistribution;
import plumbrow.science.chance.FixedDistribution;
import plumbrow.science.chance.LogitNormalDistribution;
import plumbrow.science.chance.LognormalDistribution;
import plumbrow.science.chance.NormalDistribution;
import plumbrow.science.chance.PertDistribution;
import plumbrow.science.chance.TriangularDistribution;
import plumbrow.science.chance.UniformDistribution;
import plumbrow.science.chance.WeibullDistribution;

/** From a distribution as it is written down to the distribution that can be drawn from. */
public final class Chances {
    private Chances() {}

    /**
     * The distribution that answers quantile and mean.
     *
     * @throws IllegalArgumentException with a sentence where the numbers make no distribution
     */
    public static plumbrow.science.chance.Distribution of(Distribution distribution) {
        if (distribution instanceof Distribution.Fixed fixed) {
            return new FixedDistribution(fixed.value());
        }
        if (distribution instanceof Distribution.Pert pert) {
            return new PertDistribution(pert.low(), pert.likely(), pert.high());
        }
        if (distribution instanceof Distribution.Triangular triangle) {
            return new TriangularDistribution(triangle.low(), triangle.likely(), triangle.high());
        }
        if (distribution instanceof Distribution.Even even) {
            return new UniformDistribution(even.low(), even.high());
        }
        if (distribution instanceof Distribution.Normal normal) {
            return new NormalDistribution(normal.mean(), Math.abs(normal.mean()) * normal.cv());
        }
        if (distribution instanceof Distribution.Weibull weibull) {
            return WeibullDistribution.ofMeanAndCv(weibull.mean(), weibull.cv());
        }
        if (distribution instanceof Distribution.Lognormal price) {
            return LognormalDistribution.ofPrice(price.price(), price.volatility(), price.years());
        }
        if (distribution instanceof Distribution.Factor factor) {
            return LognormalDistribution.ofMedian(factor.median(), factor.logSd());
        }
        if (distribution instanceof Distribution.LogOdds share) {
            return new LogitNormalDistribution(share.median(), share.logitSd());
        }
        if (distribution instanceof Distribution.Past past) {
            return new EmpiricalDistribution(
                    past.values().stream().mapToDouble(Double::doubleValue).toArray());
        }
        if (distribution instanceof Distribution.Chance chance) {
            return new FixedDistribution(chance.chance());
        }
        throw new IllegalStateException("no such distribution: " + distribution);
    }

    /** Whether a distribution leaves nothing open. */
    public static boolean settled(Distribution distribution) {
        if (distribution instanceof Distribution.Chance chance) {
            return chance.chance() == 0 || chance.chance() == 1;
        }
        if (distribution instanceof Distribution.Lognormal price) {
            return price.volatility() * price.years() == 0;
        }
        if (distribution instanceof Distribution.Past past) {
            return past.values().stream().distinct().count() == 1;
        }
        return distribution instanceof Distribution.Fixed;
    }
}
