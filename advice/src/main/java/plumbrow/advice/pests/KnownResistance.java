package plumbrow.advice.pests;

import org.jspecify.annotations.Nullable;

/**
 * A weed population of a field that a site of action no longer controls.
 *
 * @param group site-of-action group number, as "9" or "14"
 * @param sharePct share of the plants that resist it [%]; null where nobody counted, then all of them are taken to
 * @param source test, trial or who saw it
 */
public record KnownResistance(
        String field, String weed, String group, @Nullable Double sharePct, String source) {
    /** With nobody having counted. */
    public KnownResistance(String field, String weed, String group, String source) {
        this(field, weed, group, null, source);
    }
}
