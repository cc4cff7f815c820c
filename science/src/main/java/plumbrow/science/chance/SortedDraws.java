package plumbrow.science.chance;

/** What is read from draws that are sorted from worst to best. Nothing here allocates. */
public final class SortedDraws {
    /** A count of draws this close above a whole number is that number: 0.1·30 is 3, not 3.0000000000000004. */
    private static final double WHOLE = 1e-9;

    private SortedDraws() {}

    /**
     * The value not passed by a share of the draws, by straight line at position (N−1)·p counted from 0.
     *
     * @param sorted draws from low to high, at least one
     * @param share p, 0 to 1
     */
    public static double quantile(double[] sorted, double share) {
        double position = (sorted.length - 1) * share;
        int below = Math.min((int) position, sorted.length - 1);
        double part = position - below;
        return part <= 0 ? sorted[below] : sorted[below] + part * (sorted[below + 1] - sorted[below]);
    }

    /**
     * Expected shortfall: the mean of the worst share of the draws, the last of them counted in part.
     *
     *   k = αN, f = ⌊k⌋:  [Σ_{i≤f} x_i + (k−f)·x_{f+1}] / k;  the worst draw where αN is below 1
     *
     * @param sorted draws from low to high, at least one
     * @param share α, more than 0, up to 1
     * Source: Rockafellar & Uryasev 2002 (value from memory).
     */
    public static double worstShareMean(double[] sorted, double share) {
        double count = share * sorted.length;
        if (count <= 1) {
            return sorted[0];
        }
        int whole = Math.min((int) (count + WHOLE), sorted.length);
        double part = Math.max(count - whole, 0);
        double sum = 0;
        for (int i = 0; i < whole; i++) {
            sum += sorted[i];
        }
        if (part > WHOLE && whole < sorted.length) {
            return (sum + part * sorted[whole]) / count;
        }
        return sum / whole;
    }

    /** The share of the draws above a value, those equal to it counted half. */
    public static double shareAbove(double[] sorted, double value) {
        double above = 0;
        for (double draw : sorted) {
            above += draw > value ? 1 : draw == value ? 0.5 : 0;
        }
        return above / sorted.length;
    }

    public static double mean(double[] draws) {
        double sum = 0;
        for (double draw : draws) {
            sum += draw;
        }
        return sum / draws.length;
    }

    /** Standard error of a share p seen in N draws: √(p(1−p)/N). */
    public static double shareError(double share, int draws) {
        return Math.sqrt(share * (1 - share) / draws);
    }
}
