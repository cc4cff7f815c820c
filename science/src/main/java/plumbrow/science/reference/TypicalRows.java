package plumbrow.science.reference;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads rows of typical values. */
final class TypicalRows {
    private static final List<String> CROPS = List.of("corn", "soybean", "wheat", "spring wheat", "all");
    private static final double MOST = 1e7;

    private TypicalRows() {}

    static Optional<Entry> read(Row row) {
        Optional<String> crop =
                row.as("crop", text -> Optional.of(text).filter(CROPS::contains), String.join(", ", CROPS));
        Optional<String> state = row.as(
                "state",
                text -> Optional.of(text).filter(code -> code.equals("all") || Counties.STATES.containsValue(code)),
                "a two-letter postal code, or all");
        String quantity = row.needed("quantity", "what it is a figure of");
        row.needed("likely", "a number");
        OptionalDouble low = row.number("low", -MOST, MOST, "a number");
        OptionalDouble likely = row.number("likely", -MOST, MOST, "a number");
        OptionalDouble high = row.number("high", -MOST, MOST, "a number");
        if (likely.isPresent()
                && (low.orElse(-MOST) > likely.getAsDouble() || high.orElse(MOST) < likely.getAsDouble())) {
            row.object("likely", "a number from low to high");
        }
        row.needed("unit", "the unit, 1 for a share");
        Optional<Backing> backing = row.backing();
        if (!row.sound() || crop.isEmpty() || state.isEmpty() || backing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TypicalValue(
                crop.get(),
                state.get(),
                quantity,
                low,
                likely.orElseThrow(),
                high,
                row.text("unit"),
                row.text("year"),
                row.text("conditions"),
                row.origin(),
                backing.get(),
                row.number()));
    }
}
