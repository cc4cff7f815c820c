package plumbrow.advice.records;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Done;

/**
 * One application as it was really done: one field or part of it, one stretch of time, one tank with one product or several. Each
 * product is a line of the log, so that limits, comparison and waiting times count it once and by the same arithmetic.
 *
 * @param date day on which it began
 * @param start local time at which it began, {@code end} at which it ended; null where not written down
 * @param acres acres treated, more than 0
 * @param sharePct the same as a share of the field's acres, more than 0 up to 100 [%]
 * @param products one at least, each once
 * @param items what else was written down, as it is kept: numbers in plain digits, words of a list as in the list
 */
public record ApplicationRecord(
        String field,
        LocalDate date,
        @Nullable ZonedDateTime start,
        @Nullable ZonedDateTime end,
        double acres,
        double sharePct,
        List<RecordedProduct> products,
        Map<RecordItem, String> items) {
    /** Where a line of the log that belongs to a record stands. */
    public static final String SOURCE = "application record";

    public ApplicationRecord {
        products = List.copyOf(products);
        items = Map.copyOf(items);
        if (products.isEmpty()) {
            throw new IllegalArgumentException("an application puts out one product at least");
        }
        if (!(acres > 0) || !(sharePct > 0)) {
            throw new IllegalArgumentException("acres treated are more than 0, not " + acres);
        }
    }

    /** A record before its products: field, times, place and items. */
    public record Head(
            String field,
            LocalDate date,
            @Nullable ZonedDateTime start,
            @Nullable ZonedDateTime end,
            double acres,
            double sharePct,
            Map<RecordItem, String> items) {
        public ApplicationRecord with(List<RecordedProduct> products) {
            return new ApplicationRecord(field, date, start, end, acres, sharePct, products, items);
        }
    }

    /** What was written down of an item. */
    public Optional<String> item(RecordItem item) {
        return Optional.ofNullable(items.get(item));
    }

    /** The items in the order in which they are declared. */
    public Map<RecordItem, String> ordered() {
        return items.isEmpty() ? Map.of() : new EnumMap<>(items);
    }

    /** The items by key, in the order in which they are declared. */
    public Map<String, String> byKey() {
        return ordered().entrySet().stream()
                .collect(Collectors.toMap(
                        entry -> entry.getKey().key(), Map.Entry::getValue, (one, other) -> one, LinkedHashMap::new));
    }

    public Optional<ApplicatorRole> role() {
        return item(RecordItem.ROLE).flatMap(ApplicatorRole::of);
    }

    /** "Ironweir 4L + Stillmeadow K". */
    public String words() {
        return products.stream().map(RecordedProduct::product).collect(Collectors.joining(" + "));
    }

    /** The lines of the log that it is, one for each product, in order. */
    public List<Done> lines() {
        return products.stream()
                .map(one -> new Done(
                        field,
                        date,
                        one.product(),
                        one.rate(),
                        sharePct,
                        items.get(RecordItem.APPLICATOR),
                        SOURCE,
                        one.meant()))
                .toList();
    }
}
