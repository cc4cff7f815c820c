package plumbrow.science.trials;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Gamma;

/**
 * The distribution of an estimated standard deviation over the true one: s = √(χ²_ν/ν).
 *
 *   f(s) = 2·(ν/2)^{ν/2}/Γ(ν/2) · s^{ν−1}·e^{−νs²/2}
 *
 * Averages over it turn distributions for a known spread into distributions for a spread that strips had to show themselves. Integrated by
 * Gauss and Legendre over ten standard deviations on either side.
 *
 * @param degreesOfFreedom ν, at least 1
 */
record SpreadDistribution(double degreesOfFreedom) {
    private static final GaussIntegrator POINTS = new GaussIntegratorFactory().legendre(48);
    private static final double SPREADS = 10;

    double low() {
        return Math.max(0, 1 - SPREADS / Math.sqrt(2 * degreesOfFreedom));
    }

    double high() {
        return 1 + SPREADS / Math.sqrt(2 * degreesOfFreedom);
    }

    /** The average of a function of s that is smooth. */
    double average(DoubleUnaryOperator of) {
        return between(low(), high(), of);
    }

    /** The average of a function of s that changes quickly only within a width around a place. */
    double averageAround(double place, double width, DoubleUnaryOperator of) {
        double from = clamped(place - width);
        double to = clamped(place + width);
        return between(low(), from, of) + between(from, to, of) + between(to, high(), of);
    }

    private double between(double from, double to, DoubleUnaryOperator of) {
        if (to <= from) {
            return 0;
        }
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double nu = degreesOfFreedom;
        double constant = Math.log(2) + nu / 2 * Math.log(nu / 2) - Gamma.logGamma(nu / 2);
        return half
                * POINTS.integrate(x -> {
                    double s = middle + half * x;
                    return Math.exp(constant + (nu - 1) * Math.log(s) - nu * s * s / 2) * of.applyAsDouble(s);
                });
    }

    private double clamped(double s) {
        return Math.min(Math.max(s, low()), high());
    }
}
