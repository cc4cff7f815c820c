package plumbrow.science.weedseason;

import plumbrow.science.weeds.ResidualHerbicide;

/**
 * Control of a weed's emergers by the dose in the germination layer.
 *
 *   odds of control = (dose/ED50)^slope · odds times
 *
 * @param ed50 dose that controls half, in the unit of the rate, mixed over 5 cm; +∞ where it does nothing
 * @param slope of control over dose [-]
 * @param oddsTimes doubt of the rating: multiplies the odds, 1 for none, 0 where it fails
 * Source: log-logistic, {@link ResidualHerbicide}.
 */
public record SoilResponse(double ed50, double slope, Uncertain oddsTimes) {
    public SoilResponse {
        if (!(ed50 > 0)) {
            throw new IllegalArgumentException("ED50 is " + ed50 + "; expected more than 0");
        }
        Limits.positive("slope of control", slope);
    }

    /** A herbicide that does nothing to a weed. */
    public static SoilResponse none() {
        return new SoilResponse(Double.POSITIVE_INFINITY, 1, Uncertain.known(1));
    }

    double odds(double dose) {
        return dose <= 0 ? 0 : Math.pow(dose / ed50, slope);
    }
}
