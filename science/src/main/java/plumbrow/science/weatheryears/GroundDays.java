package plumbrow.science.weatheryears;

/**
 * Whether a topsoil carries a machine, where the rain of some days may be missing.
 *
 * The store of {@link FitDays} is followed twice: as dry and as wet as it can be. It begins between empty and full, and rain that
 * is not known may have been none or may have filled it. Fit where even the wet one is; not fit where even the dry one is not; else
 * unknown. Once dry days are known for long enough both are the same again.
 *
 *   store = min(12 mm, store + rain);  fit where store &lt; 3 mm;  at the end of a day it dries as in {@link FitDays}
 *
 * The days are calendar days in order. Source: as {@link FitDays}, whose numbers these are.
 */
public final class GroundDays {
    /** What is known of the ground. */
    public enum Ground {
        FIT,
        WET,
        UNKNOWN
    }

    private double dry;
    private double wet = FitDays.HOLDS_MM;

    /**
     * Rain of an hour or a day comes on.
     *
     * @param mm rain [mm]; NaN for not known
     */
    public void rain(double mm) {
        if (Double.isNaN(mm)) {
            wet = FitDays.HOLDS_MM;
        } else {
            dry = Math.min(FitDays.HOLDS_MM, dry + mm);
            wet = Math.min(FitDays.HOLDS_MM, wet + mm);
        }
    }

    /**
     * The day is over.
     *
     * @param dayOfYear 1 to 366
     */
    public void endOfDay(int dayOfYear) {
        dry = Math.max(0, dry - FitDays.driesMm(dayOfYear));
        wet = Math.max(0, wet - FitDays.driesMm(dayOfYear));
    }

    /** The ground as it is now. */
    public Ground now() {
        if (wet < FitDays.FIT_BELOW_MM) {
            return Ground.FIT;
        }
        return dry < FitDays.FIT_BELOW_MM ? Ground.UNKNOWN : Ground.WET;
    }
}
