package plumbrow.science.reference;

import java.util.Map;
import java.util.Optional;

/** The cells that every fact has: property, value, unit, conditions, source, url, status. */
final class FactCells {
    private FactCells() {}

    static Optional<Fact> read(Row row, Map<String, Measure> measures) {
        Optional<Measure> measure = row.as(
                "property",
                key -> Optional.ofNullable(measures.get(key)),
                "one of " + String.join(", ", measures.keySet()));
        Optional<Backing> backing = row.backing();
        if (measure.isEmpty()) {
            return Optional.empty();
        }
        Optional<? extends Value> value = value(row, measure.get());
        if (!row.sound() || value.isEmpty() || backing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Fact(
                measure.get(),
                value.get(),
                row.text("unit"),
                row.text("conditions"),
                row.origin(),
                backing.get(),
                row.number()));
    }

    private static Optional<? extends Value> value(Row row, Measure measure) {
        String unit = row.text("unit");
        if (!measure.units().contains(unit)) {
            row.object("unit", String.join(" or ", measure.units()) + " for " + measure.key());
            return Optional.empty();
        }
        if (measure.holdsCodes()) {
            return row.as("value", Code::read, "a code such as 5, 4A or M03");
        }
        Optional<Bound> bound =
                row.as("value", Bound::read, "a number, a range such as 2-10, or a number behind >, >=, < or <=");
        if (bound.isPresent() && !possible(measure, Property.inFirstUnit(measure, bound.get(), unit))) {
            row.object("value", "what is possible, " + measure.range());
        }
        return bound;
    }

    /** The printed ends lie in what is possible; an open end has no number to look at. */
    private static boolean possible(Measure measure, Bound value) {
        double upper = Double.isInfinite(value.high()) ? value.low() : value.high();
        double lower = value.limit() ? value.number() : value.low();
        return lower >= measure.least() && upper <= measure.most();
    }
}
