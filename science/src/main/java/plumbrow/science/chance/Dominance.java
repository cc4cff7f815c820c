package plumbrow.science.chance;

/**
 * Whether one set of outcomes is better than another for everyone, whatever his nerves.
 *
 *   first degree:  F_a(x) ≤ F_b(x) for all x, somewhere less       (all who prefer more)
 *   second degree: ∫F_a ≤ ∫F_b up to all x, somewhere less         (all who prefer more and dislike risk)
 *
 * Samples of equal size: each sorted a_i ≥ b_i; each running sum of sorted a ≥ that of b. Unequal sizes: step through the
 * union of the values. Differences within 1e-9 of the range count as none. First degree implies second. It holds "in
 * these draws": noise near the ends often hides a dominance that is real, and the rule is never loosened for that.
 * Nothing here allocates.
 *
 * Source: Hadar & Russell 1969; Hanoch & Levy 1969 (values from memory).
 */
public enum Dominance {
    A,
    B,
    NONE;

    private static final double TOLERANCE = 1e-9;

    /** First degree, from samples sorted from low to high. */
    public static Dominance first(double[] a, double[] b) {
        double slack = TOLERANCE * range(a, b);
        return a.length == b.length ? firstPaired(a, b, slack) : firstStepped(a, b, slack);
    }

    /** Second degree, from samples sorted from low to high. */
    public static Dominance second(double[] a, double[] b) {
        double slack = TOLERANCE * range(a, b);
        return a.length == b.length ? secondPaired(a, b, slack) : secondStepped(a, b, slack);
    }

    private static Dominance firstPaired(double[] a, double[] b, double slack) {
        boolean aAhead = false;
        boolean bAhead = false;
        for (int i = 0; i < a.length; i++) {
            aAhead |= a[i] > b[i] + slack;
            bAhead |= b[i] > a[i] + slack;
        }
        return verdict(aAhead, bAhead);
    }

    private static Dominance secondPaired(double[] a, double[] b, double slack) {
        boolean aAhead = false;
        boolean bAhead = false;
        double lead = 0;
        for (int i = 0; i < a.length; i++) {
            lead += a[i] - b[i];
            aAhead |= lead > slack * a.length;
            bAhead |= lead < -slack * a.length;
        }
        return verdict(aAhead, bAhead);
    }

    private static Dominance firstStepped(double[] a, double[] b, double slack) {
        boolean aAhead = false;
        boolean bAhead = false;
        int i = 0;
        int j = 0;
        while (i < a.length || j < b.length) {
            double x = next(a, i, b, j);
            i = passed(a, i, x + slack);
            j = passed(b, j, x + slack);
            double lead = (double) j / b.length - (double) i / a.length;
            aAhead |= lead > TOLERANCE;
            bAhead |= lead < -TOLERANCE;
        }
        return verdict(aAhead, bAhead);
    }

    private static Dominance secondStepped(double[] a, double[] b, double slack) {
        boolean aAhead = false;
        boolean bAhead = false;
        int i = 0;
        int j = 0;
        double before = Math.min(a[0], b[0]);
        double lead = 0;
        while (i < a.length || j < b.length) {
            double x = next(a, i, b, j);
            lead += ((double) j / b.length - (double) i / a.length) * (x - before);
            aAhead |= lead > slack;
            bAhead |= lead < -slack;
            i = passed(a, i, x);
            j = passed(b, j, x);
            before = x;
        }
        return verdict(aAhead, bAhead);
    }

    private static double next(double[] a, int i, double[] b, int j) {
        if (i == a.length) {
            return b[j];
        }
        return j == b.length ? a[i] : Math.min(a[i], b[j]);
    }

    private static int passed(double[] sorted, int from, double value) {
        int i = from;
        while (i < sorted.length && sorted[i] <= value) {
            i++;
        }
        return i;
    }

    private static double range(double[] a, double[] b) {
        return Math.max(a[a.length - 1], b[b.length - 1]) - Math.min(a[0], b[0]);
    }

    private static Dominance verdict(boolean aAhead, boolean bAhead) {
        if (aAhead == bAhead) {
            return NONE;
        }
        return aAhead ? A : B;
    }
}
