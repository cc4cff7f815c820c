package plumbrow.science.reference;

import java.util.Optional;

/**
 * One value from one source.
 *
 * @param unit as it stands in the set: a unit, or the scheme of a code
 * @param conditions temperature, form, sex, duration, place, season; empty where none are given
 * @param row of the file, the header being 1
 */
public record Fact(
        Measure measure, Value value, String unit, String conditions, Origin origin, Backing backing, int row) {

    /** The number in the first unit of the measure; empty for a code. */
    public Optional<Bound> number() {
        return value instanceof Bound bound
                ? Optional.of(Property.inFirstUnit(measure, bound, unit))
                : Optional.empty();
    }

    String about() {
        return measure.key() + " [" + unit + "] " + (conditions.isEmpty() ? "(no conditions)" : conditions);
    }
}
