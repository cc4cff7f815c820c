package plumbrow.science.chance;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The quantiles of a beta distribution on 0 to 1 at the middles of N equal shares of chance, fast.
 *
 *   knots x_j = sin²(π·j/2K),  z_j = Φ⁻¹(F(x_j)),  slope dx/dz = φ(z)/f(x);  between knots a cubic through both
 *
 * In z, the normal score of the chance, the quantile is smooth to the far tails, so that a few hundred exact values of
 * the distribution carry any number of draws; against the exact quantile the error stays below 1e-6. Where a slope is
 * not finite (a density that is nil or unbounded at an end) the straight line takes its place.
 */
final class BetaStrata {
    private static final int KNOTS = 256;

    private BetaStrata() {}

    static double[] of(BetaDistribution distribution, int count) {
        double[] x = new double[KNOTS + 1];
        double[] z = new double[KNOTS + 1];
        double[] slope = new double[KNOTS + 1];
        int used = 0;
        for (int j = 1; j < KNOTS; j++) {
            double sine = Math.sin(Math.PI * j / (2 * KNOTS));
            double at = sine * sine;
            double score = score(distribution, at);
            if (Double.isFinite(score) && (used == 0 || score > z[used - 1])) {
                x[used] = at;
                z[used] = score;
                slope[used] = StandardNormal.density(score) / distribution.density(at);
                used++;
            }
        }
        double[] scores = StandardNormal.strata(count);
        double[] strata = new double[count];
        int cell = 0;
        for (int i = 0; i < count; i++) {
            double score = scores[i];
            if (used < 2 || score < z[0] || score > z[used - 1]) {
                strata[i] = distribution.inverseCumulativeProbability((i + 0.5) / count);
                continue;
            }
            while (cell < used - 2 && z[cell + 1] < score) {
                cell++;
            }
            strata[i] = between(x, z, slope, cell, score);
        }
        return strata;
    }

    /** Φ⁻¹(F(x)), from whichever tail is the smaller. */
    private static double score(BetaDistribution distribution, double x) {
        double below = distribution.cumulativeProbability(x);
        return below < 0.5
                ? StandardNormal.quantile(below)
                : -StandardNormal.quantile(distribution.survivalProbability(x));
    }

    private static double between(double[] x, double[] z, double[] slope, int cell, double score) {
        double width = z[cell + 1] - z[cell];
        double t = (score - z[cell]) / width;
        double rise = x[cell + 1] - x[cell];
        double m0 = slope[cell] * width;
        double m1 = slope[cell + 1] * width;
        if (!(m0 >= 0 && m0 <= 3 * rise && m1 >= 0 && m1 <= 3 * rise)) {
            return x[cell] + t * rise;
        }
        double s = 1 - t;
        return x[cell] * s * s * (1 + 2 * t) + x[cell + 1] * t * t * (3 - 2 * t) + m0 * t * s * s - m1 * t * t * s;
    }
}
