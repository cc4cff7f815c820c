package plumbrow.science.reference;

import java.util.List;
import java.util.Optional;

/**
 * One active ingredient and every value that is kept of it. Never a formulated product: hazard class, signal word, re-entry
 * and harvest intervals come from the product's own label and safety sheet.
 *
 * @param name ISO common name
 * @param kind herbicide, insecticide or fungicide
 */
public record Substance(String name, String cas, String kind, List<Fact> facts) {

    /** Every value of one property; empty where it is unknown. */
    public List<Fact> values(Property property) {
        return facts.stream()
                .filter(fact -> fact.measure().equals(property.measure()))
                .toList();
    }

    /** The value to work with, with the spread of all; empty where it is unknown: neither zero nor safe. */
    public Optional<Choice> choose(Property property) {
        return choose(property, "");
    }

    /**
     * The same for one chemical form.
     *
     * @param form a word of its name, such as "acid" or "isopropylamine"
     */
    public Optional<Choice> choose(Property property, String form) {
        return Choosing.of(property, form, values(property));
    }
}
