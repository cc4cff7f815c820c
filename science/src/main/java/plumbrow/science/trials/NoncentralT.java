package plumbrow.science.trials;

import plumbrow.science.chance.StandardNormal;

/**
 * The t that strips will show when there truly is a difference.
 *
 *   P(T' > t) = ∫ Φ(δ − t·s)·f(s) ds,  s the estimated spread over the true one with ν degrees of freedom
 *
 *   δ  noncentrality: the true difference in its standard errors [-]
 *
 * Source: definition of the noncentral t distribution; checked against powers computed elsewhere.
 */
final class NoncentralT {
    /** Beyond this many standard deviations Φ is 0 or 1 to the last bit that matters. */
    private static final double FAR = 9;

    private NoncentralT() {}

    /** The chance of a t above a limit greater than 0. */
    static double above(double limit, double noncentrality, double degreesOfFreedom) {
        return new SpreadDistribution(degreesOfFreedom)
                .averageAround(
                        noncentrality / limit, FAR / limit, s -> StandardNormal.below(noncentrality - limit * s));
    }
}
