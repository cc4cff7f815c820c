package plumbrow.science.weedseason;

/**
 * Control of standing weeds by rate and height.
 *
 *   odds of control = (rate/ED50 · (h_ref/h)^γ)^slope · odds times
 *
 * @param ed50 rate that controls half at the reference height, in the unit of the rate; +∞ where it does nothing
 * @param slope of control over rate [-]
 * @param referenceCm height that the ED50 is known for [cm]
 * @param heightPower γ, how the rate needed grows with height; can be below 0
 * @param oddsTimes doubt of the rating: multiplies the odds
 * Source: log-logistic; heights: Sivesind et al. 2011, Weed Technol. 25:44.
 */
public record LeafResponse(double ed50, double slope, double referenceCm, double heightPower, Uncertain oddsTimes) {
    public LeafResponse {
        if (!(ed50 > 0)) {
            throw new IllegalArgumentException("ED50 is " + ed50 + "; expected more than 0");
        }
        Limits.positive("slope of control", slope);
        Limits.positive("reference height", referenceCm);
    }

    /** From the control seen at one rate: ED50 = rate·((100 − p)/p)^{1/slope}. */
    public static LeafResponse seen(double controlPct, double rate, double slope, double heightCm, double heightPower) {
        double half = rate * Math.pow((100 - controlPct) / controlPct, 1 / slope);
        return new LeafResponse(half, slope, heightCm, heightPower, Uncertain.known(1));
    }

    /** A herbicide that does nothing to a weed. */
    public static LeafResponse none() {
        return new LeafResponse(Double.POSITIVE_INFINITY, 1, 10, 0, Uncertain.known(1));
    }

    double odds(double rate, double heightCm) {
        return Math.pow(rate / ed50 * Math.pow(referenceCm / heightCm, heightPower), slope);
    }
}
