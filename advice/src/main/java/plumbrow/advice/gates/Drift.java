package plumbrow.advice.gates;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.shelf.Method;
import plumbrow.science.fate.DriftCurve;

/**
 * How much of what is sprayed drifts how far, for the screens.
 *
 * @param aerial whether it goes on from the air
 * @param reductionPct drift-reduction class of the sprayer [%]; one that is not planned counts as none
 */
record Drift(boolean aerial, double reductionPct) {
    static final double METRES_PER_FOOT = 0.3048;

    /** The farthest the curves hold [ft]. */
    static final double FARTHEST_FT = DriftCurve.FARTHEST_M / METRES_PER_FOOT;

    static Drift of(@Nullable SprayPlan plan) {
        if (plan == null) {
            return new Drift(false, 0);
        }
        Double reduction = plan.driftReductionPct();
        return new Drift(plan.method() == Method.AERIAL, reduction == null ? 0 : reduction);
    }

    /**
     * Share of the rate that falls at a distance [%]; nearer than a metre counts as a metre. Beyond the farthest distance it is
     * that at the farthest, which is the most it can be: the curves fall with distance.
     */
    double depositPct(double feet) {
        double metres = Math.min(DriftCurve.FARTHEST_M, Math.max(DriftCurve.NEAREST_M, feet * METRES_PER_FOOT));
        double standard = aerial ? DriftCurve.aerialPct(metres) : DriftCurve.FIELD_CROPS.pointPct(metres);
        return standard * (1 - reductionPct / 100);
    }
}
