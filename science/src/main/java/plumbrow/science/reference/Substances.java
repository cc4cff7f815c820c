package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The active ingredients that values are kept of. A current label and safety sheet always override them. */
public final class Substances {
    private static final List<Substance> ALL = load();

    private Substances() {}

    /** All of them, in the order of the file: herbicides, insecticides, fungicides. */
    public static List<Substance> all() {
        return ALL;
    }

    /** By ISO common name, capitals ignored, or by CAS number; empty where nothing is kept. */
    public static Optional<Substance> find(String nameOrCas) {
        String asked = nameOrCas.strip();
        return ALL.stream()
                .filter(known ->
                        known.name().equalsIgnoreCase(asked) || known.cas().equals(asked))
                .findFirst();
    }

    /** Those whose name or CAS number holds a text; all of them for an empty one. */
    public static List<Substance> search(String text) {
        String asked = text.strip().toLowerCase(Locale.ROOT);
        return ALL.stream()
                .filter(known -> known.name().toLowerCase(Locale.ROOT).contains(asked)
                        || known.cas().startsWith(asked))
                .toList();
    }

    private static List<Substance> load() {
        Map<String, List<SubstanceFact>> byCas = new LinkedHashMap<>();
        ReferenceSet.SUBSTANCES
                .entries(SubstanceFact.class)
                .forEach(row -> byCas.computeIfAbsent(row.cas(), cas -> new ArrayList<>())
                        .add(row));
        return byCas.values().stream()
                .map(rows -> new Substance(
                        rows.get(0).name(),
                        rows.get(0).cas(),
                        rows.get(0).kind(),
                        rows.stream().map(SubstanceFact::fact).toList()))
                .toList();
    }
}
