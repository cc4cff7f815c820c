package plumbrow.advice.weedseason;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbrow.advice.gates.Ingredient;
import plumbrow.science.reference.Property;
import plumbrow.science.weedseason.Chemistry;

/** How the active ingredients of a product behave in soil, from the reference data. */
final class Chemistries {
    private static final double PA_PER_MILLIPASCAL = .001;

    private Chemistries() {}

    /** Empty where a property is unknown. Half-life: of the field, else of the laboratory. */
    static Optional<Chemistry> of(String active) {
        Ingredient known = Ingredient.of(active);
        Double days = known.number(Property.FIELD_HALF_LIFE);
        Double halfLife = days == null ? known.number(Property.SOIL_HALF_LIFE) : days;
        Double koc = known.number(Property.KOC);
        Double solubility = known.number(Property.WATER_SOLUBILITY);
        Double vapour = known.number(Property.VAPOUR_PRESSURE);
        boolean whole = Stream.of(Optional.ofNullable(halfLife), Optional.ofNullable(koc),
                        Optional.ofNullable(solubility), Optional.ofNullable(vapour))
                .allMatch(value -> value.isPresent() && value.get() > 0);
        return whole && halfLife != null && koc != null && solubility != null && vapour != null
                ? Optional.of(new Chemistry(halfLife, koc, solubility, vapour * PA_PER_MILLIPASCAL))
                : Optional.empty();
    }

    /** Of several together, that of the longest half-life. */
    static Optional<Chemistry> ofLongest(List<String> actives) {
        return actives.stream()
                .flatMap(active -> of(active).stream())
                .reduce((one, other) -> other.halfLifeDays() > one.halfLifeDays() ? other : one);
    }

    /** Site-of-action groups of an active ingredient; empty where unknown. */
    static List<String> groups(String active) {
        return Ingredient.of(active).groups();
    }
}
