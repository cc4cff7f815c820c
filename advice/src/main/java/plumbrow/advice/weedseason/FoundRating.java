package plumbrow.advice.weedseason;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.quantity.Amount;

/**
 * A rating to reckon with.
 *
 * @param distribution share of the plants killed
 * @param rate per acre at which it was seen; null for "the labelled rate" where no label rate is on file
 * @param heightCm height of the weed [cm]
 * @param seenDays days after application
 * @param onOwnGround whether it was seen on ground like the field's; else in a trial elsewhere
 * @param later a later look at the same plots, on soil; null where there was one look
 * @param source provenance in words
 */
record FoundRating(
        Distribution distribution,
        @Nullable Amount rate,
        double heightCm,
        int seenDays,
        boolean onOwnGround,
        @Nullable Later later,
        String source) {
    /**
     * A later look.
     *
     * @param control share of all that came up [0 to 1]
     */
    record Later(double control, int seenDays) {}

    static final double USUAL_HEIGHT_CM = 10;
    static final int USUAL_DAYS = 28;
    private static final double BORROWED_DOWN = .1;
    private static final double BORROWED_UP = .05;

    double likely() {
        return likely(distribution);
    }

    static double likely(Distribution distribution) {
        if (distribution instanceof Distribution.LogOdds share) {
            return share.median();
        }
        return distribution instanceof Distribution.Pert pert
                ? pert.likely()
                : Chances.of(distribution).mean();
    }

    FoundRating with(Later look) {
        return new FoundRating(distribution, rate, heightCm, seenDays, onOwnGround, look, source);
    }

    /**
     * Wider, since it was seen on another weed or in another crop: 10 points down, 5 up where it was entered as a
     * spread, as much doubt again where it was one number (common practice, no source).
     */
    static Distribution widened(Distribution distribution) {
        if (distribution instanceof Distribution.LogOdds share) {
            return new Distribution.LogOdds(share.median(), share.logitSd() * Math.sqrt(2));
        }
        double low = distribution instanceof Distribution.Pert pert
                ? pert.low()
                : Chances.of(distribution).mean();
        double likely = distribution instanceof Distribution.Pert pert ? pert.likely() : low;
        double high = distribution instanceof Distribution.Pert pert ? pert.high() : low;
        return new Distribution.Pert(Math.max(0, low - BORROWED_DOWN), likely, Math.min(1, high + BORROWED_UP));
    }
}
