package plumbrow.advice.weedseason;

import java.util.Set;

/**
 * What one kind of plants of a weed leaves behind, draw by draw.
 *
 * @param share of the weed's seedlings [-]
 * @param resists site-of-action groups that do not kill them; empty for susceptible plants
 * @param survivorsM2 plants at the end [1/m²]
 * @param seedsM2 seed shed [1/m²]
 */
@SuppressWarnings("ArrayRecordComponent") // One number a draw; read only.
public record BiotypeOutcome(String weed, double share, Set<String> resists, double[] survivorsM2, double[] seedsM2) {}
