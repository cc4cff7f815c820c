package plumbrow.advice.weedseason;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.outlook.Chances;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.quantity.Amount;

/**
 * A rating to reckon with.
 *
 * @param law share of the plants killed
 * @param rate per acre at which it was seen; null for "the labelled rate" where no label rate is on file
 * @param heightCm height of the weed [cm]
 * @param seenDays days after application
 * @param source provenance in words
 */
record FoundRating(Law law, @Nullable Amount rate, double heightCm, int seenDays, String source) {
    static final double USUAL_HEIGHT_CM = 10;
    static final int USUAL_DAYS = 28;
    private static final double BORROWED_DOWN = .1;
    private static final double BORROWED_UP = .05;

    double likely() {
        return law instanceof Law.Pert pert ? pert.likely() : Chances.of(law).mean();
    }

    /** Wider, since it was seen on another weed or in another crop: 10 points down, 5 up (common practice, no source). */
    static Law widened(Law law) {
        double low = law instanceof Law.Pert pert ? pert.low() : Chances.of(law).mean();
        double likely = law instanceof Law.Pert pert ? pert.likely() : low;
        double high = law instanceof Law.Pert pert ? pert.high() : low;
        return new Law.Pert(Math.max(0, low - BORROWED_DOWN), likely, Math.min(1, high + BORROWED_UP));
    }
}
