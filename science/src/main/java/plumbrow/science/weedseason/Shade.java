package plumbrow.science.weedseason;

/**
 * Share of seedlings that die on their own: in the open, and under the crop.
 *
 * Between the crop's emergence and half the way to its closing the share rises along a line: waterhemp in corn of 30-inch
 * rows 16, 52, 96, 99 % when it came at VE, V3, V5, V8 (Nordby & Hartzler 2004).
 *
 * @param openShare dies without shade [-]
 * @param shadedShare dies under a closed crop [-]
 */
public record Shade(double openShare, double shadedShare) {
    private static final double FULL_SHADE_AT = .5;

    public Shade {
        Limits.share("deaths in the open", openShare);
        Limits.share("deaths in the shade", shadedShare);
    }

    /** Share of a day's seedlings that live. */
    double live(Crop crop, int dayOfYear) {
        double way = (double) (dayOfYear - crop.emergenceDay()) / (crop.closedDay() - crop.emergenceDay());
        double shade = Math.min(1, Math.max(0, way / FULL_SHADE_AT));
        return 1 - openShare - shade * (shadedShare - openShare);
    }
}
