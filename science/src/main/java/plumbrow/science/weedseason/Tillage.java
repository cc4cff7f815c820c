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
        double broughtUpShare)
        implements Pass {
    private static final double SHARPNESS = 4;

    public Tillage {
        Limits.positive("working depth", workingDepthCm);
        Limits.share("share killed", killShare);
        Limits.positive("height of half the kill", halfHeightCm);
        Limits.notNegative("seedlings brought up", broughtUpShare);
    }

    @Override
    public Tillage on(int other) {
        return new Tillage(name, other, daysLate, workingDepthCm, rotary, killShare, halfHeightCm, broughtUpShare);
    }

    double killed(double heightCm) {
        return killShare / (1 + Math.pow(heightCm / halfHeightCm, SHARPNESS));
    }
}
