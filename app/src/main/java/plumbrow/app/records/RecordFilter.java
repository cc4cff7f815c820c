package plumbrow.app.records;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.Field;
import plumbrow.advice.names.Near;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;

/**
 * Which records are asked for. Blank is any.
 *
 * @param from first day, {@code to} the last; null for no such day
 */
public record RecordFilter(
        String field,
        String applicator,
        String product,
        @Nullable LocalDate from,
        @Nullable LocalDate to) {
    /** All. */
    public static final RecordFilter ANY = new RecordFilter("", "", "", null, null);

    /**
     * Reads what was asked for under field, applicator, product, from and to.
     *
     * @param season whose names may be asked for although no record has them
     * @throws IllegalArgumentException with a sentence, where a day is none or nobody knows a name
     */
    public static RecordFilter of(Map<String, String> asked, List<KeptRecord> records, Optional<Season> season) {
        RecordFilter filter = new RecordFilter(
                asked.getOrDefault("field", "").strip(),
                asked.getOrDefault("applicator", "").strip(),
                asked.getOrDefault("product", "").strip(),
                day(asked, "from"),
                day(asked, "to"));
        Set<String> fields = fields(records);
        Set<String> applicators = applicators(records);
        Set<String> products = products(records);
        season.ifPresent(one -> {
            one.fields().stream().map(Field::name).forEach(fields::add);
            one.work().crew().people().stream().map(Person::name).forEach(applicators::add);
            one.shelf().products().stream().map(Product::name).forEach(products::add);
        });
        known("field", filter.field(), fields);
        known("applicator", filter.applicator(), applicators);
        known("product", filter.product(), products);
        if (filter.from() != null && filter.to() != null && filter.to().isBefore(filter.from())) {
            throw new IllegalArgumentException(
                    "The last day, " + filter.to() + ", lies before the first, " + filter.from() + ".");
        }
        return filter;
    }

    public static Set<String> fields(List<KeptRecord> records) {
        return records.stream().map(one -> one.record().field()).collect(Collectors.toCollection(TreeSet::new));
    }

    public static Set<String> applicators(List<KeptRecord> records) {
        return records.stream()
                .flatMap(one -> one.record().item(RecordItem.APPLICATOR).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    public static Set<String> products(List<KeptRecord> records) {
        return records.stream()
                .flatMap(one -> one.record().products().stream())
                .map(RecordedProduct::product)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void known(String what, String name, Set<String> names) {
        if (!name.isEmpty() && names.stream().noneMatch(name::equalsIgnoreCase)) {
            String near = Near.suggested(name, names);
            throw new IllegalArgumentException("Neither a record nor the season has the " + what + " '" + name + "'"
                    + (near.isEmpty() ? "." : near));
        }
    }

    private static @Nullable LocalDate day(Map<String, String> asked, String key) {
        String text = asked.getOrDefault(key, "").strip();
        try {
            return text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeException wrong) {
            throw new IllegalArgumentException(
                    "Found “" + text + "” under " + key + "; expected a date such as 2026-05-04.");
        }
    }

    /** The records asked for, those that no longer count among them. */
    public List<KeptRecord> in(List<KeptRecord> records) {
        return records.stream().filter(this::holds).toList();
    }

    private boolean holds(KeptRecord kept) {
        LocalDate day = kept.record().date();
        return (field.isEmpty() || kept.record().field().equalsIgnoreCase(field))
                && (applicator.isEmpty()
                        || kept.record()
                                .item(RecordItem.APPLICATOR)
                                .filter(applicator::equalsIgnoreCase)
                                .isPresent())
                && (product.isEmpty()
                        || kept.record().products().stream()
                                .anyMatch(one -> one.product().equalsIgnoreCase(product)))
                && (from == null || !day.isBefore(from))
                && (to == null || !day.isAfter(to));
    }

    /** "field South Slough, from 2026-05-01", or "all records". */
    public String words() {
        String words = (field.isEmpty() ? "" : ", field " + field)
                + (applicator.isEmpty() ? "" : ", applicator " + applicator)
                + (product.isEmpty() ? "" : ", product " + product)
                + (from == null ? "" : ", from " + from)
                + (to == null ? "" : ", to " + to);
        return words.isEmpty() ? "all records" : words.substring(2);
    }

    /** The same by key, without what is blank. */
    public Map<String, String> asked() {
        Map<String, String> asked = new LinkedHashMap<>();
        asked.put("field", field);
        asked.put("applicator", applicator);
        asked.put("product", product);
        asked.put("from", from == null ? "" : from.toString());
        asked.put("to", to == null ? "" : to.toString());
        asked.values().removeIf(String::isEmpty);
        return asked;
    }
}
