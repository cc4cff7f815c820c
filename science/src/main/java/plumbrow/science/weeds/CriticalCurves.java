package plumbrow.science.weeds;

/**
 * Yield left when weeds stay until a time, and when the crop is kept clean until a time.
 *
 *   weeds stay until T, then go      Y = 100·[1/(e^{c(T−d)} + f) + (f−1)/f]
 *   clean until T, then weeds come   Y = a·e^{−b·e^{−kT}}
 *
 *   Y  yield [% of weed-free];  T  time since the crop emerged [degree days or d, as the curve was fitted]
 *   c  rate, d  inflection, f  shape, more than 1: Y goes to 100·(f−1)/f
 *   a  highest yield [%], b  shape, k  rate: Y starts at a·e^{−b}
 *
 * Source: Hall, Swanton & Anderson 1992, Weed Sci. 40:441; Knezevic et al. 2002, Weed Sci. 50:773 (printed forms from
 * memory; which curve serves which side seen in Evans et al. 2003).
 */
public final class CriticalCurves {
    private CriticalCurves() {}

    /** Y [%] where weeds stay until T. */
    public static double weedyUntil(double time, double rate, double inflection, double shape) {
        return 100 * (1 / (Math.exp(rate * (time - inflection)) + shape) + (shape - 1) / shape);
    }

    /** Y [%] where the crop is clean until T. */
    public static double cleanUntil(double time, double highest, double shape, double rate) {
        return highest * Math.exp(-shape * Math.exp(-rate * time));
    }

    /**
     * The time by which weeds must go for a yield [%]; +∞ where they may stay, not a number where even time 0 is too late.
     * Solved in closed form: e^{c(T−d)} = 1/(Y/100 − (f−1)/f) − f.
     */
    public static double removeBy(double yieldPct, double rate, double inflection, double shape) {
        double above = yieldPct / 100 - (shape - 1) / shape;
        if (above <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double power = 1 / above - shape;
        return power <= 0 ? Double.NaN : inflection + Math.log(power) / rate;
    }

    /** The time until which the crop must be clean for a yield [%]; +∞ where no time is enough. */
    public static double cleanFor(double yieldPct, double highest, double shape, double rate) {
        if (yieldPct >= highest) {
            return Double.POSITIVE_INFINITY;
        }
        double log = -Math.log(yieldPct / highest) / shape;
        return log >= 1 ? 0 : -Math.log(log) / rate;
    }
}
