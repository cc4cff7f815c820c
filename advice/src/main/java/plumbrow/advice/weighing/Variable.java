package plumbrow.advice.weighing;

import java.util.Set;
import plumbrow.advice.outlook.Law;

/**
 * An uncertain input before it is drawn.
 *
 * @param id its name within the field, which a person can change it by
 * @param stream the name its draws come from: the same on every field that shares the quantity
 */
record Variable(String id, String label, String unit, Law law, String source, String stream) {
    private static final Set<String> BY_YEAR = Set.of("price", "yield", "handling", "delay loss");

    /** Whether another year brings another value; else it is a property of the field, the product or the seed. */
    boolean byYear() {
        return BY_YEAR.contains(id)
                || id.startsWith("pressure: ")
                || id.startsWith("injury: ")
                || id.startsWith("control: ");
    }
}
