package plumbrow.advice.outlook;

import plumbrow.science.chance.EmpiricalLaw;
import plumbrow.science.chance.FixedLaw;
import plumbrow.science.chance.LogitNormalLaw;
import plumbrow.science.chance.LognormalLaw;
import plumbrow.science.chance.NormalLaw;
import plumbrow.science.chance.PertLaw;
import plumbrow.science.chance.TriangularLaw;
import plumbrow.science.chance.UniformLaw;
import plumbrow.science.chance.WeibullLaw;

/** From a law as it is written down to the law that can be drawn from. */
public final class Chances {
    private Chances() {}

    /**
     * The law that answers quantile and mean.
     *
     * @throws IllegalArgumentException with a sentence where the numbers make no law
     */
    public static plumbrow.science.chance.Law of(Law law) {
        if (law instanceof Law.Fixed fixed) {
            return new FixedLaw(fixed.value());
        }
        if (law instanceof Law.Pert pert) {
            return new PertLaw(pert.low(), pert.likely(), pert.high());
        }
        if (law instanceof Law.Triangular triangle) {
            return new TriangularLaw(triangle.low(), triangle.likely(), triangle.high());
        }
        if (law instanceof Law.Even even) {
            return new UniformLaw(even.low(), even.high());
        }
        if (law instanceof Law.Normal normal) {
            return new NormalLaw(normal.mean(), Math.abs(normal.mean()) * normal.cv());
        }
        if (law instanceof Law.Weibull weibull) {
            return WeibullLaw.ofMeanAndCv(weibull.mean(), weibull.cv());
        }
        if (law instanceof Law.Lognormal price) {
            return LognormalLaw.ofPrice(price.price(), price.volatility(), price.years());
        }
        if (law instanceof Law.Factor factor) {
            return LognormalLaw.ofMedian(factor.median(), factor.logSd());
        }
        if (law instanceof Law.LogOdds share) {
            return new LogitNormalLaw(share.median(), share.logitSd());
        }
        if (law instanceof Law.Past past) {
            return new EmpiricalLaw(
                    past.values().stream().mapToDouble(Double::doubleValue).toArray());
        }
        if (law instanceof Law.Chance chance) {
            return new FixedLaw(chance.chance());
        }
        throw new IllegalStateException("no such law: " + law);
    }

    /** Whether a law leaves nothing open. */
    public static boolean settled(Law law) {
        if (law instanceof Law.Chance chance) {
            return chance.chance() == 0 || chance.chance() == 1;
        }
        if (law instanceof Law.Lognormal price) {
            return price.volatility() * price.years() == 0;
        }
        if (law instanceof Law.Past past) {
            return past.values().stream().distinct().count() == 1;
        }
        return law instanceof Law.Fixed;
    }
}
