package plumbrow.app.records;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.names.Near;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.Pass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.Corners;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordQuestion;
import plumbrow.advice.records.RecordQuestions;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.tank.MixCare;
import plumbrow.advice.text.TextRule;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.weather.Decided;
import plumbrow.app.weather.Zones;
import plumbrow.documents.workbook.form.Cell;
import plumbrow.documents.workbook.form.DateKind;
import plumbrow.documents.workbook.form.Kind;
import plumbrow.documents.workbook.form.Misread;
import plumbrow.documents.workbook.form.NumberKind;
import plumbrow.documents.workbook.form.RateUnit;
import plumbrow.documents.workbook.form.RateUnitKind;
import plumbrow.documents.workbook.form.UnitKind;
import plumbrow.science.figure.Numbers;

/**
 * An application record as it was typed or came from a file: the one door for desk, command, other programs and machine files. The keys
 * are {@value #FIELD}, {@value #DATE}, {@value #START}, {@value #END} (both "14:10"), {@value #END_DATE}, {@value #ZONE}, {@value #ACRES},
 * for each product {@code product_1}, {@code rate_1}, {@code rate_unit_1}, {@code total_1}, {@code total_unit_1}, {@code registration_1},
 * {@code restricted_1}, and the keys of {@link RecordItem}; {@value #PROGRAM} and {@value #PASS} say which planned trip it was.
 *
 * @param typed by key
 * @param faults what keeps it from being kept, by key
 * @param questions what is asked back and not answered yet
 * @param answered what was asked back and is so
 * @param record what was done; null where there is a fault
 */
public record RecordEntry(
        Map<String, String> typed,
        Map<String, String> faults,
        List<RecordQuestion> questions,
        List<RecordQuestion> answered,
        @Nullable ApplicationRecord record) {
    public static final String FIELD = "field";
    public static final String DATE = "date";
    public static final String START = "start";
    public static final String END = "end";
    public static final String END_DATE = "end_date";
    public static final String ZONE = "zone";
    public static final String ACRES = "acres";
    public static final String PROGRAM = "program";
    public static final String PASS = "pass";
    public static final String PRODUCT = "product_";
    public static final String RATE = "rate_";
    public static final String RATE_UNIT = "rate_unit_";
    public static final String TOTAL = "total_";
    public static final String TOTAL_UNIT = "total_unit_";
    public static final String REGISTRATION = "registration_";
    public static final String RESTRICTED = "restricted_";

    /** Keys of what was asked back and is so, parted by commas or blanks; {@value #ALL} answers all. */
    public static final String SURE = "sure";

    public static final String ALL = "all";

    /** What is otherwise than on the load card. */
    public static final String CARD = "card";

    /** Most products in one tank. */
    public static final int MOST_PRODUCTS = 12;

    private static final NumberKind AMOUNT = NumberKind.above(0).upTo(10_000_000);
    private static final NumberKind AREA = NumberKind.above(0).upTo(100_000);

    /** More than the field has is asked back; beyond this the field on file is wrong [share of its acres]. */
    private static final double FAR_TOO_MANY = 1.1;

    public RecordEntry {
        typed = Map.copyOf(typed);
        faults = new LinkedHashMap<>(faults);
        questions = List.copyOf(questions);
        answered = List.copyOf(answered);
    }

    /** Nothing to complain of yet: what stands in the boxes before anybody has typed. */
    public static RecordEntry begun(Map<String, String> typed) {
        return new RecordEntry(typed, Map.of(), List.of(), List.of(), null);
    }

    /** Whether it may be kept: no fault, and nothing is asked back that was not answered. */
    public boolean ready() {
        return record != null && questions.isEmpty();
    }

    /** What was typed in a box. */
    public String text(String key) {
        return typed.getOrDefault(key, "");
    }

    public String fault(String key) {
        return faults.getOrDefault(key, "");
    }

    /** All faults, or all that is asked back, in one text; empty where it may be kept. */
    public String complaint() {
        return faults.isEmpty()
                ? questions.stream()
                        .map(question -> question.says() + " [" + question.key() + "]")
                        .collect(Collectors.joining(" "))
                : faults.entrySet().stream()
                        .map(one -> one.getKey() + ": " + one.getValue())
                        .collect(Collectors.joining(" "));
    }

    /**
     * Reads what was typed.
     *
     * @param season whose fields and shelf it must name
     * @param wrong lines of the log of the record that this one corrects; empty where it corrects none
     * @param now what is later is not done yet
     */
    public static RecordEntry read(Season season, Map<String, String> typed, List<Done> wrong, Instant now) {
        return new Reading(season, typed, now).entry(wrong);
    }

    /** Reads box by box and keeps what is wrong. */
    private static final class Reading {
        private static final Pattern NUMBERED = Pattern.compile("([a-z_]+_)(\\d{1,3})");
        private static final Set<String> OF_PRODUCT =
                Set.of(PRODUCT, RATE, RATE_UNIT, TOTAL, TOTAL_UNIT, REGISTRATION, RESTRICTED);
        private static final Set<String> PLAIN = Set.of(
                FIELD, DATE, START, END, END_DATE, ZONE, ACRES, PROGRAM, PASS, SURE, "who", "why", "_csrf", "token");

        private final Season season;
        private final Map<String, String> typed;
        private final Instant now;
        private final Map<String, String> faults = new LinkedHashMap<>();

        private Reading(Season season, Map<String, String> typed, Instant now) {
            this.season = season;
            this.typed = typed;
            this.now = now;
        }

        private RecordEntry entry(List<Done> wrong) {
            unknownKeys();
            String name = named(FIELD, season.fields().stream().map(Field::name).toList(), "a field of the season");
            Field field = name == null ? null : season.field(name).orElse(null);
            Optional<ZoneId> zone = field == null ? Optional.empty() : zone(field);
            LocalDate date = read(DATE, new DateKind());
            ZonedDateTime start = moment(START, date, zone, false);
            LocalDate endDate = found(END_DATE).isEmpty() ? date : read(END_DATE, new DateKind());
            ZonedDateTime end = moment(END, endDate, zone, true);
            times(date, start, end, zone);
            Double acres = read(ACRES, AREA);
            if (acres != null && field != null && acres > field.acres() * FAR_TOO_MANY) {
                fault(
                        ACRES,
                        "no more than the " + Numbers.read(field.acres()) + " ac of " + field.name()
                                + "; where that is wrong, change the field first");
            }
            Map<RecordItem, String> items = items();
            List<String> otherwise = otherwise(field, date);
            List<RecordedProduct> products = products(field, acres);
            if (!faults.isEmpty() || field == null || date == null || acres == null || products.isEmpty()) {
                return new RecordEntry(typed, faults, List.of(), List.of(), null);
            }
            String said = items.getOrDefault(RecordItem.DEVIATIONS, "");
            List<String> untold =
                    otherwise.stream().filter(one -> !said.contains(one)).toList();
            if (!untold.isEmpty()) {
                items.put(RecordItem.DEVIATIONS, shortened((String.join(" ", untold) + " " + said).strip()));
            }
            ApplicationRecord record = new ApplicationRecord(
                    field.name(), date, start, end, acres, Math.min(100, 100 * acres / field.acres()), products, items);
            Set<String> sure =
                    Arrays.stream(typed.getOrDefault(SURE, "").split("[\\s,]+")).collect(Collectors.toSet());
            List<RecordQuestion> all = new ArrayList<>(RecordQuestions.of(season, field, record, wrong));
            if (!untold.isEmpty() && said.isEmpty()) {
                all.add(new RecordQuestion(
                        CARD,
                        "Otherwise than the load card: " + String.join(" ", untold)
                                + " Say why, if there was a reason."));
            }
            Predicate<RecordQuestion> answered = one -> sure.contains(ALL) || sure.contains(one.key());
            return new RecordEntry(
                    typed,
                    faults,
                    all.stream().filter(answered.negate()).toList(),
                    all.stream().filter(answered).toList(),
                    record);
        }

        /** What is typed otherwise than on the load card of the trip it was, where one was named. */
        private List<String> otherwise(@Nullable Field field, @Nullable LocalDate date) {
            Optional<String> program = found(PROGRAM);
            if (field == null || date == null || program.isEmpty()) {
                return List.of();
            }
            try {
                SprayTrip trip = Decided.trip(
                        season,
                        field,
                        List.of(),
                        program.get(),
                        Decided.passNumber(found(PASS).orElse(null)),
                        false);
                LoadCard card = LoadCards.of(season, trip, null);
                return RecordStart.otherwise(RecordStart.of(season, trip, card, date), typed);
            } catch (IllegalArgumentException none) {
                fault(PASS, "a pass of the program that puts something on");
                return List.of();
            }
        }

        private static String shortened(String text) {
            return text.length() <= TextRule.PROSE.longest()
                    ? text
                    : text.substring(0, TextRule.PROSE.longest() - 1) + "…";
        }

        private void unknownKeys() {
            for (String key : typed.keySet()) {
                Matcher numbered = NUMBERED.matcher(key);
                boolean known = PLAIN.contains(key)
                        || RecordItem.of(key).isPresent()
                        || (numbered.matches() && OF_PRODUCT.contains(numbered.group(1)));
                if (!known && !typed.getOrDefault(key, "").isBlank()) {
                    faults.putIfAbsent(
                            key,
                            sentence("Found “"
                                    + short40(typed.getOrDefault(key, "").strip())
                                    + "” here, and a record has nothing called “" + short40(key) + "”"
                                    + Near.suggested(key, keys())));
                }
            }
        }

        private static List<String> keys() {
            List<String> keys = new ArrayList<>(PLAIN);
            Arrays.stream(RecordItem.values()).map(RecordItem::key).forEach(keys::add);
            OF_PRODUCT.forEach(key -> keys.add(key + 1));
            return keys;
        }

        private Optional<ZoneId> zone(Field field) {
            try {
                return Optional.of(
                        found(ZONE).isPresent()
                                ? Zones.named(found(ZONE).orElseThrow())
                                : Zones.of(season, field.name()));
            } catch (IllegalArgumentException unknown) {
                if (found(ZONE).isPresent()) {
                    fault(ZONE, "the clock there, such as America/Chicago or America/New_York");
                }
                return Optional.empty();
            }
        }

        /** A time of a day by the clock of the field. Where the clock is set back, an end is the later of the two. */
        private @Nullable ZonedDateTime moment(
                String key, @Nullable LocalDate day, Optional<ZoneId> zone, boolean later) {
            Optional<String> text = found(key);
            if (text.isEmpty()) {
                return null;
            }
            LocalTime time;
            try {
                time = LocalTime.parse(text.get().length() == 4 ? "0" + text.get() : text.get());
            } catch (DateTimeException wrong) {
                fault(key, "a time of day in 24 hours, such as 06:40 or 14:10");
                return null;
            }
            if (zone.isEmpty()) {
                fault(
                        ZONE,
                        "the clock there, such as America/Chicago or America/New_York, since the state has several");
                return null;
            }
            if (day == null) {
                return null;
            }
            ZonedDateTime moment = day.atTime(time).atZone(zone.get());
            if (!moment.toLocalTime().equals(time)) {
                fault(key, "a time that the clock shows that day; it is set forward over this one");
                return null;
            }
            return later ? moment.withLaterOffsetAtOverlap() : moment.withEarlierOffsetAtOverlap();
        }

        private void times(
                @Nullable LocalDate date,
                @Nullable ZonedDateTime start,
                @Nullable ZonedDateTime end,
                Optional<ZoneId> zone) {
            ZoneId clock = zone.orElse(ZoneId.systemDefault());
            if (date != null && date.isAfter(now.atZone(clock).toLocalDate())) {
                fault(DATE, "a day that is past: a record holds what was done");
            }
            if (end != null && end.toInstant().isAfter(now)) {
                fault(END, "a time that is past: write it down when the job has ended");
            } else if (start != null && start.toInstant().isAfter(now)) {
                fault(START, "a time that is past: a record holds what was done");
            }
            if (start != null && end != null && !end.isAfter(start)) {
                fault(END, "a time after the start; where it went on past midnight, give the day of the end too");
            }
        }

        private Map<RecordItem, String> items() {
            Map<RecordItem, String> items = new EnumMap<>(RecordItem.class);
            for (RecordItem item : RecordItem.values()) {
                found(item.key()).flatMap(text -> item(item, text)).ifPresent(said -> items.put(item, said));
            }
            return items;
        }

        private Optional<String> item(RecordItem item, String text) {
            RecordItem.Form form = item.form();
            return switch (form.kind()) {
                case NAME -> words(item, text, TextRule.NAME);
                case PROSE -> words(item, text, TextRule.PROSE);
                case STATE -> {
                    String state = text.toUpperCase(Locale.ROOT);
                    if (!state.matches("[A-Z]{2}")) {
                        fault(item.key(), "two letters, such as IA");
                        yield Optional.empty();
                    }
                    yield Optional.of(state);
                }
                case WORD -> {
                    Optional<String> word = form.words().stream()
                            .filter(one -> one.equalsIgnoreCase(text))
                            .findFirst();
                    if (word.isEmpty()) {
                        fault(item.key(), "one of " + String.join(", ", form.words()));
                    }
                    yield word;
                }
                case NUMBER -> {
                    Double number = read(item.key(), NumberKind.between(form.least(), form.most()));
                    yield Optional.ofNullable(number).map(RecordItem::digits);
                }
                case CORNERS -> {
                    String corners = text.replaceAll("\\s*\\R\\s*", "; ");
                    if (Corners.boundary(corners).isEmpty()) {
                        fault(item.key(), Corners.WORDS);
                        yield Optional.empty();
                    }
                    yield Optional.of(corners);
                }
            };
        }

        private Optional<String> words(RecordItem item, String text, TextRule rule) {
            Optional<String> objection = rule.objection(text);
            objection.ifPresent(expected -> fault(item.key(), expected));
            return objection.isPresent() ? Optional.empty() : Optional.of(text);
        }

        private List<RecordedProduct> products(@Nullable Field field, @Nullable Double acres) {
            List<RecordedProduct> products = new ArrayList<>();
            Set<String> names = new HashSet<>();
            boolean any = false;
            for (int i = 1; i <= MOST_PRODUCTS; i++) {
                int number = i;
                boolean some = OF_PRODUCT.stream()
                        .filter(key -> !key.equals(RATE_UNIT) && !key.equals(TOTAL_UNIT) && !key.equals(RESTRICTED))
                        .anyMatch(key -> found(key + number).isPresent());
                if (!some) {
                    continue;
                }
                any = true;
                RecordedProduct one = product(field, acres, i);
                if (one != null && !names.add(one.product())) {
                    fault(PRODUCT + i, "each product once; where rates differ make a record for each part");
                }
                if (one != null) {
                    products.add(one);
                }
            }
            boolean tooMany = typed.entrySet().stream()
                    .filter(entry -> !entry.getValue().isBlank())
                    .map(entry -> NUMBERED.matcher(entry.getKey()))
                    .anyMatch(key -> key.matches()
                            && OF_PRODUCT.contains(key.group(1))
                            && (Integer.parseInt(key.group(2)) > MOST_PRODUCTS || Integer.parseInt(key.group(2)) < 1));
            if (tooMany) {
                faults.putIfAbsent(PRODUCT + MOST_PRODUCTS, "A record has products 1 to " + MOST_PRODUCTS + ".");
            } else if (!any) {
                fault(PRODUCT + 1, "what was put on, a product of the shelf");
            }
            return products;
        }

        private @Nullable RecordedProduct product(@Nullable Field field, @Nullable Double acres, int i) {
            int before = faults.size();
            List<String> shelf = season.shelf().products().stream()
                    .filter(one -> one.kind() != ProductKind.SEED)
                    .map(Product::name)
                    .toList();
            String name = named(PRODUCT + i, shelf, "a product of the shelf");
            Product product = name == null ? null : season.shelf().product(name).orElse(null);
            RateUnit unit = found(RATE + i).isEmpty() && found(RATE_UNIT + i).isEmpty()
                    ? null
                    : read(RATE_UNIT + i, new RateUnitKind());
            Double rate = found(RATE + i).isEmpty() && found(TOTAL + i).isPresent() ? null : read(RATE + i, AMOUNT);
            Amount perAcre = rate == null || unit == null ? null : unit.rate(rate);
            if (product == null || field == null || acres == null) {
                return null;
            }
            if (unit != null && unit.unit().dimension() != product.pricedPer().dimension()) {
                fault(
                        RATE_UNIT + i,
                        product.pricedPer().dimension().words() + ", since " + product.name() + " is priced per "
                                + product.pricedPer().symbol());
            }
            Amount total = total(product, perAcre, acres, i);
            if (perAcre == null && total != null && found(RATE + i).isEmpty()) {
                FarmUnit as = unit == null ? total.unit() : unit.unit();
                perAcre = total.unit().dimension() == as.dimension()
                        ? new Amount(total.value() / acres, total.unit()).in(as)
                        : null;
            }
            String registration = registration(product, i);
            Ask restricted = restricted(product, i);
            if (faults.size() > before) {
                return null;
            }
            if (perAcre == null || total == null) {
                return missingRate(i);
            }
            Optional<UseTerms> terms = season.shelf().labels().terms(product.name(), field.crop());
            return new RecordedProduct(
                    product.name(),
                    registration,
                    perAcre,
                    total,
                    restricted,
                    product.kind().underLabel()
                            ? terms.map(UseTerms::reentryHours).orElse(null)
                            : Integer.valueOf(0),
                    season.shelf()
                            .labelUse(product.name(), field.crop())
                            .map(use -> use.preHarvestDays())
                            .orElse(null),
                    product.labelDate(),
                    meant(field, product.name()));
        }

        private @Nullable RecordedProduct missingRate(int i) {
            fault(RATE + i, "how much went on each acre, or how much in all");
            return null;
        }

        /** What was used in all, as typed, else rate times acres in the unit of the container. */
        private @Nullable Amount total(Product product, @Nullable Amount rate, double acres, int i) {
            FarmUnit usual = usual(season, product);
            if (found(TOTAL + i).isEmpty()) {
                return rate == null || rate.unit().dimension() != usual.dimension()
                        ? null
                        : RecordedProduct.total(rate, acres, new Amount(1, usual));
            }
            FarmUnit unit = found(TOTAL_UNIT + i).isEmpty() ? usual : read(TOTAL_UNIT + i, UnitKind.any());
            Double value = read(TOTAL + i, AMOUNT);
            if (unit != null && unit.dimension() != product.pricedPer().dimension()) {
                fault(
                        TOTAL_UNIT + i,
                        product.pricedPer().dimension().words() + ", since " + product.name() + " is priced per "
                                + product.pricedPer().symbol());
                return null;
            }
            return value == null || unit == null ? null : new Amount(value, unit);
        }

        /** As typed; a box that was never shown takes the number on file. */
        private @Nullable String registration(Product product, int i) {
            if (!typed.containsKey(REGISTRATION + i)) {
                return product.registration();
            }
            Optional<String> text = found(REGISTRATION + i);
            text.flatMap(TextRule.NAME::objection).ifPresent(expected -> fault(REGISTRATION + i, expected));
            return text.orElse(null);
        }

        private Ask restricted(Product product, int i) {
            Optional<String> text = found(RESTRICTED + i);
            if (text.isPresent()) {
                Optional<Ask> said = Arrays.stream(Ask.values())
                        .filter(ask -> ask.word().equalsIgnoreCase(text.get()))
                        .findFirst();
                if (said.isEmpty()) {
                    fault(RESTRICTED + i, "yes, no or unknown: whether it is a restricted-use product");
                }
                return said.orElse(Ask.UNKNOWN);
            }
            return product.kind().underLabel()
                    ? season.shelf()
                            .labels()
                            .care(product.name())
                            .map(ProductCare::restrictedUse)
                            .orElse(Ask.UNKNOWN)
                    : Ask.NO;
        }

        /** The pass of the trip that puts out this product; null where no trip was named. */
        private @Nullable MeantPass meant(Field field, String product) {
            String program = found(PROGRAM).orElse("");
            if (program.isEmpty()) {
                return null;
            }
            List<String> names = season.programs(field.name()).stream()
                    .map(one -> one.name())
                    .toList();
            if (!names.contains(program)) {
                fault(PROGRAM, "a program of " + field.name() + Near.suggested(program, names));
                return null;
            }
            int first = 0;
            try {
                first = found(PASS).map(Integer::parseInt).orElse(0);
            } catch (NumberFormatException wrong) {
                fault(PASS, "the number of a pass");
            }
            return pass(field, program, first, product);
        }

        private @Nullable MeantPass pass(Field field, String program, int first, String product) {
            List<Pass> passes = season.programs(field.name()).stream()
                    .filter(one -> one.name().equals(program))
                    .flatMap(one -> one.passes().stream())
                    .filter(pass -> product.equals(pass.product()))
                    .toList();
            return passes.stream()
                    .filter(pass -> pass.number() >= first)
                    .findFirst()
                    .or(() -> passes.stream().findFirst())
                    .map(pass -> new MeantPass(program, pass.number()))
                    .orElse(null);
        }

        private Optional<String> found(String key) {
            return Optional.of(typed.getOrDefault(key, "").strip()).filter(text -> !text.isEmpty());
        }

        private void fault(String key, String expected) {
            faults.putIfAbsent(
                    key,
                    found(key)
                                    .map(text -> "Found “" + short40(text) + "”; expected ")
                                    .orElse("Nothing there; expected ")
                            + sentence(expected));
        }

        private static String sentence(String words) {
            return words.endsWith("?") ? words : words + ".";
        }

        private static String short40(String text) {
            return text.length() > 40 ? text.substring(0, 37) + "…" : text;
        }

        private <T> @Nullable T read(String key, Kind<T> kind) {
            try {
                if (found(key).isPresent()) {
                    return kind.read(new Cell.Written(found(key).orElseThrow()));
                }
                fault(key, kind.words());
            } catch (Misread wrong) {
                fault(key, wrong.expected());
            }
            return null;
        }

        private @Nullable String named(String key, List<String> names, String what) {
            String name = found(key).orElse("");
            if (!names.contains(name)) {
                fault(key, what + Near.suggested(name, names));
                return null;
            }
            return name;
        }
    }

    /** The unit in which a product is counted in all: that of its container, else that of its price. */
    public static FarmUnit usual(Season season, Product product) {
        return season.work()
                .means()
                .tank()
                .mixing(product.name())
                .map(MixCare::container)
                .filter(container ->
                        container.unit().dimension() == product.pricedPer().dimension())
                .map(Amount::unit)
                .orElse(product.pricedPer());
    }
}
