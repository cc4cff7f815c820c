package plumbrow.advice.weighing;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;

/**
 * The mean of one column of draws given another, as a smooth curve: least squares on powers up to the fourth.
 *
 * <p>A curve with five numbers follows every effect that is smooth in the input and hardly any of the noise, which
 * would bias a value of information upwards. Inputs that only take two values get a straight line, which is exact.
 *
 * <p>Source: Strong, Oakley &amp; Brennan 2014, Med. Decis. Making 34:311 (value from memory), the idea of regressing
 * payoffs on the input.
 */
final class Regression {
    private static final int HIGHEST_POWER = 4;

    private final int size;
    private final double[][] basis;
    private final DecompositionSolver solver;

    /**
     * A curve over the first {@code size} draws of x.
     *
     * @throws IllegalArgumentException where x takes one value only
     */
    Regression(double[] x, int size) {
        this.size = size;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            low = Math.min(low, x[i]);
            high = Math.max(high, x[i]);
        }
        if (!(high > low)) {
            throw new IllegalArgumentException("one value only");
        }
        int terms = 1 + Math.min(HIGHEST_POWER, distinct(x, size, low, high) - 1);
        basis = new double[terms][size];
        for (int i = 0; i < size; i++) {
            double t = (2 * x[i] - low - high) / (high - low);
            double power = 1;
            for (int j = 0; j < terms; j++) {
                basis[j][i] = power;
                power *= t;
            }
        }
        double[][] products = new double[terms][terms];
        for (int j = 0; j < terms; j++) {
            products[j] = products(basis[j]);
        }
        solver = new QRDecomposition(new Array2DRowRealMatrix(products, false), 1e-14).getSolver();
    }

    /** The curve's value at every draw. */
    double[] fitted(double[] y) {
        double[] right = products(y);
        double[] weights = solver.solve(new ArrayRealVector(right, false)).toArray();
        double[] fitted = new double[size];
        for (int j = 0; j < basis.length; j++) {
            double weight = weights[j];
            double[] column = basis[j];
            for (int i = 0; i < size; i++) {
                fitted[i] += weight * column[i];
            }
        }
        return fitted;
    }

    /** Σ power·y for every power. */
    private double[] products(double[] y) {
        if (basis.length == HIGHEST_POWER + 1) {
            return fiveProducts(basis[0], basis[1], basis[2], basis[3], basis[4], y);
        }
        double[] products = new double[basis.length];
        for (int j = 0; j < basis.length; j++) {
            products[j] = dot(basis[j], y);
        }
        return products;
    }

    /** Five sums side by side: each waits for its own last addition, so five take hardly longer than one. */
    private double[] fiveProducts(double[] a, double[] b, double[] c, double[] d, double[] e, double[] y) {
        double sumA = 0;
        double sumB = 0;
        double sumC = 0;
        double sumD = 0;
        double sumE = 0;
        for (int i = 0; i < size; i++) {
            sumA += a[i] * y[i];
            sumB += b[i] * y[i];
            sumC += c[i] * y[i];
            sumD += d[i] * y[i];
            sumE += e[i] * y[i];
        }
        return new double[] {sumA, sumB, sumC, sumD, sumE};
    }

    private double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < size; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** How many values x takes, counted up to five. */
    private static int distinct(double[] x, int size, double low, double high) {
        double[] seen = new double[HIGHEST_POWER + 1];
        seen[0] = low;
        seen[1] = high;
        int count = 2;
        for (int i = 0; i < size && count < seen.length; i++) {
            boolean known = false;
            for (int j = 0; j < count; j++) {
                known |= seen[j] == x[i];
            }
            if (!known) {
                seen[count++] = x[i];
            }
        }
        return count;
    }
}
