package plumbrow.advice.land;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Ask;

/**
 * What labels ask of a field's land beside its soil. What nobody has looked up is unknown.
 *
 * @param erodible whether it is highly erodible land, as the county office of the farm agency has it
 * @param residuePct share of the ground under crop residue at planting [%]
 * @param groundWaterFt least depth down to ground water in the season [ft]
 * @param source map, office or who measured it
 */
public record FieldLand(
        String field,
        Ask erodible,
        @Nullable Double residuePct,
        @Nullable Double groundWaterFt,
        String source) {}
