package plumbrow.science.trials;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * A trial on ground whose fertility changes smoothly: plots near one another err together.
 *
 *   correlation of two plots d apart: (1 − nugget) × shape(d/range); range and nugget by restricted maximum likelihood
 *   spherical 1 − 1.5 u + .5 u³ below u = 1, else 0;  rational quadratic 1/(1 + u²);  exponential e^(−u)
 *
 * Held beside the analysis without place, which is right where plots were randomised but wider.
 *
 * Source: Pinheiro and Bates 2000, Mixed-Effects Models in S and S-PLUS, 5.3 (forms from memory), numbers held to R nlme (Wheat2 of
 * Stroup and others 1994).
 */
public final class SpatialModel {
    private static final int MOST_EVALUATIONS = 2000;
    private static final double[] RANGES = {.1, .3, .6};
    private static final double[] NUGGETS = {.1, .4};

    /** How the likeness of two plots falls with the distance between them. */
    public enum Shape {
        SPHERICAL {
            @Override
            double at(double u) {
                return u >= 1 ? 0 : 1 - 1.5 * u + .5 * u * u * u;
            }
        },
        RATIONAL_QUADRATIC {
            @Override
            double at(double u) {
                return 1 / (1 + u * u);
            }
        },
        EXPONENTIAL {
            @Override
            double at(double u) {
                return Math.exp(-u);
            }
        };

        abstract double at(double u);
    }

    private final Shape shape;
    private final double range;
    private final double nugget;
    private final RestrictedLikelihood fit;

    private SpatialModel(Shape shape, double range, double nugget, RestrictedLikelihood fit) {
        this.shape = shape;
        this.range = range;
        this.nugget = nugget;
        this.fit = fit;
    }

    /**
     * The likeliest range and nugget and the means that follow, or empty where the design says a thing twice, nothing is left for
     * an error, or all plots lie on one point.
     *
     * @param yields n values, 3 to 1,500
     * @param design n rows of p columns, p less than n
     * @param east place of each plot, any unit of length
     * @param north the same
     */
    public static Optional<SpatialModel> fit(
            double[] yields, double[][] design, double[] east, double[] north, Shape shape) {
        double[][] apart = apart(yields, design, east, north);
        double scale = farthest(apart);
        if (design[0].length >= yields.length || scale == 0) {
            return Optional.empty();
        }
        double best = Double.NEGATIVE_INFINITY;
        double[] at = {0, 0};
        for (double startRange : RANGES) {
            for (double startNugget : NUGGETS) {
                double[] found = nearest(yields, design, apart, shape, scale, startRange * scale, startNugget);
                double likelihood = likelihood(yields, design, apart, shape, scale, found);
                if (likelihood > best) {
                    best = likelihood;
                    at = found;
                }
            }
        }
        return at(yields, design, apart, shape, range(scale, at), nugget(at));
    }

    /**
     * The nearest peak of the likelihood from a first guess, as a practitioner reads it off a variogram: the spherical shape may have
     * several, and the highest may be a slope over the whole trial.
     */
    public static Optional<SpatialModel> fitFrom(
            double[] yields,
            double[][] design,
            double[] east,
            double[] north,
            Shape shape,
            double range,
            double nugget) {
        double[][] apart = apart(yields, design, east, north);
        double scale = farthest(apart);
        if (design[0].length >= yields.length || scale == 0) {
            return Optional.empty();
        }
        double[] peak = nearest(yields, design, apart, shape, scale, range, nugget);
        return at(yields, design, apart, shape, range(scale, peak), nugget(peak));
    }

    private static double[] nearest(
            double[] yields,
            double[][] design,
            double[][] apart,
            Shape shape,
            double scale,
            double range,
            double nugget) {
        return new SimplexOptimizer(new SimpleValueChecker(1e-13, 1e-11))
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        new ObjectiveFunction(p -> likelihood(yields, design, apart, shape, scale, p)),
                        GoalType.MAXIMIZE,
                        new InitialGuess(new double[] {Math.log(range / scale), Math.log(nugget / (1 - nugget))}),
                        new NelderMeadSimplex(2, .03))
                .getPoint();
    }

    private static Optional<SpatialModel> at(
            double[] yields, double[][] design, double[][] apart, Shape shape, double range, double nugget) {
        return RestrictedLikelihood.of(yields, design, relation(apart, shape, range, nugget))
                .filter(RestrictedLikelihood::leavesError)
                .map(fit -> new SpatialModel(shape, range, nugget, fit));
    }

    private static double farthest(double[][] apart) {
        return Arrays.stream(apart).flatMapToDouble(Arrays::stream).max().orElse(0);
    }

    private static double[][] apart(double[] yields, double[][] design, double[] east, double[] north) {
        int n = yields.length;
        if (n > RestrictedLikelihood.MOST_PLOTS || n != design.length || n != east.length || n != north.length) {
            throw new IllegalArgumentException("a row of the design and a place for each of the yields, at most "
                    + RestrictedLikelihood.MOST_PLOTS + "; found " + n + ", " + design.length + ", " + east.length
                    + ", "
                    + north.length);
        }
        double[][] apart = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                apart[i][j] = Math.hypot(east[i] - east[j], north[i] - north[j]);
            }
        }
        return apart;
    }

    public Shape shape() {
        return shape;
    }

    /** How far likeness reaches, in the unit of the places. */
    public double range() {
        return range;
    }

    /** The share of a plot's variance that no neighbour has, 0 to 1. */
    public double nugget() {
        return nugget;
    }

    /** Standard deviation of one plot in the yields' unit. */
    public double standardDeviation() {
        return Math.sqrt(fit.variance);
    }

    /** Estimates in the order of the design's columns. */
    public double[] means() {
        return fit.means.clone();
    }

    /** Natural logarithm of the restricted likelihood; compared only between fits of one design. */
    public double logRestrictedLikelihood() {
        return fit.logLikelihood;
    }

    /** −2 log restricted likelihood + 2 × (means + range, nugget and variance), as R's nlme counts. */
    public double akaike() {
        return -2 * fit.logLikelihood + 2 * (fit.means.length + 3);
    }

    /** Yield less the mean of its treatment, plot by plot. */
    public double[] residuals() {
        return fit.residuals.clone();
    }

    /** A weighted sum of the means; degrees of freedom are plots less means, as if range and nugget were known. */
    public Contrast contrast(double... weights) {
        double estimate = 0;
        double variance = 0;
        for (int a = 0; a < weights.length; a++) {
            estimate += weights[a] * fit.means[a];
            for (int b = 0; b < weights.length; b++) {
                variance += weights[a] * weights[b] * fit.inverse[a][b];
            }
        }
        return new Contrast(
                estimate, Math.sqrt(variance * fit.variance), (double) fit.residuals.length - fit.means.length);
    }

    private static double likelihood(
            double[] yields, double[][] design, double[][] apart, Shape shape, double scale, double[] at) {
        return RestrictedLikelihood.of(yields, design, relation(apart, shape, range(scale, at), nugget(at)))
                .map(fit -> fit.logLikelihood)
                .filter(Double::isFinite)
                .orElse(-1e300);
    }

    /** Never longer than the trial: beyond, range and nugget can't be told apart. */
    private static double range(double scale, double[] at) {
        return scale * Math.exp(Math.max(-12, Math.min(at[0], 0)));
    }

    private static double nugget(double[] at) {
        return 1 / (1 + Math.exp(-at[1]));
    }

    private static double[][] relation(double[][] apart, Shape shape, double range, double nugget) {
        int n = apart.length;
        double[][] relation = new double[n][];
        for (int i = 0; i < n; i++) {
            relation[i] = new double[i + 1];
            for (int j = 0; j < i; j++) {
                relation[i][j] = (1 - nugget) * shape.at(apart[i][j] / range);
            }
            relation[i][i] = 1;
        }
        return relation;
    }
}
