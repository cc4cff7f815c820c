package plumbrow.science.weedseason;

/**
 * A pass of a field cultivator, disc or rotary tiller.
 *
 * It kills what has emerged: killed = share/(1 + (h/half)⁴), h height [cm]. It mixes every herbicide that lies there, and
 * brings up new seed, which germinates at once.
 *
 * @param workingDepthCm operating depth [cm]
 * @param rotary a rotary tiller mixes through its full depth, all others through half
 * @param killShare of small weeds, where it runs [-]
 * @param halfHeightCm height at which half of that share is killed [cm]
 * @param broughtUpShare new seedlings, as a share of the season's [-]
 * @param depthTimes depth of the floor under a place of the field, as a multiple of {@code workingDepthCm}; a draw is one place
 * Source: depths Walker et al. 1976 (see soil.Incorporation); kill and new seed by common practice, no source.
 */
public record Tillage(
        String name,
        int day,
        Uncertain daysLate,
        double workingDepthCm,
        boolean rotary,
        double killShare,
        double halfHeightCm,
        double broughtUpShare,
        Uncertain depthTimes)
        implements Pass {
    private static final double SHARPNESS = 4;

    /** Depths are told apart to a sixteenth of the working depth, up to four times it, so that they come again from draw to draw. */
    static final int DEPTH_STEPS = 16;

    static final int MOST_DEPTH = 4 * DEPTH_STEPS - 1;

    /** With an even floor. */
    public Tillage(
            String name,
            int day,
            Uncertain daysLate,
            double workingDepthCm,
            boolean rotary,
            double killShare,
            double halfHeightCm,
            double broughtUpShare) {
        this(name, day, daysLate, workingDepthCm, rotary, killShare, halfHeightCm, broughtUpShare, Uncertain.known(1));
    }

    public Tillage {
        Limits.positive("working depth", workingDepthCm);
        Limits.share("share killed", killShare);
        Limits.positive("height of half the kill", halfHeightCm);
        Limits.notNegative("seedlings brought up", broughtUpShare);
    }

    @Override
    public Tillage on(int other) {
        return new Tillage(
                name, other, daysLate, workingDepthCm, rotary, killShare, halfHeightCm, broughtUpShare, depthTimes);
    }

    /** The depth of its floor in a draw, in steps of a part of the working depth, at least 1. */
    int depthSteps(double[][] columns, int draw) {
        return (int) Math.max(1, Math.min(MOST_DEPTH, Math.round(DEPTH_STEPS * depthTimes.in(columns, draw))));
    }

    double killed(double heightCm) {
        return killShare / (1 + Math.pow(heightCm / halfHeightCm, SHARPNESS));
    }
}
