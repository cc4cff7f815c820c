package plumbrow.advice.strips;

import org.jspecify.annotations.Nullable;

/**
 * One strip as harvested.
 *
 * @param block strips of one block lie side by side
 * @param treatment what was done to it
 * @param yieldBuPerAcre at the moisture at which the crop is sold [bu/ac], 0 or more
 * @param place its place across the field, in strips or feet from one side; null where nobody wrote it down
 */
public record Strip(
        String block,
        String treatment,
        double yieldBuPerAcre,
        @Nullable Double place) {}
