package plumbrow.science.weedseason;

/**
 * How tall a weed is by the heat it has had since it came up.
 *
 *   height = at100·(x/100)^power, at least 0.5 cm and at most the tallest;  x  air degree days since emergence [°C·d]
 *
 * Source of the power 1.64: 7 cm at 11 and 27 cm at 25 days after emergence in corn, Soltani, Shropshire & Sikkema 2022
 * (Soltani et al. 2022), ln(27/7)/ln(25/11); the form is ours.
 *
 * @param cmAt100 height at 100 degree days [cm]
 * @param power how growth gathers pace [-]
 * @param tallestCm height it does not pass [cm]
 * @param baseC base temperature of growth [°C]
 */
public record Growth(double cmAt100, double power, double tallestCm, double baseC) {
    private static final double SEEDLING_CM = .5;

    public Growth {
        Limits.positive("height at 100 degree days", cmAt100);
        Limits.positive("power of growth", power);
        if (!(tallestCm >= SEEDLING_CM)) {
            throw new IllegalArgumentException("tallest is " + tallestCm + " cm; expected 0.5 or more");
        }
    }

    /** Height [cm] at air degree days since emergence. */
    public double heightCm(double degreeDays) {
        double height = cmAt100 * Math.pow(degreeDays / 100, power);
        return Math.min(tallestCm, Math.max(SEEDLING_CM, height));
    }
}
