package plumbrow.science.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads rows of the movement table. */
final class MovementRows {
    private static final List<String> RATINGS =
            List.of("Extremely Low", "Very Low", "Low", "Moderate", "High", "Very High");
    private static final List<String> CLASSES = List.of("extremely low", "low", "moderate", "high");

    private MovementRows() {}

    static Optional<Entry> read(Row row) {
        String name = row.needed("common_name", "the ISO common name, with its form");
        OptionalDouble halfLife = positive(row, "half_life_d", 10_000, "days");
        OptionalDouble solubility = positive(row, "solubility_mg_l", 5e6, "mg/L");
        OptionalDouble koc = positive(row, "koc_ml_g", 1e8, "mL/g");
        if (row.number("gus", -20, 20, "a score, -20 to 20").isEmpty()
                && row.text("gus").isEmpty()) {
            row.object("gus", "a score, -20 to 20");
        }
        row.as("movement_rating", text -> Optional.of(text).filter(RATINGS::contains), String.join(", ", RATINGS));
        row.as("four_class", text -> Optional.of(text).filter(CLASSES::contains), String.join(", ", CLASSES));
        Optional<Backing> backing = row.backing();
        if (!row.sound() || halfLife.isEmpty() || solubility.isEmpty() || koc.isEmpty()) {
            return Optional.empty();
        }
        return backing.map(status -> new Movement(
                name,
                halfLife.getAsDouble(),
                solubility.getAsDouble(),
                koc.getAsDouble(),
                row.text("gus"),
                row.text("movement_rating"),
                row.text("four_class"),
                row.origin(),
                status,
                row.number()));
    }

    private static OptionalDouble positive(Row row, String column, double most, String unit) {
        String expected = "a number of " + unit + " above 0";
        if (row.text(column).isEmpty()) {
            row.object(column, expected);
        }
        return row.number(column, Double.MIN_VALUE, most, expected);
    }
}
