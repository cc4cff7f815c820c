package plumbrow.advice.land;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Feature;

/**
 * The part of a field that a label's setback from one feature takes.
 *
 * @param feet the setback [ft], more than 0
 * @param downwindOnly whether it holds only where the wind blows towards the feature
 * @param acres what it takes of the field [ac]; null where field or feature has no shape and its distance does not
 *     tell that it takes nothing
 * @param area where it lies; null where it takes nothing or has no shape
 */
public record Zone(
        Feature feature,
        double feet,
        boolean downwindOnly,
        @Nullable Double acres,
        @Nullable Boundary area,
        String source) {
    public Optional<Boundary> drawn() {
        return Optional.ofNullable(area);
    }
}
