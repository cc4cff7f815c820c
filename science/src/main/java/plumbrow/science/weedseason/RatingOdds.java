package plumbrow.science.weedseason;

/**
 * From a drawn rating of a residual to the factor on its daily odds of control.
 *
 *   times(R) = e^{x(R) − x(likely)},  x(R) the log-odds at application by which the trial gives R
 *
 * Ratings are cumulative, so x is no plain log-odds of R. It is read off 600 points of x, a straight line in the log-odds of R
 * between two of them: off by less than one part in a thousand.
 */
public final class RatingOdds {
    private static final int POINTS = 600;
    private static final double END = 12;
    private static final double LEAST = 1e-3;

    private final double from;
    private final double step;
    private final double[] scores = new double[POINTS + 1];
    private final double likely;

    /** @param spent warm days at the end of the trial */
    RatingOdds(SoilTrial trial, double likely, double fade, double spent) {
        this.from = -END;
        this.step = (2 * END + fade * spent) / POINTS;
        for (int i = 0; i <= POINTS; i++) {
            scores[i] = logOdds(trial.rating(from + i * step, fade));
        }
        this.likely = startOf(likely);
    }

    private static double logOdds(double share) {
        return Math.log(share / (1 - share));
    }

    /** The log-odds at application by which a rating comes out. */
    private double startOf(double rating) {
        double score = logOdds(Math.min(1 - LEAST, Math.max(LEAST, rating)));
        int low = 0;
        int high = POINTS;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (scores[middle] <= score) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return from + step * (low + (score - scores[low]) / (scores[high] - scores[low]));
    }

    /** For a rating [share], held to 0.001 to 0.999; 0 for none at all. */
    public double times(double rating) {
        return rating <= 0 ? 0 : Math.exp(startOf(rating) - likely);
    }
}
