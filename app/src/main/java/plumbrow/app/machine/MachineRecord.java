package plumbrow.app.machine;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Field;
import plumbrow.advice.land.Inside;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.ratemap.Metering;
import plumbrow.advice.ratemap.RateMap;
import plumbrow.advice.records.RecordItem;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.records.RecordEntry;
import plumbrow.documents.machine.log.MachineWork;
import plumbrow.science.figure.Numbers;

/**
 * What a machine wrote down, put into the boxes of an application record.
 *
 * @param boxes by the keys of {@link RecordEntry}; what the machine doesn't tell is not in it
 * @param insidePct share of the ground worked that lies inside the field's outline [%]; null where either is not known
 * @param notes what must be minded before it is kept
 */
public record MachineRecord(
        Map<String, String> boxes, @Nullable Double insidePct, List<String> notes) {
    private static final List<String> OF_PRODUCT = List.of(
            RecordEntry.RATE_UNIT, RecordEntry.TOTAL_UNIT, RecordEntry.PRODUCT, RecordEntry.RATE, RecordEntry.TOTAL);

    private static final int DIGITS = 5;
    /** Less of the ground inside the field than this is hardly work on it [%]. */
    private static final double MOSTLY = 90;

    public MachineRecord {
        boxes = new LinkedHashMap<>(boxes);
        notes = List.copyOf(notes);
    }

    /**
     * Boxes for a field.
     *
     * @param trip the planned trip that it was, by which spray is parted into its products; null where nobody says
     */
    public static MachineRecord of(Season season, Field field, @Nullable SprayTrip trip, MachineWork work) {
        Map<String, String> boxes = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>(work.notes());
        boxes.put(RecordEntry.FIELD, field.name());
        times(work, boxes);
        Double acres = work.acres();
        if (acres != null && acres > 0) {
            boxes.put(RecordEntry.ACRES, digits(acres, 4));
        }
        if (trip != null) {
            boxes.put(RecordEntry.PROGRAM, trip.program().name());
            boxes.put(RecordEntry.PASS, String.valueOf(trip.number()));
        }
        List<RateMap.Share> products = products(season, trip, work, boxes, notes);
        int number = 1;
        for (RateMap.Share product : products) {
            if (product.perAcre().value() <= 0 || number > RecordEntry.MOST_PRODUCTS) {
                continue;
            }
            String unit = product.perAcre().unit().symbol();
            boxes.put(RecordEntry.PRODUCT + number, product.name());
            if (acres != null && acres > 0) {
                boxes.put(RecordEntry.RATE + number, digits(product.perAcre().value() / acres, DIGITS));
                boxes.put(RecordEntry.RATE_UNIT + number, unit + "/ac");
            }
            boxes.put(RecordEntry.TOTAL + number, digits(product.perAcre().value(), DIGITS));
            boxes.put(RecordEntry.TOTAL_UNIT + number, unit);
            number++;
        }
        return new MachineRecord(boxes, inside(field, work, notes), notes);
    }

    /**
     * What stands in boxes already, such as what the load card says, with what the machine wrote down in its place: it is what was done.
     */
    public Map<String, String> over(Map<String, String> begun) {
        Map<String, String> both = new LinkedHashMap<>(begun);
        boxes.forEach((key, value) -> {
            if (ofProduct(key).isEmpty()) {
                both.put(key, value);
            }
        });
        for (int number = 1; boxes.containsKey(RecordEntry.PRODUCT + number); number++) {
            int place = 1;
            String name = boxes.getOrDefault(RecordEntry.PRODUCT + number, "");
            while (both.containsKey(RecordEntry.PRODUCT + place)
                    && !name.equals(both.get(RecordEntry.PRODUCT + place))) {
                place++;
            }
            for (String key : OF_PRODUCT) {
                String value = boxes.get(key + number);
                if (value != null) {
                    both.put(key + place, value);
                }
            }
        }
        return both;
    }

    private static Optional<String> ofProduct(String key) {
        return OF_PRODUCT.stream().filter(key::startsWith).findFirst();
    }

    private static void times(MachineWork work, Map<String, String> boxes) {
        MachineWork.Moment start = work.start();
        MachineWork.Moment end = work.end();
        if (start != null) {
            boxes.put(RecordEntry.DATE, start.day().toString());
            boxes.put(RecordEntry.START, minute(start.time()));
        }
        if (end != null) {
            boxes.putIfAbsent(RecordEntry.DATE, end.day().toString());
            boxes.put(RecordEntry.END, minute(end.time()));
            if (start != null && !start.day().equals(end.day())) {
                boxes.put(RecordEntry.END_DATE, end.day().toString());
            }
        }
    }

    private static String minute(LocalTime time) {
        return time.truncatedTo(ChronoUnit.MINUTES).toString();
    }

    /** Products with what was put on of each in all. */
    private static List<RateMap.Share> products(
            Season season, @Nullable SprayTrip trip, MachineWork work, Map<String, String> boxes, List<String> notes) {
        List<RateMap.Share> shares = new ArrayList<>();
        SprayPlan plan = trip == null ? null : trip.plan();
        Double carrier = plan == null ? null : plan.carrierGalPerAcre();
        for (MachineWork.Total total : work.totals()) {
            Amount amount = new Amount(total.amount(), total.metering().farmUnit());
            if (trip != null && carrier != null && total.metering() == Metering.VOLUME) {
                boxes.put(RecordItem.SPRAY_GAL.key(), digits(total.amount(), 4));
                Double acres = work.acres();
                if (acres != null && acres > 0) {
                    boxes.put(RecordItem.CARRIER_GPA.key(), digits(total.amount() / acres, 4));
                }
                // What is mixed is mixed: so many times the planned spray is so many times each product.
                double times = total.amount() / carrier;
                trip.passes().forEach(pass -> {
                    Amount rate = pass.rate();
                    String product = pass.product();
                    if (rate != null && product != null) {
                        shares.add(new RateMap.Share(product, new Amount(rate.value() * times, rate.unit())));
                    }
                });
                notes.add(
                        Numbers.fixed(total.amount(), 1) + " gal of spray are parted into the products as planned, at "
                                + Numbers.plain(carrier) + " gal/ac: where the mix was another, say what went in.");
            } else if (season.shelf().product(total.product()).isPresent()) {
                shares.add(new RateMap.Share(total.product(), amount));
            } else if (trip != null
                    && trip.products().size() == 1
                    && sameKind(trip, amount.unit().dimension())) {
                shares.add(new RateMap.Share(trip.products().get(0), amount));
            } else {
                notes.add("Which product of the shelf " + Numbers.fixed(total.amount(), 1) + " "
                        + total.metering().farmUnit().symbol()
                        + (total.product().isEmpty() ? "" : " of “" + total.product() + "”")
                        + " was is not known: say it, or name the program and pass.");
            }
        }
        return shares;
    }

    private static boolean sameKind(SprayTrip trip, Dimension dimension) {
        Amount rate = trip.passes().get(0).rate();
        return rate != null && rate.unit().dimension() == dimension;
    }

    private static @Nullable Double inside(Field field, MachineWork work, List<String> notes) {
        Boundary outline = field.boundary();
        List<Inside.Weighed> places = work.spots().stream()
                .filter(spot -> spot.longitude() != 0 || spot.latitude() != 0)
                .map(spot -> new Inside.Weighed(new Point(spot.longitude(), spot.latitude()), spot.squareMetres()))
                .toList();
        if (outline == null || places.isEmpty()) {
            return null;
        }
        double pct = 100 * Inside.share(outline, places);
        if (pct < MOSTLY) {
            notes.add("Only " + Numbers.fixed(pct, 0) + " % of the ground worked lies inside the outline of "
                    + field.name() + ": is it the right field?");
        }
        return pct;
    }

    private static String digits(double value, int digits) {
        return new BigDecimal(value)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }
}
