package plumbrow.science.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * A trial whose plots lie in blocks, strips and sites: y = Xβ + Σ Z_k u_k + e, the spread of each layer found by restricted maximum
 * likelihood, so that missing plots and unequal blocks need no special case.
 *
 *   u_k ~ N(0, s_k²), e ~ N(0, s²);  V = I + Σ (s_k/s)² Z_k Z_k';  β by generalised least squares
 *   degrees of freedom of a contrast: 2v²/(g'Ag), v its variance, g its slope along the variances, A their covariance
 *
 * A layer whose likeliest spread is nothing is left out and said so.
 *
 * Source: Patterson and Thompson 1971 (Recovery of inter-block information when block sizes are unequal); degrees of freedom after
 * Satterthwaite 1946; numbers held to R nlme (Oats of Yates 1935, Wheat2 of Stroup and others 1994).
 */
public final class MixedModel {
    private static final int MOST_EVALUATIONS = 4000;
    /** A layer with less than this share of the residual variance has none. */
    private static final double NOTHING = 1e-7;

    private static final double STEP = 1e-4;

    private final double[] yields;
    private final double[][] design;
    private final List<int[]> layers;
    private final double[] variances;
    private final RestrictedLikelihood fit;
    private final double[][] varianceCovariance;

    private MixedModel(
            double[] yields, double[][] design, List<int[]> layers, double[] ratios, RestrictedLikelihood fit) {
        this.yields = yields;
        this.design = design;
        this.layers = layers;
        this.fit = fit;
        this.variances = new double[layers.size() + 1];
        for (int k = 0; k < layers.size(); k++) {
            variances[k] = ratios[k] * fit.variance;
        }
        variances[layers.size()] = fit.variance;
        this.varianceCovariance = covarianceOfVariances();
    }

    /**
     * The likeliest spreads and the means that follow, or empty where columns of the design say the same or nothing is left for an
     * error.
     *
     * @param yields n values, 3 to 1,500
     * @param design n rows of p columns, p less than n
     * @param layers for each layer of the field (blocks, strips in blocks) the number of the block of each plot, 0 and up
     */
    public static Optional<MixedModel> fit(double[] yields, double[][] design, List<int[]> layers) {
        if (yields.length > RestrictedLikelihood.MOST_PLOTS || yields.length != design.length) {
            throw new IllegalArgumentException("as many rows of the design as yields, at most "
                    + RestrictedLikelihood.MOST_PLOTS + "; found " + yields.length + " and " + design.length);
        }
        if (design[0].length >= yields.length) {
            return Optional.empty();
        }
        double[] ratios = likeliest(yields, design, layers);
        return RestrictedLikelihood.of(yields, design, relation(yields.length, layers, ratios))
                .filter(fit -> fit.leavesError())
                .map(fit -> new MixedModel(yields, design, layers, ratios, fit));
    }

    /** Estimates in the order of the design's columns. */
    public double[] means() {
        return fit.means.clone();
    }

    /** Standard deviation of each layer in the yields' unit, then that of what is left; 0 where the layer has none. */
    public double[] standardDeviations() {
        return Arrays.stream(variances).map(Math::sqrt).toArray();
    }

    /** Natural logarithm of the restricted likelihood; compared only between fits of one design. */
    public double logRestrictedLikelihood() {
        return fit.logLikelihood;
    }

    /** −2 log restricted likelihood + 2 × (means + spreads), as R's nlme counts. */
    public double akaike() {
        return -2 * fit.logLikelihood + 2 * (design[0].length + variances.length);
    }

    /** Yield less the mean of its treatment, plot by plot. */
    public double[] residuals() {
        return fit.residuals.clone();
    }

    /** A weighted sum of the means, such as one treatment less another. */
    public Contrast contrast(double... weights) {
        double estimate = 0;
        for (int j = 0; j < weights.length; j++) {
            estimate += weights[j] * fit.means[j];
        }
        double variance = varianceOf(weights, fit, fit.variance);
        return new Contrast(estimate, Math.sqrt(variance), degreesOfFreedom(variance, slopes(weights)));
    }

    /**
     * Wald's F of several contrasts at once: larger is further from all of them being nothing.
     *
     * @param contrasts rows of weights, none a sum of others
     */
    public double f(double[][] contrasts) {
        int q = contrasts.length;
        double[] estimates = new double[q];
        RealMatrix covariance = new Array2DRowRealMatrix(q, q);
        for (int a = 0; a < q; a++) {
            for (int j = 0; j < fit.means.length; j++) {
                estimates[a] += contrasts[a][j] * fit.means[j];
            }
            for (int b = 0; b < q; b++) {
                covariance.setEntry(a, b, fit.variance * form(contrasts[a], fit.inverse, contrasts[b]));
            }
        }
        double[] solved = new LUDecomposition(covariance)
                .getSolver()
                .solve(new org.hipparchus.linear.ArrayRealVector(estimates))
                .toArray();
        double sum = 0;
        for (int a = 0; a < q; a++) {
            sum += estimates[a] * solved[a];
        }
        return sum / q;
    }

    private static double[] likeliest(double[] yields, double[][] design, List<int[]> layers) {
        int layersIn = layers.size();
        if (layersIn == 0) {
            return new double[0];
        }
        double[] best = new double[layersIn];
        double bestLikelihood = Double.NEGATIVE_INFINITY;
        for (double start : new double[] {.1, 1, 5}) {
            double[] guess = new double[layersIn];
            Arrays.fill(guess, Math.sqrt(start));
            double[] found = new SimplexOptimizer(new SimpleValueChecker(1e-13, 1e-13))
                    .optimize(
                            new MaxEval(MOST_EVALUATIONS),
                            new ObjectiveFunction(roots -> likelihood(yields, design, layers, squared(roots))),
                            GoalType.MAXIMIZE,
                            new InitialGuess(guess),
                            new NelderMeadSimplex(layersIn, .5))
                    .getPoint();
            double[] ratios = squared(found);
            double likelihood = likelihood(yields, design, layers, ratios);
            if (likelihood > bestLikelihood + 1e-10) {
                bestLikelihood = likelihood;
                best = ratios;
            }
        }
        for (int k = 0; k < layersIn; k++) {
            if (best[k] < NOTHING) {
                best[k] = 0;
            }
        }
        return best;
    }

    private static double likelihood(double[] yields, double[][] design, List<int[]> layers, double[] ratios) {
        return RestrictedLikelihood.of(yields, design, relation(yields.length, layers, ratios))
                .map(fit -> fit.logLikelihood)
                .filter(Double::isFinite)
                .orElse(-1e300);
    }

    private static double[] squared(double[] roots) {
        return Arrays.stream(roots).map(root -> root * root).toArray();
    }

    private static double[][] relation(int n, List<int[]> layers, double[] ratios) {
        double[][] relation = new double[n][n];
        for (int i = 0; i < n; i++) {
            relation[i][i] = 1;
            for (int k = 0; k < layers.size(); k++) {
                int[] layer = layers.get(k);
                for (int j = 0; j <= i; j++) {
                    if (layer[i] == layer[j]) {
                        relation[i][j] += ratios[k];
                    }
                }
            }
        }
        return relation;
    }

    /** Which of the spreads can move: those that are not nothing, the residual last. */
    private List<Integer> moving() {
        List<Integer> moving = new ArrayList<>();
        for (int k = 0; k < variances.length; k++) {
            if (variances[k] > 0) {
                moving.add(k);
            }
        }
        return moving;
    }

    private double logLikelihoodAt(double[] others) {
        int last = others.length - 1;
        double[] ratios = new double[last];
        for (int k = 0; k < last; k++) {
            ratios[k] = others[k] / others[last];
        }
        return RestrictedLikelihood.of(yields, design, relation(yields.length, layers, ratios))
                .map(other -> other.logLikelihoodAt(others[last]))
                .orElse(Double.NaN);
    }

    /** Inverse of the observed information about the spreads, by differences; empty where the likelihood is flat. */
    private double[][] covarianceOfVariances() {
        List<Integer> moving = moving();
        int m = moving.size();
        RealMatrix information = new Array2DRowRealMatrix(m, m);
        double middle = logLikelihoodAt(variances);
        for (int a = 0; a < m; a++) {
            for (int b = 0; b <= a; b++) {
                double ha = STEP * variances[moving.get(a)];
                double hb = STEP * variances[moving.get(b)];
                double curve;
                if (a == b) {
                    curve = (shifted(moving.get(a), ha, 0, 0) - 2 * middle + shifted(moving.get(a), -ha, 0, 0))
                            / (ha * ha);
                } else {
                    int ka = moving.get(a);
                    int kb = moving.get(b);
                    curve = (shifted(ka, ha, kb, hb)
                                    - shifted(ka, ha, kb, -hb)
                                    - shifted(ka, -ha, kb, hb)
                                    + shifted(ka, -ha, kb, -hb))
                            / (4 * ha * hb);
                }
                information.setEntry(a, b, -curve);
                information.setEntry(b, a, -curve);
            }
        }
        try {
            return new LUDecomposition(information).getSolver().getInverse().getData();
        } catch (MathRuntimeException flat) {
            return new double[0][];
        }
    }

    private double shifted(int a, double by, int b, double also) {
        double[] others = variances.clone();
        others[a] += by;
        others[b] += also;
        return logLikelihoodAt(others);
    }

    private double[] slopes(double[] weights) {
        List<Integer> moving = moving();
        double[] slopes = new double[moving.size()];
        for (int a = 0; a < slopes.length; a++) {
            int k = moving.get(a);
            double h = STEP * variances[k];
            slopes[a] = (varianceAt(weights, k, h) - varianceAt(weights, k, -h)) / (2 * h);
        }
        return slopes;
    }

    private double varianceAt(double[] weights, int k, double by) {
        double[] others = variances.clone();
        others[k] += by;
        int last = others.length - 1;
        double[] ratios = new double[last];
        for (int i = 0; i < last; i++) {
            ratios[i] = others[i] / others[last];
        }
        return RestrictedLikelihood.of(yields, design, relation(yields.length, layers, ratios))
                .map(other -> varianceOf(weights, other, others[last]))
                .orElse(Double.NaN);
    }

    private double degreesOfFreedom(double variance, double[] slopes) {
        int free = yields.length - design[0].length;
        if (varianceCovariance.length == 0) {
            return free;
        }
        double spread = form(slopes, varianceCovariance, slopes);
        double found = 2 * variance * variance / spread;
        return Double.isFinite(found) && found > 0 ? Math.max(1, Math.min(found, free)) : free;
    }

    private static double varianceOf(double[] weights, RestrictedLikelihood of, double variance) {
        return variance * form(weights, of.inverse, weights);
    }

    private static double form(double[] left, double[][] matrix, double[] right) {
        double sum = 0;
        for (int a = 0; a < left.length; a++) {
            for (int b = 0; b < right.length; b++) {
                sum += left[a] * matrix[a][b] * right[b];
            }
        }
        return sum;
    }
}
