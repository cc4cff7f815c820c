package plumbrow.science.trials;

import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Generalised least squares of plots whose errors go together, and how likely they are once the means have been taken out.
 *
 *   β̂ = (X'V⁻¹X)⁻¹X'V⁻¹y;  σ̂² = (y − Xβ̂)'V⁻¹(y − Xβ̂)/(n − p)
 *   log restricted likelihood = −½[(n − p)(log 2πσ̂² + 1) + log|V| + log|X'V⁻¹X|]
 *
 *   y  n yields, X  n × p design, V  n × n relation of the errors, σ²V their covariance
 *
 * The last term depends on how X is coded; it is compared between V, never between different X.
 *
 * Source: Patterson and Thompson 1971; the form is that of Pinheiro and Bates 2000, Mixed-Effects Models in S and S-PLUS, 5.1
 * (from memory), and held to the numbers of their R package nlme.
 */
final class RestrictedLikelihood {
    /** Plots above this number take too long for a page. */
    static final int MOST_PLOTS = 1500;

    private static final double NOT_POSITIVE = 1e-14;

    final double[] means;
    final double[][] inverse;
    final double variance;
    final double logLikelihood;
    final double[] residuals;

    private final double logDeterminants;

    private RestrictedLikelihood(
            double[] means, double[][] inverse, double variance, double logDeterminants, double[] residuals, int free) {
        this.means = means;
        this.inverse = inverse;
        this.variance = variance;
        this.logDeterminants = logDeterminants;
        this.residuals = residuals;
        this.logLikelihood = -.5 * (free * (Math.log(2 * Math.PI * variance) + 1) + logDeterminants);
    }

    /**
     * The fit for one V, or empty where V is no covariance or X has columns that say the same.
     *
     * @param relation V; its lower half is read
     */
    static Optional<RestrictedLikelihood> of(double[] yields, double[][] design, double[][] relation) {
        int n = yields.length;
        int p = design[0].length;
        double[][] root = lowerRoot(relation);
        if (root.length == 0) {
            return Optional.empty();
        }
        double logV = 0;
        for (int i = 0; i < n; i++) {
            logV += 2 * Math.log(root[i][i]);
        }
        double[] y = yields.clone();
        double[][] x = new double[n][];
        for (int i = 0; i < n; i++) {
            x[i] = design[i].clone();
        }
        // forward substitution: both become what they would be with errors that do not go together
        for (int i = 0; i < n; i++) {
            double[] row = root[i];
            for (int k = 0; k < i; k++) {
                double factor = row[k];
                if (factor == 0) {
                    continue;
                }
                y[i] -= factor * y[k];
                for (int j = 0; j < p; j++) {
                    x[i][j] -= factor * x[k][j];
                }
            }
            y[i] /= row[i];
            for (int j = 0; j < p; j++) {
                x[i][j] /= row[i];
            }
        }
        RealMatrix square = new Array2DRowRealMatrix(p, p);
        double[] right = new double[p];
        for (int a = 0; a < p; a++) {
            for (int i = 0; i < n; i++) {
                right[a] += x[i][a] * y[i];
            }
            for (int b = 0; b <= a; b++) {
                double sum = 0;
                for (int i = 0; i < n; i++) {
                    sum += x[i][a] * x[i][b];
                }
                square.setEntry(a, b, sum);
                square.setEntry(b, a, sum);
            }
        }
        CholeskyDecomposition split;
        try {
            split = new CholeskyDecomposition(square, 1e-9, NOT_POSITIVE);
        } catch (MathRuntimeException sameColumns) {
            return Optional.empty();
        }
        double logX = Math.log(split.getDeterminant());
        if (!Double.isFinite(logX)) {
            logX = 0;
            RealMatrix lower = split.getL();
            for (int a = 0; a < p; a++) {
                logX += 2 * Math.log(lower.getEntry(a, a));
            }
        }
        RealMatrix inverse = split.getSolver().getInverse();
        double[] means = inverse.operate(right);
        double squares = 0;
        double[] residuals = new double[n];
        for (int i = 0; i < n; i++) {
            double fitted = 0;
            double plain = 0;
            for (int j = 0; j < p; j++) {
                fitted += x[i][j] * means[j];
                plain += design[i][j] * means[j];
            }
            squares += (y[i] - fitted) * (y[i] - fitted);
            residuals[i] = yields[i] - plain;
        }
        return Optional.of(
                new RestrictedLikelihood(means, inverse.getData(), squares / (n - p), logV + logX, residuals, n - p));
    }

    /** Whether anything but the rounding of numbers is left between plots of one mean. */
    boolean leavesError() {
        double largest = 0;
        for (double mean : means) {
            largest = Math.max(largest, Math.abs(mean));
        }
        return !Asked.isRounding(Math.sqrt(variance), largest) && variance > 0;
    }

    /** Log restricted likelihood had σ² another value than its likeliest. */
    double logLikelihoodAt(double otherVariance) {
        int free = residuals.length - means.length;
        return -.5 * (free * (Math.log(2 * Math.PI * otherVariance) + variance / otherVariance) + logDeterminants);
    }

    /** L of V = LL', or nothing where V is no covariance. */
    private static double[][] lowerRoot(double[][] relation) {
        int n = relation.length;
        double[][] root = new double[n][];
        for (int i = 0; i < n; i++) {
            double[] row = new double[n];
            for (int j = 0; j <= i; j++) {
                double sum = relation[i][j];
                double[] other = j == i ? row : root[j];
                for (int k = 0; k < j; k++) {
                    sum -= row[k] * other[k];
                }
                if (j < i) {
                    row[j] = sum / other[j];
                } else if (sum > NOT_POSITIVE * relation[i][i]) {
                    row[i] = Math.sqrt(sum);
                } else {
                    return new double[0][];
                }
            }
            root[i] = row;
        }
        return root;
    }
}
