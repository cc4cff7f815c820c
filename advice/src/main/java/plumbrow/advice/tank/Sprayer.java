package plumbrow.advice.tank;

import org.jspecify.annotations.Nullable;

/**
 * What a sprayer of a farm is built of, beside its width, speed and efficiency. Null is not on file.
 *
 * @param machine its name on the sheet of machines
 * @param tankGal usable volume of the tank, less what the pump cannot reach [gal], more than 0
 * @param spacingIn nozzle spacing along the boom [in], more than 0
 * @param pumpGpm what the pump gives at spraying pressure [gal/min]
 * @param agitationGpm what of it goes back into the tank to agitate [gal/min]
 * @param fillMinutes minutes to fill, the drive included [min]
 * @param mostLeftGal the most that may be left in the tank at the end of a job [gal]
 */
public record Sprayer(
        String farm,
        String machine,
        double tankGal,
        @Nullable Double spacingIn,
        @Nullable Double pumpGpm,
        @Nullable Double agitationGpm,
        @Nullable Double fillMinutes,
        @Nullable Double mostLeftGal,
        String source) {}
