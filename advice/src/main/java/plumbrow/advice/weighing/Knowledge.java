package plumbrow.advice.weighing;

/**
 * What it is worth to know something before choosing among programs.
 *
 *   everything   mean over draws of max_c m[c]  −  max_c mean m[c]
 *   one input x  E_x[ max_c E(m_c | x) ]        −  max_c mean m[c]
 *
 *   m[c]  margin of program c in a draw [$/ac]
 *
 * <p>E(m_c | x) is a regression of the margin on x. Values of single inputs don't add up.
 */
final class Knowledge {
    private final double[][] margins;
    private final double everything;

    /** @param margins one row per program that may be chosen, all on the same draws */
    Knowledge(double[][] margins) {
        this.margins = margins;
        this.everything = margins.length < 2 ? 0 : valueOf(margins, margins[0].length);
    }

    /** Expected value of knowing everything [$/ac]. */
    double ofEverything() {
        return everything;
    }

    /** Expected value of knowing x [$/ac], from the first {@code size} draws: 0 up to that of knowing everything. */
    double of(double[] x, int size) {
        if (margins.length < 2 || oneValue(x, size)) {
            return 0;
        }
        Regression regression = new Regression(x, size);
        double[][] fitted = new double[margins.length][];
        for (int c = 0; c < margins.length; c++) {
            fitted[c] = regression.fitted(margins[c]);
        }
        return Math.min(valueOf(fitted, size), everything);
    }

    private static double valueOf(double[][] payoffs, int size) {
        double best = Double.NEGATIVE_INFINITY;
        for (double[] payoff : payoffs) {
            double sum = 0;
            for (int i = 0; i < size; i++) {
                sum += payoff[i];
            }
            best = Math.max(best, sum / size);
        }
        double sum = 0;
        for (int i = 0; i < size; i++) {
            double most = payoffs[0][i];
            for (int c = 1; c < payoffs.length; c++) {
                most = Math.max(most, payoffs[c][i]);
            }
            sum += most;
        }
        return Math.max(0, sum / size - best);
    }

    private static boolean oneValue(double[] x, int size) {
        for (int i = 1; i < size; i++) {
            if (x[i] != x[0]) {
                return false;
            }
        }
        return true;
    }
}
