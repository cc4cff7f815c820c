package plumbrow.science.weedseason;

/**
 * From which depth a weed comes: half of it from above the usual depth, all from above the deepest, evenly between.
 *
 * @param usualCm more than 0
 * @param deepestCm more than usual
 * Source: depths: NDSU Crop & Pest Report 20 May 2021 and others; the even spread is ours.
 */
public record Depth(double usualCm, double deepestCm) {
    public Depth {
        Limits.positive("usual depth", usualCm);
        if (!(deepestCm > usualCm)) {
            throw new IllegalArgumentException(
                    "deepest is " + deepestCm + " cm; expected more than the usual " + usualCm);
        }
    }

    /** Share of the seedlings that come from below a depth [cm]. */
    double belowShare(double cm) {
        if (cm <= usualCm) {
            return 1 - .5 * cm / usualCm;
        }
        return Math.max(0, .5 * (deepestCm - cm) / (deepestCm - usualCm));
    }
}
