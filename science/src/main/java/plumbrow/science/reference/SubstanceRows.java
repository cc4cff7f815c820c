package plumbrow.science.reference;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.science.safety.CasCheck;

/** Reads rows of active ingredients. */
final class SubstanceRows {
    static final String CAS = "a CAS number whose check digit fits, such as 1912-24-9";
    private static final List<String> KINDS = List.of("herbicide", "insecticide", "fungicide");
    private static final Map<String, Measure> MEASURES = measures();

    private SubstanceRows() {}

    static Optional<Entry> read(Row row) {
        String name = row.needed("common_name", "the ISO common name");
        Optional<String> cas = row.as("cas", text -> Optional.of(text).filter(CasCheck::fits), CAS);
        Optional<String> kind =
                row.as("class", text -> Optional.of(text).filter(KINDS::contains), String.join(", ", KINDS));
        Optional<Fact> fact = FactCells.read(row, MEASURES);
        if (!row.sound() || cas.isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        return fact.map(value -> new SubstanceFact(name, cas.get(), kind.get(), value));
    }

    private static Map<String, Measure> measures() {
        Map<String, Measure> measures = new LinkedHashMap<>();
        Arrays.stream(Property.values())
                .map(Property::measure)
                .forEach(measure -> measures.put(measure.key(), measure));
        return measures;
    }
}
