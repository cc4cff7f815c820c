package plumbrow.science.trials;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;
import plumbrow.science.chance.StandardNormal;

/**
 * Critical values for comparing many treatments at once, where plain t would find differences that are not there.
 *
 *   studentised range of k means:  P(Q ≤ q) = ∫ f(s)·k∫φ(z)·[Φ(z) − Φ(z − q·s)]^{k−1} dz ds
 *   p treatments with one control: P(max|t| ≤ d) = ∫ f(s)·∫φ(z)·[Φ(z + √2·d·s) − Φ(z − √2·d·s)]^p dz ds
 *
 * Equal replicates; error with ν degrees of freedom, at least 1.
 *
 * Source: Tukey 1953; Dunnett 1955, J. Am. Stat. Assoc. 50:1096 (forms from memory); checked against
 * the rice of Gomez & Gomez 1984 worked apart from this code.
 */
public final class ManyMeans {
    private static final GaussIntegrator POINTS = new GaussIntegratorFactory().legendre(48);
    private static final double WIDTH = 8;
    private static final double HIGHEST = 1e4;
    private static final double CLOSE = 1e-9;
    private static final int MOST_STEPS = 500;

    private ManyMeans() {}

    /** The chance that the widest of all differences is at most q standard errors of a mean. */
    public static double rangeAtMost(double q, int means, double degreesOfFreedom) {
        return new SpreadDistribution(degreesOfFreedom)
                .average(s -> means
                        * overNormal(z -> Math.pow(
                                Math.max(StandardNormal.below(z) - StandardNormal.below(z - q * s), 0), means - 1)));
    }

    /** The chance that no treatment differs from the control by more than d standard errors of a difference. */
    public static double controlAtMost(double d, int treatments, double degreesOfFreedom) {
        return new SpreadDistribution(degreesOfFreedom).average(s -> {
            double reach = Math.sqrt(2) * d * s;
            return overNormal(
                    z -> Math.pow(StandardNormal.below(z + reach) - StandardNormal.below(z - reach), treatments));
        });
    }

    /** q for honest significant differences (Tukey), at a chance such as .95. */
    public static double honestRange(double chance, int means, double degreesOfFreedom) {
        return quantile(chance, q -> rangeAtMost(q, means, degreesOfFreedom));
    }

    /** d for comparisons of so many treatments with a control, which is not counted (Dunnett), two-sided, at a chance such as .95. */
    public static double againstControl(double chance, int treatments, double degreesOfFreedom) {
        return treatments == 1
                ? StudentT.forConfidence(chance, degreesOfFreedom)
                : quantile(chance, d -> controlAtMost(d, treatments, degreesOfFreedom));
    }

    private static double quantile(double chance, DoubleUnaryOperator below) {
        double low = 0;
        double high = 1;
        while (below.applyAsDouble(high) < chance) {
            low = high;
            high *= 2;
            if (high > HIGHEST) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return new BrentSolver(CLOSE).solve(MOST_STEPS, q -> below.applyAsDouble(q) - chance, low, high);
    }

    private static double overNormal(DoubleUnaryOperator of) {
        return WIDTH * POINTS.integrate(x -> StandardNormal.density(WIDTH * x) * of.applyAsDouble(WIDTH * x));
    }
}
