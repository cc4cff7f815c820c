package plumbrow.advice.pestpage;

import plumbrow.advice.field.Crop;

/**
 * What a pest costs on one field.
 *
 * @param pressure mean pressure in {@code unit}, if nothing is done
 * @param lossPct yield lost at that pressure by this pest alone [%]
 * @param says loss per unit, its limit and what lateness changes
 * @param figure the figure behind the loss
 */
public record Pressing(
        String field,
        Crop crop,
        double pressure,
        String unit,
        double lossPct,
        String says,
        String figure,
        String source) {}
