package plumbrow.science.safety;

/**
 * The toxicity category that a half-lethal dose by mouth calls for.
 *
 *   I ≤ 50 < II ≤ 500 < III ≤ 5,000 < IV  mg/kg
 *
 * Source: 40 CFR 156.62.
 */
public final class RatOralCategory {
    private RatOralCategory() {}

    /** I, II, III or IV for a half-lethal dose by mouth [mg/kg], more than 0. */
    public static String of(double mgPerKg) {
        return ToxicityCategory.Limits.REGULATION
                .of(ToxicityCategory.Route.ORAL, mgPerKg)
                .name();
    }
}
