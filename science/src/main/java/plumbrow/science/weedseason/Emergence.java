package plumbrow.science.weedseason;

import java.util.OptionalInt;
import java.util.stream.IntStream;
import plumbrow.science.weeds.WeedEmergence;

/**
 * When a weed comes up: share up against soil degree days, a Weibull curve by its median.
 *
 * Degree days count from the first day of {@link Days}: the day the source of the median counts from must not lie much before
 * it. Early stragglers, which come before any such curve, are left out.
 *
 * @param halfDegreeDays soil degree days at half emergence [°C·d], more than 0
 * @param shape κ, more than 0; 1.5 to 3 where the source gives none
 * @param baseC base temperature of the source [°C]
 * Source: form {@link WeedEmergence}; medians Forcella et al. 1997.
 */
public record Emergence(double halfDegreeDays, double shape, double baseC) {
    /** Seed that tillage brings up germinates at once: half in 80 degree days. Common practice, no source. */
    private static final Emergence BROUGHT_UP = new Emergence(80, 2, 0);

    public Emergence {
        Limits.positive("degree days at half emergence", halfDegreeDays);
        Limits.positive("shape of emergence", shape);
    }

    /** Share up by the end of each day. */
    double[] byDay(Days days) {
        double[] up = days.soilHeat(baseC);
        for (int i = 0; i < up.length; i++) {
            up[i] = share(up[i]);
        }
        return up;
    }

    /**
     * The day of the year by whose end a share of the flush is up; empty where the days end before that.
     *
     * @param share more than 0, below 1
     */
    public OptionalInt dayOf(Days days, double share) {
        double[] up = byDay(days);
        return IntStream.range(0, up.length)
                .filter(i -> up[i] >= share)
                .map(i -> days.first() + i)
                .findFirst();
    }

    /** Share up by the end of each day of seed that was brought up on a day; the first comes up the day after. */
    double[] broughtUp(Days days, int index) {
        double[] up = days.soilHeat(baseC);
        double before = up[index];
        for (int i = 0; i < up.length; i++) {
            up[i] = i <= index ? 0 : BROUGHT_UP.share(up[i] - before);
        }
        return up;
    }

    private double share(double degreeDays) {
        double scale = WeedEmergence.scaleOfHalf(halfDegreeDays, shape);
        return WeedEmergence.weibullPct(degreeDays, scale, shape) / 100;
    }
}
