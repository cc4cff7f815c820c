package plumbrow.science.reference;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbrow.science.figure.Status;

/**
 * Typical values by crop and state, the nearest level that is kept: the state's own, else that for all states, else the middle of
 * the states that are kept, as wide as the widest two of them. Which it was is in the value's words.
 */
public final class TypicalValues {
    private TypicalValues() {}

    /** Read once, at the first question. */
    private static final class Read {
        static final List<TypicalValue> ALL = List.copyOf(ReferenceSet.TYPICAL.entries(TypicalValue.class));
        static final Map<String, List<TypicalValue>> BY_QUANTITY = byQuantity();

        private static Map<String, List<TypicalValue>> byQuantity() {
            Map<String, List<TypicalValue>> found = new HashMap<>();
            ALL.forEach(value -> found.computeIfAbsent(value.quantity(), first -> new ArrayList<>())
                    .add(value));
            return found;
        }
    }

    /** Every row. */
    public static List<TypicalValue> all() {
        return Read.ALL;
    }

    /** States that have rows of their own. */
    public static List<String> states() {
        return Read.ALL.stream()
                .filter(value -> value.quantity().equals("field yield CV"))
                .map(TypicalValue::state)
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * The value of a quantity; empty where no level of it is kept.
     *
     * @param crop "corn", "soybean" or "wheat"
     * @param state two-letter postal code; anything else, or nothing, asks for the wider levels
     */
    public static Optional<TypicalValue> find(String crop, String state, String quantity) {
        List<TypicalValue> ofCrop = Read.BY_QUANTITY.getOrDefault(quantity, List.of()).stream()
                .filter(value -> value.crop().equals(crop))
                .toList();
        List<TypicalValue> rows = ofCrop.isEmpty()
                ? Read.BY_QUANTITY.getOrDefault(quantity, List.of()).stream()
                        .filter(value -> value.crop().equals("all"))
                        .toList()
                : ofCrop;
        return latest(rows, state.strip().toUpperCase(Locale.ROOT))
                .or(() -> latest(rows, "all"))
                .or(() -> pooled(rows));
    }

    private static Optional<TypicalValue> latest(List<TypicalValue> rows, String state) {
        return rows.stream()
                .filter(value -> value.state().equals(state))
                .reduce((earlier, later) -> later.year().compareTo(earlier.year()) >= 0 ? later : earlier);
    }

    /** The middle of the states, from the lowest to the highest that any of them says. */
    private static Optional<TypicalValue> pooled(List<TypicalValue> all) {
        List<TypicalValue> rows = all.stream()
                .map(TypicalValue::state)
                .distinct()
                .flatMap(state -> latest(all, state).stream())
                .toList();
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        List<Double> likely =
                new ArrayList<>(rows.stream().map(TypicalValue::likely).toList());
        Collections.sort(likely);
        double low = rows.stream()
                .mapToDouble(value -> value.low().orElse(value.likely()))
                .min()
                .orElseThrow();
        double high = rows.stream()
                .mapToDouble(value -> value.high().orElse(value.likely()))
                .max()
                .orElseThrow();
        TypicalValue one = rows.get(0);
        int states = rows.size();
        return Optional.of(new TypicalValue(
                one.crop(),
                "all",
                one.quantity(),
                OptionalDouble.of(low),
                likely.get(likely.size() / 2),
                OptionalDouble.of(high),
                one.unit(),
                one.year(),
                one.conditions(),
                new Origin(
                        states == 1
                                ? one.state() + " alone, as no other state is kept; "
                                        + one.origin().source()
                                : "the middle of " + states + " states, as this one is not kept; "
                                        + one.origin().source(),
                        ""),
                new Backing(Status.COMPUTED, ""),
                one.row()));
    }
}
