package plumbrow.advice.gates;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.science.reference.Bound;
import plumbrow.science.reference.Choice;
import plumbrow.science.reference.Property;
import plumbrow.science.reference.Substance;

/**
 * What the reference data say of an active ingredient, one chosen value for each property. What is not in it is unknown,
 * never harmless.
 *
 * @param groups sites of action, by group number of its own scheme; empty where unknown
 */
public record Ingredient(String name, List<String> groups, Map<Property, Bound> values) {
    /** Choosing is slow and its answer never changes; only what is in the data is kept. */
    private static final Map<String, Ingredient> KNOWN = new ConcurrentHashMap<>();

    /** Groups of labels from before the numbers of 2020, and what they are now (weeds reference 7.1, from memory). */
    private static final Map<String, String> RENUMBERED = Map.of("7", "5", "8", "15", "16", "15");

    public Ingredient {
        groups = List.copyOf(groups);
        values = Map.copyOf(values);
    }

    public static Ingredient of(String name) {
        Ingredient known = KNOWN.get(name);
        return known != null
                ? known
                : ActiveName.known(name)
                        .map(substance -> KNOWN.computeIfAbsent(name, asked -> read(asked, substance)))
                        .orElseGet(() -> new Ingredient(name, List.of(), Map.of()));
    }

    /** Whether the reference data know it as an insecticide. */
    static boolean isInsecticide(String name) {
        return ActiveName.known(name)
                .map(Substance::kind)
                .filter("insecticide"::equals)
                .isPresent();
    }

    private static Ingredient read(String name, Substance substance) {
        Map<Property, Bound> values = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            substance
                    .choose(property)
                    .map(Choice::fact)
                    .flatMap(fact -> fact.number())
                    .ifPresent(number -> values.put(property, number));
        }
        List<String> groups = substance.choose(Property.GROUP_NUMBER).stream()
                .map(choice -> choice.fact().value().printed())
                .map(group -> substance.kind().equals("herbicide") ? sameSite(group) : group)
                .toList();
        return new Ingredient(name, groups, values);
    }

    /** The number that a group of action has today. */
    public static String sameSite(String group) {
        return RENUMBERED.getOrDefault(group.strip(), group.strip());
    }

    public Optional<Bound> bound(Property property) {
        return Optional.ofNullable(values.get(property));
    }

    /** The number of a property in its first unit; of a limit test the limit. Null is unknown. */
    public @Nullable Double number(Property property) {
        Bound bound = values.get(property);
        return bound == null ? null : bound.number();
    }
}
