package plumbrow.advice.program;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;

/**
 * How a pass is meant to be sprayed. Null is not planned yet, which is unknown to the gates.
 *
 * @param field the field, {@code program} the program, {@code pass} the number of the pass it belongs to
 * @param tank a word shared by passes that go out in one tank mix; null for a pass by itself
 * @param carrierGalPerAcre carrier volume [gal/ac]
 * @param droplets droplet class of nozzle and pressure
 * @param boomIn height of the boom over the target [in]
 * @param driftReductionPct drift-reduction class of the sprayer against a standard one [%], 0 to 99
 * @param cropStage growth stage of the crop on that day, as the label writes them: "V4", "R1"
 * @param cropHeightIn height of the crop on that day [in]
 * @param weedHeightIn height of the tallest weed meant [in]
 * @param bloom whether the crop or weeds in it are in bloom on that day
 * @param applicator who applies it, by the name in the crew
 */
public record SprayPlan(
        String field,
        String program,
        int pass,
        @Nullable String tank,
        @Nullable Method method,
        @Nullable Double carrierGalPerAcre,
        @Nullable Droplets droplets,
        @Nullable Double boomIn,
        @Nullable Double driftReductionPct,
        @Nullable String cropStage,
        @Nullable Double cropHeightIn,
        @Nullable Double weedHeightIn,
        Ask bloom,
        @Nullable String applicator) {
    /** The same way of spraying for another pass, in the tank of that name. */
    public SprayPlan forPass(String otherField, String otherProgram, int otherPass, @Nullable String otherTank) {
        return new SprayPlan(
                otherField,
                otherProgram,
                otherPass,
                otherTank,
                method,
                carrierGalPerAcre,
                droplets,
                boomIn,
                driftReductionPct,
                cropStage,
                cropHeightIn,
                weedHeightIn,
                bloom,
                applicator);
    }

    /** The same way of spraying with another carrier volume [gal/ac]. */
    public SprayPlan carrying(double galPerAcre) {
        return new SprayPlan(
                field,
                program,
                pass,
                tank,
                method,
                galPerAcre,
                droplets,
                boomIn,
                driftReductionPct,
                cropStage,
                cropHeightIn,
                weedHeightIn,
                bloom,
                applicator);
    }

    /** The same way of spraying, meant for weeds up to another height [in]. */
    public SprayPlan overWeeds(@Nullable Double height) {
        return new SprayPlan(
                field,
                program,
                pass,
                tank,
                method,
                carrierGalPerAcre,
                droplets,
                boomIn,
                driftReductionPct,
                cropStage,
                cropHeightIn,
                height,
                bloom,
                applicator);
    }
}
