package plumbrow.advice.weeds;

/**
 * A tillage tool and what it does to weeds: common practice, no source.
 *
 * killed = share/(1 + (height/half)⁴)
 */
public enum Tool {
    FIELD_CULTIVATOR("field cultivator", false, .95, 25, .05),
    DISC("disc", false, .9, 30, .08),
    ROTARY_TILLER("rotary tiller", true, .98, 40, .1),
    /** Runs between the rows only. */
    ROW_CULTIVATOR("row cultivator", false, .75, 20, .03);

    private final String word;
    private final boolean rotary;
    private final double killShare;
    private final double halfHeightCm;
    private final double broughtUpShare;

    Tool(String word, boolean rotary, double killShare, double halfHeightCm, double broughtUpShare) {
        this.word = word;
        this.rotary = rotary;
        this.killShare = killShare;
        this.halfHeightCm = halfHeightCm;
        this.broughtUpShare = broughtUpShare;
    }

    public String word() {
        return word;
    }

    /** Whether it mixes through its full depth; the others mix through half. */
    public boolean rotary() {
        return rotary;
    }

    /** Share of small weeds that it kills [-]. */
    public double killShare() {
        return killShare;
    }

    /** Height at which it kills half of that share [cm]. */
    public double halfHeightCm() {
        return halfHeightCm;
    }

    /** Seedlings that it brings up, as a share of the season's [-]. */
    public double broughtUpShare() {
        return broughtUpShare;
    }
}
