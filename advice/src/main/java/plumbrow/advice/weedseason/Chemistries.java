package plumbrow.advice.weedseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.gates.Ingredient;
import plumbrow.science.reference.Property;
import plumbrow.science.weedseason.Chemistry;

/**
 * How the active ingredients of a product behave in soil, from the reference data.
 *
 * A half-life that is unknown is taken as 20 days (common practice): the rating holds the curve at the day it was
 * seen on, so that it turns about that day. Where Koc, solubility or vapour pressure is unknown, loss as vapour is not counted.
 * Both are said.
 */
final class Chemistries {
    private static final double PA_PER_MILLIPASCAL = .001;
    private static final double STAND_IN_DAYS = 20;

    /** Any, together with no vapour at all. */
    private static final double ANY = 100;

    private static final double NO_VAPOUR_PA = 1e-12;

    private Chemistries() {}

    /**
     * Of an ingredient.
     *
     * @param says what is not known of it, in sentences
     */
    record Known(Chemistry chemistry, List<String> says) {
        Known {
            says = List.copyOf(says);
        }
    }

    static Known of(String active) {
        Ingredient known = Ingredient.of(active);
        List<String> says = new ArrayList<>();
        Double field = positive(known.number(Property.FIELD_HALF_LIFE));
        Double halfLife = field == null ? positive(known.number(Property.SOIL_HALF_LIFE)) : field;
        if (halfLife == null) {
            says.add("The half-life of " + active + " in soil is unknown: 20 days stand in for it.");
        }
        double days = halfLife == null ? STAND_IN_DAYS : halfLife;
        Double koc = positive(known.number(Property.KOC));
        Double solubility = positive(known.number(Property.WATER_SOLUBILITY));
        Double vapour = positive(known.number(Property.VAPOUR_PRESSURE));
        if (koc == null || solubility == null || vapour == null) {
            says.add("Vapour pressure, solubility or Koc of " + active
                    + " is unknown: what it loses as vapour is not counted.");
            return new Known(new Chemistry(days, ANY, ANY, NO_VAPOUR_PA), says);
        }
        return new Known(new Chemistry(days, koc, solubility, vapour * PA_PER_MILLIPASCAL), says);
    }

    /** Of several together, that of the longest half-life; of none the stand-ins. */
    static Known ofLongest(List<String> actives) {
        return actives.stream()
                .map(Chemistries::of)
                .max(Comparator.comparingDouble(one -> one.chemistry().halfLifeDays()))
                .orElseGet(() -> of("what is in it"));
    }

    /** Site-of-action groups of an active ingredient; empty where unknown. */
    static List<String> groups(String active) {
        return Ingredient.of(active).groups();
    }

    private static @Nullable Double positive(@Nullable Double number) {
        return number != null && number > 0 ? number : null;
    }
}
