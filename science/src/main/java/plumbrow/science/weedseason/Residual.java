package plumbrow.science.weedseason;

import java.util.List;
import java.util.Optional;

/**
 * A herbicide laid on the soil, which controls what comes up through it.
 *
 * @param group site-of-action group
 * @param rate in any unit shared with the ED50s
 * @param rainNeedMm rain that puts all of it to work where it is not worked in [mm]; 0 for none
 * @param rainAfterDays days until that rain, where rain is drawn; empty where the rain of {@link Days} decides
 * @param hoursOnSurface hours it lies where it is worked in the same day
 * @param responses one for each species, in their order
 */
public record Residual(
        String name,
        int day,
        Uncertain daysLate,
        int group,
        double rate,
        Chemistry chemistry,
        double rainNeedMm,
        Optional<Uncertain> rainAfterDays,
        double hoursOnSurface,
        List<SoilResponse> responses)
        implements Pass {
    public Residual {
        Limits.notNegative("rate", rate);
        Limits.notNegative("rain needed", rainNeedMm);
        Limits.notNegative("hours on the surface", hoursOnSurface);
        if (hoursOnSurface > 24) {
            throw new IllegalArgumentException(hoursOnSurface + " hours on the surface; expected 24 at most");
        }
        responses = List.copyOf(responses);
    }

    @Override
    public Residual on(int other) {
        return new Residual(
                name, other, daysLate, group, rate, chemistry, rainNeedMm, rainAfterDays, hoursOnSurface, responses);
    }
}
