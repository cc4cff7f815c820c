package plumbrow.science.chance;

/**
 * The lower triangle P of a correlation matrix C = PPᵀ, which turns independent normals into correlated ones.
 *
 * A matrix that is not positive definite has none. It is refused with the pair of variables to change, never repaired.
 */
public final class Cholesky {
    private static final double LEAST_PIVOT = 1e-12;

    private final double[][] lower;

    /**
     * @param correlation square, symmetric, ones on the diagonal, every other cell between −1 and 1
     * @throws IllegalArgumentException naming the pair (counted from 1) that can't stand beside the others
     */
    public Cholesky(double[][] correlation) {
        int size = correlation.length;
        lower = new double[size][];
        for (int i = 0; i < size; i++) {
            check(correlation, i);
            lower[i] = new double[i + 1];
            double rest = correlation[i][i];
            for (int j = 0; j < i; j++) {
                double sum = correlation[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = sum / lower[j][j];
                rest -= lower[i][j] * lower[i][j];
            }
            Refusal.unless(rest > LEAST_PIVOT, "these correlations can't hold together; change that of " + pair(i));
            lower[i][i] = Math.sqrt(rest);
        }
    }

    public int size() {
        return lower.length;
    }

    /** Turns independent standard normals into correlated ones, in place. */
    public void correlate(double[] normals) {
        for (int i = lower.length - 1; i >= 0; i--) {
            double sum = 0;
            for (int k = 0; k <= i; k++) {
                sum += lower[i][k] * normals[k];
            }
            normals[i] = sum;
        }
    }

    /** Solves P·x = v in place: takes out the correlation that {@link #correlate} puts in. */
    public void decorrelate(double[] values) {
        for (int i = 0; i < lower.length; i++) {
            double rest = values[i];
            for (int k = 0; k < i; k++) {
                rest -= lower[i][k] * values[k];
            }
            values[i] = rest / lower[i][i];
        }
    }

    /** The earlier variable that pulls hardest on variable i. */
    private String pair(int i) {
        int hardest = 0;
        for (int j = 1; j < i; j++) {
            if (Math.abs(lower[i][j]) > Math.abs(lower[i][hardest])) {
                hardest = j;
            }
        }
        return "variables " + (hardest + 1) + " and " + (i + 1);
    }

    private static void check(double[][] correlation, int i) {
        Refusal.unless(correlation[i].length == correlation.length, "a correlation matrix must be square");
        Refusal.unless(correlation[i][i] == 1, "a variable moves fully with itself: 1 on the diagonal");
        for (int j = 0; j < i; j++) {
            double cell = correlation[i][j];
            Refusal.unless(cell == correlation[j][i], "a correlation matrix must be the same on both sides");
            Refusal.unless(
                    Math.abs(cell) < 1,
                    "the correlation of variables " + (j + 1) + " and " + (i + 1) + " must lie between −1 and 1");
        }
    }
}
