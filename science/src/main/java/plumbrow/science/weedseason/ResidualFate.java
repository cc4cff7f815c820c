package plumbrow.science.weedseason;

import java.util.Arrays;
import plumbrow.science.soil.Incorporation;

/**
 * What of a residual stands in the germination layer on each day, as a share of its rate.
 *
 *   share = (1 − vapour)·2^{−Σ f_T/DT50}·at work·min(1, 5 cm/mixed depth)
 *
 *   vapour   {@link VapourLoss}, until it is worked in or washed in
 *   f_T      speed by soil temperature, Q10 2.58 from 20 °C, 0 in frozen soil
 *   at work  all of it once worked in; else rain so far/rain needed, at most 1, or all from the day of the drawn rain on
 *   depth    the deepest that it was mixed to so far
 *
 * Worked in less than 5 cm deep and not yet washed down, it leaves the seedlings from below that depth alone.
 *
 * Source: depth and the ramp of rain by common practice; FOCUS kinetics guidance App. 8 for f_T.
 */
final class ResidualFate {
    /** Layer for which an ED50 holds [cm], common practice. */
    static final double LAYER_CM = 5;

    private static final double HOURS_A_DAY = 24;

    /** Share of the rate that works on each day. */
    final double[] dose;

    /** Depth [cm] from below which seedlings escape on each day; the whole layer or more where none does. */
    final double[] escapeBelowCm;

    private boolean lets;

    private ResidualFate(int days) {
        dose = new double[days];
        escapeBelowCm = new double[days];
        Arrays.fill(escapeBelowCm, LAYER_CM);
    }

    /**
     * @param applied index of the day of application
     * @param rainAfter days until the activating rain; below 0 where the rain of the days decides
     * @param mixedCm depth to which each day's tillage mixes, 0 on days without
     */
    static ResidualFate of(Weathering weathering, int applied, int rainAfter, double[] mixedCm) {
        Residual residual = weathering.residual;
        int days = weathering.days.count();
        ResidualFate fate = new ResidualFate(days);
        double exposure = 0;
        double kept = 1;
        double rain = 0;
        double depth = 0;
        for (int i = applied; i < days; i++) {
            boolean sprayedToday = i == applied;
            rain += sprayedToday ? 0 : weathering.days.rainMm(i);
            depth = Math.max(depth, mixedCm[i]);
            double washed = washed(residual, rainAfter, i - applied, rain);
            double exposed = exposed(residual, depth, sprayedToday, washed);
            if (exposed > 0) {
                exposure += exposed * weathering.exposure[i];
                kept = 1 - VapourLoss.lostShare(exposure);
            }
            double atWork = depth > 0 ? 1 : washed;
            fate.dose[i] = atWork == 0 ? 0 : kept * weathering.left(applied, i) * atWork * diluted(depth);
            if (depth > 0 && washed < 1) {
                fate.escapeBelowCm[i] = Math.min(LAYER_CM, depth);
                fate.lets |= depth < LAYER_CM;
            }
        }
        return fate;
    }

    /** Part of a day for which it lies on the surface, times the part of it that does. */
    private static double exposed(Residual residual, double depthCm, boolean sprayedToday, double washed) {
        if (depthCm == 0) {
            return 1 - washed;
        }
        return sprayedToday ? residual.hoursOnSurface() / HOURS_A_DAY : 0;
    }

    /** Whether it lets any seedlings escape from beneath. */
    boolean lets() {
        return lets;
    }

    private static double washed(Residual residual, int rainAfter, int daysSince, double rainMm) {
        if (residual.rainNeedMm() == 0) {
            return 1;
        }
        if (rainAfter >= 0) {
            return daysSince >= rainAfter ? 1 : 0;
        }
        return Math.min(1, rainMm / residual.rainNeedMm());
    }

    private static double diluted(double depthCm) {
        return depthCm <= LAYER_CM ? 1 : LAYER_CM / depthCm;
    }

    /** Depth to which a tillage pass mixes where its floor lies at so many steps [cm]. */
    static double mixedCm(Tillage tillage, int depthSteps) {
        return Incorporation.mixedDepth(tillage.workingDepthCm() * depthSteps / Tillage.DEPTH_STEPS, tillage.rotary());
    }
}
