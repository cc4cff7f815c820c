package plumbrow.app.records;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.records.ApplicationRecord;
import plumbrow.advice.records.ApplicatorRole;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.records.RecordedProduct;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.weather.Zones;

/** What stands in the boxes of a record before anybody has typed: what the load card says, or the record that is corrected. */
public final class RecordStart {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** Keys that the card and the record may say differently, with the words for them. */
    private static final Map<String, String> HELD = held();

    private RecordStart() {}

    private static Map<String, String> held() {
        Map<String, String> held = new LinkedHashMap<>();
        held.put(RecordEntry.ACRES, "acres");
        for (RecordItem item : List.of(
                RecordItem.CARRIER_GPA,
                RecordItem.METHOD,
                RecordItem.EQUIPMENT,
                RecordItem.NOZZLE,
                RecordItem.DROPLETS,
                RecordItem.PRESSURE,
                RecordItem.SPEED,
                RecordItem.BOOM,
                RecordItem.APPLICATOR,
                RecordItem.ADDITIONS)) {
            held.put(item.key(), item.label().toLowerCase(Locale.ROOT));
        }
        return held;
    }

    /** An application on a field that no load card speaks of. */
    public static Map<String, String> of(Season season, Field field, LocalDate today) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put(RecordEntry.FIELD, field.name());
        boxes.put(RecordEntry.DATE, today.toString());
        zone(season, field).ifPresent(zone -> boxes.put(RecordEntry.ZONE, zone));
        boxes.put(RecordEntry.ACRES, rounded(field.acres(), 2));
        put(boxes, RecordItem.STATE, field.state());
        put(boxes, RecordItem.COUNTY, field.county());
        put(boxes, RecordItem.CROP, field.crop().word());
        put(boxes, RecordItem.PLACE, middle(field.boundary()));
        season.farm(field.farm()).ifPresent(farm -> put(boxes, RecordItem.CUSTOMER, farm.grower()));
        return boxes;
    }

    /** The middle of the outline on file, as a place that can be found by GPS; null where there is none. */
    private static @Nullable String middle(@Nullable Boundary boundary) {
        if (boundary == null) {
            return null;
        }
        List<Point> corners = boundary.polygons().get(0).shell();
        List<Point> once = corners.subList(0, Math.max(1, corners.size() - 1));
        double latitude = once.stream().mapToDouble(Point::latitude).average().orElse(0);
        double longitude = once.stream().mapToDouble(Point::longitude).average().orElse(0);
        return "GPS " + rounded(latitude, 5) + ", " + rounded(longitude, 5) + ", middle of the outline on file";
    }

    private static Optional<String> zone(Season season, Field field) {
        try {
            return Optional.of(Zones.of(season, field.name()).getId());
        } catch (IllegalArgumentException several) {
            return Optional.empty();
        }
    }

    /** All that a load card says of the job. */
    public static Map<String, String> of(Season season, SprayTrip trip, LoadCard card, LocalDate today) {
        Map<String, String> boxes = of(season, trip.field(), today);
        boxes.put(RecordEntry.ACRES, rounded(card.acres(), 2));
        boxes.put(RecordEntry.PROGRAM, card.program());
        boxes.put(RecordEntry.PASS, String.valueOf(trip.number()));
        int number = 0;
        for (Pass pass : trip.passes()) {
            String name = pass.product();
            Amount rate = pass.rate();
            Product product = name == null ? null : season.shelf().product(name).orElse(null);
            if (product == null) {
                continue;
            }
            number++;
            boxes.put(RecordEntry.PRODUCT + number, product.name());
            boxes.put(RecordEntry.REGISTRATION + number, product.registration() == null ? "" : product.registration());
            if (rate != null) {
                boxes.put(RecordEntry.RATE + number, RecordItem.digits(rate.value()));
                boxes.put(RecordEntry.RATE_UNIT + number, rate.unit().symbol() + "/ac");
                int nth = number;
                total(season, product, rate, card.acres()).ifPresent(total -> total(boxes, total, nth));
            }
        }
        SprayPlan plan = trip.plan();
        put(
                boxes,
                RecordItem.VARIETY,
                trip.program().passes().stream()
                        .filter(pass -> pass.kind() == PassKind.SEED)
                        .flatMap(pass -> Optional.ofNullable(pass.product()).stream())
                        .findFirst()
                        .orElse(null));
        put(boxes, RecordItem.PESTS, pests(season, trip));
        if (plan != null) {
            put(boxes, RecordItem.STAGE, plan.cropStage());
            put(
                    boxes,
                    RecordItem.METHOD,
                    plan.method() == null ? null : plan.method().word());
            put(boxes, RecordItem.BOOM, plan.boomIn() == null ? null : RecordItem.digits(plan.boomIn()));
            put(
                    boxes,
                    RecordItem.DROPLETS,
                    plan.droplets() == null ? null : plan.droplets().word());
        }
        String applicator = card.applicator();
        if (applicator != null) {
            put(boxes, RecordItem.APPLICATOR, applicator);
            season.work().crew().person(applicator).ifPresent(person -> licence(boxes, season, trip.field(), person));
        }
        put(boxes, RecordItem.EQUIPMENT, card.machine());
        Double carrier = card.carrierGpa();
        if (carrier != null && !trip.granules()) {
            put(boxes, RecordItem.CARRIER, "water");
            put(boxes, RecordItem.CARRIER_GPA, RecordItem.digits(carrier));
            put(boxes, RecordItem.SPRAY_GAL, rounded(carrier * card.acres(), 0));
        }
        Double speed = card.speedMph();
        put(boxes, RecordItem.SPEED, speed == null ? null : RecordItem.digits(speed));
        card.nozzles().stream().filter(LoadCard.NozzleChoice::fits).findFirst().ifPresent(nozzle -> {
            put(boxes, RecordItem.NOZZLE, nozzle.nozzle());
            put(boxes, RecordItem.PRESSURE, rounded(nozzle.psi(), 0));
            Droplets droplets = nozzle.droplets();
            put(boxes, RecordItem.DROPLETS, droplets == null ? null : droplets.word());
        });
        put(
                boxes,
                RecordItem.ADDITIONS,
                card.lines().stream()
                        .filter(line -> !card.products().contains(line.product()))
                        .map(line -> line.product() + ", " + line.rate())
                        .collect(Collectors.joining("; ")));
        return boxes;
    }

    private static Optional<Amount> total(Season season, Product product, Amount rate, double acres) {
        FarmUnit usual = RecordEntry.usual(season, product);
        return usual.dimension() == rate.unit().dimension()
                ? Optional.of(RecordedProduct.total(rate, acres, new Amount(1, usual)))
                : Optional.empty();
    }

    private static void total(Map<String, String> boxes, Amount total, int number) {
        boxes.put(RecordEntry.TOTAL + number, rounded(total.value(), total.value() < 10 ? 3 : 2));
        boxes.put(RecordEntry.TOTAL_UNIT + number, total.unit().symbol());
    }

    /** The licence that the field's state gave, else the first; and as what the person applies, where that is on file. */
    private static void licence(Map<String, String> boxes, Season season, Field field, Person person) {
        Licence licence = season.work().crew().licences(person).stream()
                .filter(one -> field.state().equals(one.state()))
                .findFirst()
                .orElse(person.first());
        put(boxes, RecordItem.LICENCE, licence.number());
        put(boxes, RecordItem.LICENCE_STATE, licence.state());
        Set<Licence.Cover> covers = licence.covers();
        if (covers != null) {
            put(
                    boxes,
                    RecordItem.LICENCE_CATEGORY,
                    covers.stream().sorted().map(Licence.Cover::word).collect(Collectors.joining(", ")));
        }
        put(
                boxes,
                RecordItem.ROLE,
                person.forHire() == Ask.YES
                        ? ApplicatorRole.COMMERCIAL.word()
                        : licence.kind() == LicenceKind.PRIVATE ? ApplicatorRole.PRIVATE.word() : null);
    }

    /** Weeds and insects of the field that a product of the trip has a control of on file. */
    private static String pests(Season season, SprayTrip trip) {
        Stream<String> weeds = season.pests().weeds().stream()
                .filter(one -> one.field().equals(trip.field().name()))
                .map(WeedPressure::weed);
        Stream<String> insects = season.pests().insects().stream()
                .filter(one -> one.field().equals(trip.field().name()))
                .map(InsectPressure::insect);
        return Stream.concat(weeds, insects)
                .distinct()
                .filter(pest -> trip.products().stream()
                        .anyMatch(product ->
                                !season.shelf().controls(product, pest).isEmpty()))
                .collect(Collectors.joining(", "));
    }

    /** What a kept record says, so that the next one puts it right. */
    public static Map<String, String> of(KeptRecord kept) {
        ApplicationRecord record = kept.record();
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put(RecordEntry.FIELD, record.field());
        boxes.put(RecordEntry.DATE, record.date().toString());
        moment(boxes, RecordEntry.START, record.start());
        moment(boxes, RecordEntry.END, record.end());
        ZonedDateTime end = record.end();
        if (end != null && !end.toLocalDate().equals(record.date())) {
            boxes.put(RecordEntry.END_DATE, end.toLocalDate().toString());
        }
        boxes.put(RecordEntry.ACRES, RecordItem.digits(record.acres()));
        List<RecordedProduct> products = record.products();
        for (int i = 1; i <= products.size(); i++) {
            RecordedProduct one = products.get(i - 1);
            boxes.put(RecordEntry.PRODUCT + i, one.product());
            boxes.put(RecordEntry.REGISTRATION + i, one.registration() == null ? "" : one.registration());
            boxes.put(RecordEntry.RATE + i, RecordItem.digits(one.rate().value()));
            boxes.put(RecordEntry.RATE_UNIT + i, one.rate().unit().symbol() + "/ac");
            boxes.put(RecordEntry.TOTAL + i, RecordItem.digits(one.total().value()));
            boxes.put(RecordEntry.TOTAL_UNIT + i, one.total().unit().symbol());
            boxes.put(RecordEntry.RESTRICTED + i, one.restricted().word());
            if (one.meant() != null && one.meant().program() != null) {
                boxes.putIfAbsent(RecordEntry.PROGRAM, one.meant().program());
                boxes.putIfAbsent(RecordEntry.PASS, String.valueOf(one.meant().pass()));
            }
        }
        boxes.putAll(record.byKey());
        return boxes;
    }

    private static void moment(Map<String, String> boxes, String key, @Nullable ZonedDateTime moment) {
        if (moment != null) {
            boxes.put(key, TIME.format(moment));
            boxes.put(RecordEntry.ZONE, moment.getZone().getId());
        }
    }

    /** What a record says otherwise than the load card, a sentence each. */
    static List<String> otherwise(Map<String, String> card, Map<String, String> typed) {
        List<String> otherwise = new ArrayList<>();
        List<String> planned = names(card);
        List<String> used = names(typed);
        planned.stream().filter(one -> !used.contains(one)).forEach(one -> otherwise.add(one + " was left out."));
        used.stream().filter(one -> !planned.contains(one)).forEach(one -> otherwise.add(one + " is not on the card."));
        for (int i = 1; i <= RecordEntry.MOST_PRODUCTS; i++) {
            String name = card.getOrDefault(RecordEntry.PRODUCT + i, "");
            for (int j = 1; j <= RecordEntry.MOST_PRODUCTS; j++) {
                String rate = rate(typed, j);
                if (!name.isEmpty()
                        && name.equals(
                                typed.getOrDefault(RecordEntry.PRODUCT + j, "").strip())
                        && !rate.isEmpty()
                        && !rate.equals(rate(card, i))) {
                    otherwise.add(name + ": " + rate + ", the card says " + rate(card, i) + ".");
                }
            }
        }
        HELD.forEach((key, words) -> {
            String says = card.getOrDefault(key, "");
            String was = typed.getOrDefault(key, "").strip();
            if (!says.isEmpty() && !was.isEmpty() && !same(says, was)) {
                otherwise.add(words + ": " + was + ", the card says " + says + ".");
            }
        });
        return otherwise;
    }

    private static String rate(Map<String, String> boxes, int number) {
        String rate = boxes.getOrDefault(RecordEntry.RATE + number, "").strip();
        return rate.isEmpty()
                ? ""
                : rate + " "
                        + boxes.getOrDefault(RecordEntry.RATE_UNIT + number, "").strip();
    }

    private static boolean same(String says, String was) {
        try {
            return Math.abs(Double.parseDouble(says) - Double.parseDouble(was)) < 1e-9;
        } catch (NumberFormatException words) {
            return says.equalsIgnoreCase(was);
        }
    }

    private static List<String> names(Map<String, String> boxes) {
        return Stream.iterate(1, i -> i <= RecordEntry.MOST_PRODUCTS, i -> i + 1)
                .map(i -> boxes.getOrDefault(RecordEntry.PRODUCT + i, "").strip())
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private static void put(Map<String, String> boxes, RecordItem item, @Nullable String text) {
        if (text != null && !text.isBlank()) {
            boxes.put(item.key(), text);
        }
    }

    private static String rounded(double number, int digits) {
        double ten = Math.pow(10, digits);
        return RecordItem.digits(Math.round(number * ten) / ten);
    }
}
