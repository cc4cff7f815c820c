package plumbrow.advice.program;

import org.jspecify.annotations.Nullable;

/**
 * Where a block refuge of a program lies. Null is unknown.
 *
 * @param distanceFt edge to edge from the trait corn [ft], 0 in the field or adjacent
 * @param rows width of its strips [rows]
 */
public record RefugePlan(
        @Nullable Double distanceFt, @Nullable Integer rows) {}
