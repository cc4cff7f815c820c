package plumbrow.science.reference;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How active ingredients move in soil, from one selected half-life and Koc each: the federal SCS/ARS/CES table (Wauchope et
 * al. 1992). Half-lives vary fivefold between soils; the values of {@link Substances} show how far.
 */
public final class MovementTable {
    private static final List<Movement> ALL = ReferenceSet.MOVEMENT.entries(Movement.class);

    private MovementTable() {}

    public static List<Movement> all() {
        return ALL;
    }

    /** Every form of an active ingredient: of dicamba, "dicamba salt"; empty where nothing is kept. */
    public static List<Movement> forms(String name) {
        String asked = name.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(known -> {
                    String kept = known.name().toLowerCase(Locale.ROOT);
                    return kept.equals(asked) || kept.startsWith(asked + " ") || kept.startsWith(asked + "-");
                })
                .toList();
    }

    /** By name with its form, as "dicamba salt"; empty where nothing is kept. */
    public static Optional<Movement> find(String name) {
        return ALL.stream()
                .filter(known -> known.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }
}
