package plumbrow.app.log;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.Field;
import plumbrow.advice.names.Near;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.text.TextRule;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;

/**
 * A line of the log as it was typed. The words are those of the workbook's sheet {@code log}.
 *
 * @param typed by the name of the column
 * @param faults what keeps it from being written down, by the name of the column
 * @param done what was put on; null where there is a fault
 */
public record LogEntry(
        Map<String, String> typed,
        Map<String, String> faults,
        @Nullable Done done) {
    public static final String FIELD = "field";
    public static final String DATE = "date";
    public static final String PRODUCT = "product";
    public static final String RATE = "rate";
    public static final String UNIT = "rate_unit";
    public static final String SHARE = "share_pct";
    public static final String APPLICATOR = "applicator";
    public static final String SOURCE = "source";

    private static final NumberKind AMOUNT = NumberKind.atLeast(0).upTo(1_000_000);
    private static final NumberKind PERCENT = NumberKind.above(0).upTo(100);

    /** Nothing typed yet, and nothing to complain of. */
    public static LogEntry blank(String field) {
        return new LogEntry(Map.of(FIELD, field, SHARE, "100"), Map.of(), null);
    }

    /**
     * Reads what was typed.
     *
     * @param season whose fields and shelf it must name
     * @param today a later day is not done yet
     */
    public static LogEntry read(Season season, Map<String, String> typed, LocalDate today) {
        Reader reader = new Reader(typed);
        String field =
                reader.named(FIELD, season.fields().stream().map(Field::name).toList(), "a field of the season");
        String product = reader.named(
                PRODUCT, season.shelf().products().stream().map(Product::name).toList(), "a product of the shelf");
        LocalDate date = reader.read(DATE, new DateKind());
        if (date != null && date.isAfter(today)) {
            reader.fault(DATE, "a day that is past: the log holds what was done");
        }
        Double rate = reader.read(RATE, AMOUNT);
        if (rate != null && rate == 0 && field != null && product != null && !waits(season, field, product)) {
            reader.fault(
                    RATE,
                    "more than 0: no pass of " + field + " that puts out " + product
                            + " waits for scouting. 0 says that too few were counted for it");
        }
        RateUnit unit = reader.read(UNIT, new RateUnitKind());
        season.shelf().products().stream()
                .filter(one -> one.name().equals(product))
                .findFirst()
                .filter(one -> unit != null && !fits(one, unit))
                .ifPresent(one -> reader.fault(
                        UNIT,
                        one.pricedPer().dimension().words() + ", since " + one.name() + " is priced per "
                                + one.pricedPer().symbol()));
        Double share = typed.getOrDefault(SHARE, "").isBlank() ? Double.valueOf(100) : reader.read(SHARE, PERCENT);
        String applicator = reader.maybe(APPLICATOR, TextRule.NAME);
        List<String> people =
                season.work().crew().people().stream().map(Person::name).toList();
        if (!applicator.isEmpty() && !people.contains(applicator)) {
            Near.to(applicator, people, 1)
                    .ifPresent(near -> reader.fault(APPLICATOR, near + ", as the sheet people spells it"));
        }
        String planned = reader.found(PassEntry.PLANNED).orElse("");
        MeantPass meant = null;
        if (!planned.isEmpty() && field != null && product != null) {
            meant = PassEntry.meant(season, field, product, planned).orElse(null);
            if (meant == null) {
                reader.fault(PassEntry.PLANNED, PassEntry.expected(season, field, product, planned));
            }
        }
        String source = reader.text(SOURCE, TextRule.PROSE, "the source: log book, receipt, memory");
        Amount amount = rate == null || unit == null ? null : unit.rate(rate);
        boolean whole = reader.faults.isEmpty();
        return new LogEntry(
                Map.copyOf(typed),
                Map.copyOf(reader.faults),
                whole
                                && field != null
                                && date != null
                                && product != null
                                && amount != null
                                && share != null
                                && source != null
                        ? new Done(
                                field,
                                date,
                                product,
                                amount,
                                share,
                                applicator.isEmpty() ? null : applicator,
                                source,
                                meant)
                        : null);
    }

    /** What was typed in a box. */
    public String text(String column) {
        return typed.getOrDefault(column, "");
    }

    public String fault(String column) {
        return faults.getOrDefault(column, "");
    }

    /** All faults in one sentence. */
    public String complaint() {
        return faults.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(one -> one.getKey() + ": " + one.getValue())
                .collect(Collectors.joining(" "));
    }

    /** Whether a pass of a field that puts out a product is made only where scouting counts enough. */
    private static boolean waits(Season season, String field, String product) {
        return season.programs(field).stream()
                .flatMap(program -> program.passes().stream())
                .anyMatch(pass -> pass.trigger() != null && product.equals(pass.product()));
    }

    /** Seed may be counted or weighed; anything else goes in the kind of unit it is priced in. */
    private static boolean fits(Product product, RateUnit unit) {
        return product.kind() == ProductKind.SEED
                || product.pricedPer().dimension() == unit.unit().dimension();
    }

    /** Reads box by box and keeps what is wrong. */
    private static final class Reader {
        private final Map<String, String> typed;
        private final Map<String, String> faults = new LinkedHashMap<>();

        private Reader(Map<String, String> typed) {
            this.typed = typed;
        }

        private Optional<String> found(String column) {
            return Optional.of(typed.getOrDefault(column, "").strip()).filter(text -> !text.isEmpty());
        }

        private void fault(String column, String expected) {
            faults.putIfAbsent(
                    column,
                    found(column).map(text -> "Found “" + text + "”; expected ").orElse("Nothing there; expected ")
                            + expected
                            + (expected.endsWith("?") ? "" : "."));
        }

        private <T> @Nullable T read(String column, Kind<T> kind) {
            try {
                if (found(column).isPresent()) {
                    return kind.read(new Cell.Written(found(column).orElseThrow()));
                }
                fault(column, kind.words());
            } catch (Misread wrong) {
                fault(column, wrong.expected());
            }
            return null;
        }

        private @Nullable String named(String column, List<String> names, String what) {
            String name = found(column).orElse("");
            if (!names.contains(name)) {
                fault(column, what + Near.suggested(name, names));
                return null;
            }
            return name;
        }

        private @Nullable String text(String column, TextRule rule, String what) {
            if (found(column).isEmpty()) {
                fault(column, what);
                return null;
            }
            return maybe(column, rule);
        }

        /** Words by the rule of the workbook's column; empty where nothing stands there. */
        private String maybe(String column, TextRule rule) {
            String text = found(column).orElse("");
            rule.objection(text).ifPresent(expected -> fault(column, expected));
            return text;
        }
    }
}
