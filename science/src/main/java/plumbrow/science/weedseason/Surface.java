package plumbrow.science.weedseason;

/**
 * How wet the soil surface is, and how strongly a volatile herbicide leaves it in a day, against a moist one.
 *
 * EPTC lost in a day: dry 23, moist 49, wet 69 %; strength = ln(1 − lost)/ln(1 − lost when moist).
 *
 * Source: Gray & Weierich 1965, Weeds 13:141.
 */
public enum Surface {
    DRY(.23),
    MOIST(.49),
    WET(.69);

    private static final double WETTING_MM = 5;
    private static final int MOIST_DAYS = 3;

    private final double strength;

    Surface(double lostInADay) {
        this.strength = Math.log(1 - lostInADay) / Math.log(1 - .49);
    }

    /** Strength of loss against a moist surface [-]. */
    public double strength() {
        return strength;
    }

    /** Wet on a day of 5 mm or more, moist for three days after it, dry else: common practice, no source. */
    static Surface after(double[] rainMm, int day) {
        for (int back = 0; back <= MOIST_DAYS && back <= day; back++) {
            if (rainMm[day - back] >= WETTING_MM) {
                return back == 0 ? WET : MOIST;
            }
        }
        return DRY;
    }
}
