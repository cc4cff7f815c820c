package plumbrow.science.trials;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * A response that falls from an upper to a lower limit as the dose rises.
 *
 *   y = c + (d − c)/(1 + (x/e)^b);  at x = 0, y = d;  ED_p = e·(p/(100 − p))^{1/b}
 *
 * Fitted by Levenberg and Marquardt on b, c, d and ln e, from several slopes at the start; the best fit counts.
 *
 * @param slope b [-]
 * @param lower c, limit at high doses
 * @param upper d, limit at dose 0
 * @param ed50 e, dose halfway between the limits, more than 0
 * Source: form as in rstats4ag.org ch. 12.
 */
public record LogLogistic(double slope, double lower, double upper, double ed50) {
    private static final double[] STARTING_SLOPES = {1, 2, 4};
    private static final int MOST_STEPS = 500;
    private static final double STEP = 1e-4;

    /** The response at a dose of 0 or more. */
    public static double response(double dose, double slope, double lower, double upper, double ed50) {
        // exp overflows to infinity for far doses, where the lower limit is the right answer.
        return dose == 0 ? upper : lower + (upper - lower) / (1 + Math.exp(slope * Math.log(dose / ed50)));
    }

    public double response(double dose) {
        return response(dose, slope, lower, upper, ed50);
    }

    /** The dose that goes p percent of the way from upper to lower limit, p strictly between 0 and 100. */
    public double effectiveDose(double percent) {
        return ed50 * Math.pow(percent / (100 - percent), 1 / slope);
    }

    /** RSS. */
    public double squares(double[] doses, double[] responses) {
        double sum = 0;
        for (int i = 0; i < doses.length; i++) {
            double left = responses[i] - response(doses[i]);
            sum += left * left;
        }
        return sum;
    }

    /** The curve with the least squares, or empty where none is found. */
    static Optional<LogLogistic> fit(double[] doses, double[] responses) {
        double logMiddle = Arrays.stream(doses)
                .filter(dose -> dose > 0)
                .map(Math::log)
                .average()
                .orElse(0);
        LogLogistic best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double slope : STARTING_SLOPES) {
            LogLogistic fit = fitFrom(doses, responses, slope, logMiddle).orElse(null);
            double squares = fit == null ? Double.NaN : fit.squares(doses, responses);
            if (squares < least) {
                least = squares;
                best = fit;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Optional<LogLogistic> fitFrom(double[] doses, double[] responses, double slope, double logMiddle) {
        double highest = Arrays.stream(responses).max().orElse(0);
        double lowest = Arrays.stream(responses).min().orElse(0);
        try {
            RealVector at = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(new double[] {slope, lowest, highest, logMiddle})
                            .target(responses)
                            .model(point -> curve(doses, point.toArray()))
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build())
                    .getPoint();
            LogLogistic fit = new LogLogistic(at.getEntry(0), at.getEntry(1), at.getEntry(2), Math.exp(at.getEntry(3)));
            return Double.isFinite(fit.ed50) && fit.ed50 > 0 ? Optional.of(fit) : Optional.empty();
        } catch (MathRuntimeException noFit) {
            return Optional.empty();
        }
    }

    private static Pair<RealVector, RealMatrix> curve(double[] doses, double[] at) {
        double[] values = new double[doses.length];
        double[][] slopes = new double[doses.length][];
        for (int i = 0; i < doses.length; i++) {
            double power = doses[i] == 0 ? 0 : Math.exp(at[0] * (Math.log(doses[i]) - at[3]));
            double share = 1 / (1 + power);
            // power/(1+power)², which stays 0 where the power overflows.
            double bend = share * (1 - share);
            double logRatio = doses[i] == 0 ? 0 : Math.log(doses[i]) - at[3];
            double span = at[2] - at[1];
            values[i] = at[1] + span * share;
            slopes[i] = new double[] {-span * bend * logRatio, 1 - share, share, span * bend * at[0]};
        }
        return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }

    /**
     * Standard errors of b, c, d and e, from the observed curvature of the sum of squares, as R package drc gives them.
     *
     * @param spread residual standard error
     */
    Optional<double[]> standardErrors(double[] doses, double[] responses, double spread) {
        double[] at = {slope, lower, upper, Math.log(ed50)};
        double[][] curvature = new double[4][4];
        for (int i = 0; i < 4; i++) {
            double step = STEP * Math.max(Math.abs(at[i]), STEP);
            double[] ahead = at.clone();
            double[] back = at.clone();
            ahead[i] += step;
            back[i] -= step;
            double[] up = steepness(doses, responses, ahead);
            double[] down = steepness(doses, responses, back);
            for (int j = 0; j < 4; j++) {
                curvature[i][j] = (up[j] - down[j]) / (2 * step);
            }
        }
        try {
            RealMatrix inverse = new LUDecomposition(new Array2DRowRealMatrix(curvature, false))
                    .getSolver()
                    .getInverse();
            double[] errors = new double[4];
            for (int i = 0; i < 4; i++) {
                errors[i] = spread * Math.sqrt(inverse.getEntry(i, i));
            }
            errors[3] *= ed50;
            return Arrays.stream(errors).allMatch(Double::isFinite) ? Optional.of(errors) : Optional.empty();
        } catch (MathRuntimeException flat) {
            return Optional.empty();
        }
    }

    /** Half the gradient of the sum of squares. */
    private static double[] steepness(double[] doses, double[] responses, double[] at) {
        Pair<RealVector, RealMatrix> curve = curve(doses, at);
        RealVector left = curve.getFirst().subtract(new ArrayRealVector(responses, false));
        return curve.getSecond().preMultiply(left).toArray();
    }
}
