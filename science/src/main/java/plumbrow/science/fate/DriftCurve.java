package plumbrow.science.fate;

import java.util.List;

/**
 * Deposit of spray drift on the ground against the distance from the field edge.
 *
 *   point  D = A·x^B [% of the field rate];  mean over a width w from x on: A/(w(B+1))·[(x+w)^(B+1) − x^(B+1)]
 *
 *   x  distance [m], 1 to 100;  w  width [m], > 0
 *
 * Source: Rautmann, Streloke & Winkler 2001, Mitt. Biol. Bundesanst. 383:133, 90th percentile of 50 trials in field crops
 * (coefficients from memory; they reproduce the nine printed table values); FOCUS Surface Water Appendix B as in R package
 * pfm (verified).
 *
 * @param a deposit at one metre [%]
 * @param b power of the distance, < 0 and not −1
 */
public record DriftCurve(double a, double b) {
    /** Field crops, one application, standard nozzles, wind up to 5 m/s, speed up to 8 km/h. */
    public static final DriftCurve FIELD_CROPS = new DriftCurve(2.7705, -0.9787);

    /** FOCUS, field crops, by the number of applications 1 to 8; the percentile falls from 90th to 67th. */
    public static final List<DriftCurve> FOCUS = List.of(
            new DriftCurve(2.7593, -0.9778),
            new DriftCurve(2.4376, -1.0100),
            new DriftCurve(2.0244, -0.9956),
            new DriftCurve(1.8619, -0.9861),
            new DriftCurve(1.7942, -0.9943),
            new DriftCurve(1.6314, -0.9861),
            new DriftCurve(1.5784, -0.9811),
            new DriftCurve(1.5119, -0.9832));

    /** Nearest distance the curve holds for [m]. */
    public static final double NEAREST_M = 1;
    /** Farthest distance the curve holds for [m]. */
    public static final double FARTHEST_M = 100;

    private static final DriftCurve AERIAL_NEAR = new DriftCurve(50.47, -0.3819);
    private static final DriftCurve AERIAL_FAR = new DriftCurve(281.1, -0.9989);
    static final double AERIAL_BEND_M = 16.2;

    /** Deposit at a distance [% of the field rate]. */
    public double pointPct(double metres) {
        return a * Math.pow(metres, b);
    }

    /** Mean deposit over a width from a distance on [% of the field rate]. */
    public double meanPct(double metres, double widthMetres) {
        double power = b + 1;
        return a / (widthMetres * power) * (Math.pow(metres + widthMetres, power) - Math.pow(metres, power));
    }

    /** Distance at which the deposit has fallen to a share of the field rate [m]. */
    public double metresTo(double pct) {
        return Math.pow(pct / a, 1 / b);
    }

    /** FOCUS deposit of a spray from the air at a distance [% of the field rate]. */
    public static double aerialPct(double metres) {
        return (metres <= AERIAL_BEND_M ? AERIAL_NEAR : AERIAL_FAR).pointPct(metres);
    }
}
