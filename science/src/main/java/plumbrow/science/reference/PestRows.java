package plumbrow.science.reference;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads rows of weeds and insects. */
final class PestRows {
    private static final List<String> CROPS = List.of("corn", "soybean", "wheat", "sweet corn", "sunflower", "any");

    private PestRows() {}

    static Optional<Entry> read(Row row, String pestColumn, Map<String, Measure> measures) {
        String pest = row.needed(pestColumn, "the common name");
        Optional<String> crop =
                row.as("crop", text -> Optional.of(text).filter(CROPS::contains), String.join(", ", CROPS));
        Optional<Fact> fact = FactCells.read(row, measures);
        return row.sound() && crop.isPresent()
                ? fact.map(value -> new PestFact(pest, crop.get(), value))
                : Optional.empty();
    }
}
