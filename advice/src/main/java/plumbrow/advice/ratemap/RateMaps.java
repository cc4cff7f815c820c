package plumbrow.advice.ratemap;

import static plumbrow.science.figure.Numbers.fixed;
import static plumbrow.science.figure.Numbers.plain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.land.Acres;
import plumbrow.advice.land.CellCodes;
import plumbrow.advice.land.CellGrid;
import plumbrow.advice.land.Cut;
import plumbrow.advice.land.GroundParts;
import plumbrow.advice.land.Zone;
import plumbrow.advice.land.Zones;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.advice.weighing.SeedCosts;

/**
 * Lays the rate of a pass over a field's cells: zero outside the outline and in every cell that reaches into a setback of any
 * product that goes out, whatever the wind; the planned rate elsewhere; another where a zone with a rate of its own is drawn.
 *
 * <p>A setback that is known to take ground but is not drawn, a label that was not read, a mix that the load card or the check
 * bars, and a rate outside the label in any zone leave no map: {@link NoRateMapException} says why.
 */
public final class RateMaps {
    /** Side of a cell where nobody asks for another [ft]. */
    public static final double USUAL_CELL_FT = 15;

    public static final double SMALLEST_CELL_FT = 3;
    public static final double LARGEST_CELL_FT = 5280;
    public static final int MOST_CELLS = 1_000_000;

    private static final double FARTHEST_FT = 5280;
    /** Two drawn zones may share a line as a person draws it [ac]. */
    private static final double SHARED_LINE_ACRES = 0.05;

    private final Season season;
    private final Field field;
    private final Program program;
    private final List<Pass> passes;
    private final @Nullable SprayTrip trip;
    private final Asked asked;
    private final List<String> notes = new ArrayList<>();

    private RateMaps(
            Season season, Field field, Program program, List<Pass> passes, @Nullable SprayTrip trip, Asked asked) {
        this.season = season;
        this.field = field;
        this.program = program;
        this.passes = passes;
        this.trip = trip;
        this.asked = asked;
    }

    /**
     * What is asked for.
     *
     * @param cellFt side of a cell [ft]
     * @param unreadFt what to keep from things whose setback was not read on the label [ft]; null where nobody says
     * @param zones zones with a rate of their own
     */
    public record Asked(double cellFt, @Nullable Double unreadFt, List<DrawnZone> zones) {
        public static final Asked USUAL = new Asked(USUAL_CELL_FT, null, List.of());

        public Asked {
            zones = List.copyOf(zones);
        }
    }

    /**
     * A zone with a rate of its own; what a spray meters is its volume.
     *
     * @param rate per acre, zero or more
     * @param unit null for the unit in which the pass is metered
     */
    public record DrawnZone(
            String name,
            Boundary outline,
            double rate,
            @Nullable FarmUnit unit) {
        Amount perAcre(Amount planned) {
            return new Amount(rate, unit == null ? planned.unit() : unit);
        }
    }

    /**
     * The map of a pass, with those that go out in one tank with it.
     *
     * @param number its number; null for the first that puts something on
     * @throws NoRateMapException with a sentence, where none can be made
     */
    public static RateMap of(Season season, Field field, Program program, @Nullable Integer number, Asked asked) {
        Pass pass = pass(field, program, number);
        SprayTrip trip = SprayTrip.of(season, field, program).stream()
                .filter(one -> one.passes().contains(pass))
                .findFirst()
                .orElse(null);
        return new RateMaps(season, field, program, trip == null ? List.of(pass) : trip.passes(), trip, asked).map();
    }

    /** The passes of a program that put seed or a product on. */
    public static List<Pass> passes(Program program) {
        return program.passes().stream().filter(RateMaps::puts).toList();
    }

    private static Pass pass(Field field, Program program, @Nullable Integer number) {
        String here = "“" + program.name() + "” on " + field.name();
        Optional<Pass> found = program.passes().stream()
                .filter(pass -> number == null ? puts(pass) : pass.number() == number)
                .findFirst();
        if (found.isEmpty()) {
            throw new NoRateMapException(
                    number == null
                            ? here + " has no pass that puts seed or a product on."
                            : "There is no pass " + number + " in " + here + "; its passes are "
                                    + program.passes().stream()
                                            .map(one -> String.valueOf(one.number()))
                                            .collect(Collectors.joining(", "))
                                    + ".");
        }
        Pass pass = found.get();
        if (!puts(pass)) {
            throw new NoRateMapException("Pass " + pass.number() + " of " + here + " is "
                    + pass.kind().word() + " and meters nothing; expected a pass that puts seed or a product on.");
        }
        return pass;
    }

    private static boolean puts(Pass pass) {
        return pass.product() != null
                && (pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE || pass.kind() == PassKind.SEED);
    }

    private RateMap map() {
        Boundary outline = outline();
        if (!(asked.cellFt() >= SMALLEST_CELL_FT && asked.cellFt() <= LARGEST_CELL_FT)) {
            throw new NoRateMapException("A cell of " + plain(asked.cellFt()) + " ft can't be; expected "
                    + plain(SMALLEST_CELL_FT) + " to " + plain(LARGEST_CELL_FT) + " ft.");
        }
        Double unread = asked.unreadFt();
        if (unread != null && !(unread >= 0 && unread <= FARTHEST_FT)) {
            throw new NoRateMapException("A distance of " + plain(unread)
                    + " ft can't be kept from what was not read; expected 0 to " + plain(FARTHEST_FT) + " ft.");
        }
        Amount planned = planned();
        Metering metering = Metering.of(planned.unit().dimension());
        demandAllowed(planned);
        double share = share();
        List<Boundary> drawn = zones(metering, planned);
        if (share < 100 && drawn.isEmpty()) {
            throw new NoRateMapException("Pass " + passes.get(0).number() + " covers " + plain(share) + " % of "
                    + field.name() + ", and nobody has said which: draw that part as a zone with its rate.");
        }
        List<RateMap.Clear> clear = clear();
        GroundParts ground = GroundParts.of(
                outline, clear.stream().map(RateMap.Clear::outline).toList(), drawn);
        CellCodes cells = cells(outline, ground, drawn);
        Amount rest = share < 100 ? new Amount(0, planned.unit()) : planned;
        List<RateMap.Part> parts = parts(metering, planned, rest, ground, cells);
        double job = 0;
        double file = 0;
        for (RateMap.Part part : parts) {
            job += part.acres() * part.perAcre().in(metering.farmUnit()).value();
            file += part.cellAcres() * metering.perAcre(part.steps()).value();
        }
        if (job == 0) {
            throw new NoRateMapException(
                    "The rate is zero everywhere on " + field.name() + ": there is nothing for a machine to put on.");
        }
        if (file == 0) {
            throw new NoRateMapException(
                    "With cells of " + plain(asked.cellFt()) + " ft no cell of " + field.name()
                            + " bears the rate: each has its middle outside or reaches into what is kept clear. Take smaller cells.");
        }
        notes(clear);
        Farm farm = season.farm(field.farm()).orElse(null);
        SprayTrip out = trip;
        SprayPlan plan = out == null ? null : out.plan();
        return new RateMap(
                field.name(),
                field.farm(),
                farm == null ? field.farm() : farm.grower(),
                season.year(),
                program.name(),
                passes.stream().map(Pass::number).toList(),
                passes.get(0).date(),
                products(),
                plan == null ? null : plan.applicator(),
                metering,
                outline,
                Acres.inside(outline),
                clear,
                parts,
                cells,
                asked.cellFt(),
                new Amount(job, metering.farmUnit()),
                new Amount(file, metering.farmUnit()),
                notes);
    }

    private Boundary outline() {
        Boundary outline = field.boundary();
        if (outline == null) {
            throw new NoRateMapException("No outline of " + field.name()
                    + " is drawn: draw it on the map or bring it in with: plumbrow map import FILE");
        }
        double west = 180;
        double east = -180;
        for (Boundary.Polygon polygon : outline.polygons()) {
            for (Point point : polygon.shell()) {
                west = Math.min(west, point.longitude());
                east = Math.max(east, point.longitude());
            }
        }
        if (east - west > 180) {
            throw new NoRateMapException(
                    "The outline of " + field.name()
                            + " reaches across the 180° meridian, where the grid of a machine file can't; part the field there.");
        }
        return outline;
    }

    private List<RateMap.Share> products() {
        List<RateMap.Share> shares = new ArrayList<>();
        for (Pass pass : passes) {
            String product = pass.product();
            Amount rate = pass.rate();
            if (product != null && rate != null) {
                shares.add(new RateMap.Share(product, rate));
            }
        }
        return shares;
    }

    /** What is metered by the acre, as planned: the spray of a tank, granules or seed. */
    private Amount planned() {
        Pass first = passes.get(0);
        String name = String.valueOf(first.product());
        for (Pass pass : passes) {
            if (pass.rate() == null) {
                throw new NoRateMapException(
                        "Pass " + pass.number() + ", " + pass.product() + ", has no rate: say it on the sheet passes.");
            }
        }
        Amount rate = java.util.Objects.requireNonNull(first.rate());
        SprayTrip out = trip;
        if (out == null) {
            return seeds(name, rate);
        }
        SprayPlan plan = out.plan();
        Double carrier = plan == null ? null : plan.carrierGalPerAcre();
        if (out.granules() && carrier == null) {
            if (rate.unit().dimension() != Dimension.MASS) {
                throw new NoRateMapException(name + " is planned in "
                        + rate.unit().symbol() + "/ac, and granules are metered by weight: plan it in lb/ac.");
            }
            return rate;
        }
        if (carrier == null) {
            throw new NoRateMapException("The carrier volume of pass " + first.number() + ", " + name
                    + ", is not planned, and a sprayer meters spray: say it on the sheet sprays.");
        }
        return new Amount(carrier, FarmUnit.GAL);
    }

    private Amount seeds(String name, Amount rate) {
        boolean treatment = season.shelf()
                .product(name)
                .map(product -> product.kind() == ProductKind.SEED_TREATMENT)
                .orElse(false);
        if (treatment) {
            throw new NoRateMapException(name + " rides on the seed: make the file of the pass that plants.");
        }
        Seed seed = season.shelf().seed(name).orElse(null);
        if (seed == null) {
            if (rate.unit().dimension() == Dimension.SEEDS || rate.unit().dimension() == Dimension.MASS) {
                return rate;
            }
            throw new NoRateMapException(name + " is planned in " + rate.unit().symbol()
                    + "/ac, and the sheet seeds does not say what that is in seeds or pounds.");
        }
        try {
            return switch (rate.unit().dimension()) {
                case SEEDS, UNITS -> new Amount(SeedCosts.dropped(seed, rate), FarmUnit.SEEDS);
                case MASS -> rate;
                case BUSHELS -> new Amount(SeedCosts.pounds(seed, rate), FarmUnit.LB);
                case VOLUME ->
                    throw new IllegalArgumentException(
                            "seed is not measured in " + rate.unit().symbol());
            };
        } catch (IllegalArgumentException fault) {
            throw new NoRateMapException(name + " at " + rate.text()
                    + "/ac can't be turned into what a planter meters: " + fault.getMessage() + ".");
        }
    }

    private double share() {
        double least = passes.stream().mapToDouble(Pass::sharePct).min().orElse(100);
        double most = passes.stream().mapToDouble(Pass::sharePct).max().orElse(100);
        if (least != most) {
            throw new NoRateMapException("The passes of this tank cover from " + plain(least) + " to " + plain(most)
                    + " % of " + field.name() + "; what goes out of one tank covers the same ground.");
        }
        return most;
    }

    /** Drawn zones, held against the label and each other. */
    private List<Boundary> zones(Metering metering, Amount planned) {
        List<DrawnZone> zones = asked.zones();
        if (zones.size() > CellGrid.MOST_ZONES) {
            throw new NoRateMapException(zones.size() + " zones are more than a machine file holds; expected at most "
                    + CellGrid.MOST_ZONES + ".");
        }
        for (int i = 0; i < zones.size(); i++) {
            DrawnZone zone = zones.get(i);
            Amount perAcre = zone.perAcre(planned);
            if (!perAcre.comparableWith(new Amount(0, metering.farmUnit()))) {
                throw new NoRateMapException("Zone " + zone.name() + " is given in "
                        + perAcre.unit().symbol() + "/ac, which is "
                        + perAcre.unit().dimension().words() + "; this pass meters "
                        + metering.farmUnit().dimension().words() + ", such as "
                        + metering.farmUnit().symbol() + "/ac.");
            }
            for (int other = 0; other < i; other++) {
                double shared =
                        GroundParts.sharedAcres(zone.outline(), zones.get(other).outline());
                if (shared > SHARED_LINE_ACRES) {
                    throw new NoRateMapException("Zones " + zones.get(other).name() + " and " + zone.name() + " share "
                            + fixed(shared, 2) + " ac; expected each place in one zone.");
                }
            }
            demandAllowed(perAcre);
        }
        return zones.stream().map(DrawnZone::outline).toList();
    }

    /** Refuses what the load card bars where so much is metered, and what the check bars. */
    private void demandAllowed(Amount metered) {
        SprayTrip out = trip;
        if (out == null || metered.value() == 0) {
            return;
        }
        double factor = metered.in(planned().unit()).value() / planned().value();
        SprayPlan plan = out.plan();
        List<Pass> changed = new ArrayList<>();
        for (Pass pass : out.passes()) {
            Amount rate = pass.rate();
            changed.add(
                    rate == null || factor == 1
                            ? pass
                            : pass.on(pass.date(), new Amount(rate.value() * factor, rate.unit())));
        }
        SprayPlan there = plan == null || plan.carrierGalPerAcre() == null || factor == 1
                ? plan
                : plan.carrying(plan.carrierGalPerAcre() * factor);
        LoadCard card = LoadCards.of(season, new SprayTrip(field, program, changed, there), null);
        card.findings().stream()
                .filter(finding -> finding.weight() == LoadCard.Weight.BARRED)
                .findFirst()
                .ifPresent(finding -> {
                    throw new NoRateMapException(
                            "Barred" + (factor == 1 ? "" : " at " + metered.text() + "/ac")
                                    + ", so no machine file is made: " + finding.says(),
                            true);
                });
        if (factor != 1) {
            demandWithinLabels(factor, metered);
            return;
        }
        List<String> subjects = out.passes().stream()
                .map(pass -> "pass " + pass.number() + ", " + pass.product())
                .toList();
        Gates.of(season).check(field, program).stream()
                .filter(finding -> finding.standing() == Standing.BARRED && subjects.contains(finding.subject()))
                .map(Finding::says)
                .findFirst()
                .ifPresent(says -> {
                    throw new NoRateMapException("Barred, so no machine file is made: " + says, true);
                });
    }

    /** Refuses another multiple of the planned rates where the label's limit was not read or forbids it. */
    private void demandWithinLabels(double factor, Amount metered) {
        for (RateMap.Share share : products()) {
            LabelUse use = season.shelf().labelUse(share.name(), field.crop()).orElse(null);
            String there = "At " + metered.text() + "/ac " + share.name() + " goes out at "
                    + plain(share.perAcre().value() * factor) + " "
                    + share.perAcre().unit().symbol() + "/ac";
            if (factor > 1 && (use == null || use.highRate() == null)) {
                throw new NoRateMapException(there + ", more than planned, and its highest rate has not been read.");
            }
            Amount low = use == null ? null : use.lowRate();
            if (use != null
                    && low != null
                    && low.comparableWith(share.perAcre())
                    && share.perAcre().inBase() * factor < low.inBase() * (1 - 1e-12)
                    && use.lessForbidden() != Ask.NO) {
                throw new NoRateMapException(there + ", below the label's lowest of " + low.text() + "/ac; "
                        + (use.lessForbidden() == Ask.YES
                                ? "the label forbids less."
                                : "whether the label forbids less has not been read."));
            }
        }
    }

    /** What the labels of all that goes out keep clear, whatever the wind. */
    private List<RateMap.Clear> clear() {
        List<RateMap.Clear> clear = new ArrayList<>();
        Map<String, Double> widest = new LinkedHashMap<>();
        List<Integer> numbers = passes.stream().map(Pass::number).toList();
        for (Zones zones : Gates.of(season).zones(field, program)) {
            if (!numbers.contains(zones.pass())) {
                continue;
            }
            clear(zones, widest, clear);
            if (!zones.notRead().isEmpty()) {
                unread(zones, widest, clear);
            }
        }
        return clear;
    }

    private void unread(Zones zones, Map<String, Double> widest, List<RateMap.Clear> clear) {
        Double feet = asked.unreadFt();
        String what = zones.product() + " from " + String.join(", ", zones.notRead());
        if (feet == null) {
            throw new NoRateMapException("Nobody has read on the label how far to keep " + what
                    + ". Read it and enter it on the sheet setbacks; or say yourself how many feet to keep.");
        }
        List<Cut.Asked> kept = season.ground().features(field.name()).stream()
                .filter(feature -> zones.notRead().contains(named(feature)))
                .map(feature -> new Cut.Asked(
                        feature, new Setback(zones.product(), feature.kind(), feet, false, "as said for this file")))
                .toList();
        clear(Cut.of(field, zones.pass(), zones.product(), kept, List.of()), widest, clear);
        notes.add("The label was not read for how far to keep " + what + ": " + plain(feet) + " ft are kept, as said.");
    }

    private void clear(Zones zones, Map<String, Double> widest, List<RateMap.Clear> clear) {
        for (Zone zone : zones.zones()) {
            String from = named(zone.feature());
            if (zone.acres() == null) {
                throw new NoRateMapException(zones.product() + " keeps " + plain(zone.feet()) + " ft from " + from
                        + ", and where that lies is not drawn: draw it on the map first.");
            }
            Boundary area = zone.area();
            if (area == null || widest.getOrDefault(from, -1.0) >= zone.feet()) {
                continue;
            }
            widest.put(from, zone.feet());
            clear.removeIf(other -> other.from().equals(from));
            clear.add(new RateMap.Clear(from, zones.product(), zone.feet(), zone.acres(), area));
            if (zone.downwindOnly()) {
                String note = zones.product() + " keeps " + plain(zone.feet()) + " ft from " + from
                        + " only where the wind blows towards it; the file keeps it whatever the wind.";
                if (!notes.contains(note)) {
                    notes.add(note);
                }
            }
        }
    }

    private static String named(Feature feature) {
        return feature.kind().word() + " " + feature.name();
    }

    private CellCodes cells(Boundary outline, GroundParts ground, List<Boundary> drawn) {
        try {
            return CellGrid.over(outline, asked.cellFt(), MOST_CELLS)
                    .codes(outline, ground.clear().outline(), drawn);
        } catch (CellGrid.TooManyCellsException many) {
            throw new NoRateMapException("Cells of " + plain(asked.cellFt()) + " ft over " + field.name() + " are "
                    + String.format(java.util.Locale.ROOT, "%,.0f", many.cells())
                    + ", more than the 1,000,000 that a machine file may hold; take larger cells.");
        }
    }

    private List<RateMap.Part> parts(
            Metering metering, Amount planned, Amount rest, GroundParts ground, CellCodes cells) {
        List<RateMap.Part> parts = new ArrayList<>();
        if (ground.clear().outline() != null) {
            parts.add(part(
                    CellGrid.CLEAR,
                    "Kept clear",
                    new Amount(0, rest.unit()),
                    metering,
                    planned,
                    ground.clear(),
                    cells));
        }
        parts.add(part(
                CellGrid.REST,
                rest.value() == 0 ? "Not covered" : "Planned rate",
                rest,
                metering,
                planned,
                ground.rest(),
                cells));
        for (int i = 0; i < asked.zones().size(); i++) {
            DrawnZone zone = asked.zones().get(i);
            GroundParts.Part its = ground.zones().get(i);
            if (its.outline() == null) {
                notes.add("Zone " + zone.name() + " has no ground in the field that may be treated.");
            }
            parts.add(part(CellGrid.FIRST_ZONE + i, zone.name(), zone.perAcre(planned), metering, planned, its, cells));
        }
        return parts;
    }

    private RateMap.Part part(
            int code,
            String name,
            Amount perAcre,
            Metering metering,
            Amount planned,
            GroundParts.Part ground,
            CellCodes cells) {
        return new RateMap.Part(
                code,
                name,
                perAcre,
                steps(metering, planned, perAcre),
                ground.acres(),
                cells.squareMetres(code) / Metering.M2_PER_ACRE,
                ground.outline());
    }

    /** The nearest whole step that keeps every product within its label. */
    private int steps(Metering metering, Amount planned, Amount perAcre) {
        if (perAcre.value() == 0) {
            return 0;
        }
        double exact = metering.steps(perAcre);
        if (exact > Integer.MAX_VALUE - 1.0) {
            throw new NoRateMapException(perAcre.text() + "/ac is more than a machine file can say.");
        }
        double whole = metering.steps(planned);
        int nearest = (int) Math.rint(exact);
        IntPredicate within = steps -> steps > 0 && withinLabels(exact / whole, steps / whole);
        for (int steps : new int[] {nearest, (int) Math.floor(exact), (int) Math.ceil(exact)}) {
            if (within.test(steps)) {
                return steps;
            }
        }
        throw new NoRateMapException(perAcre.text() + "/ac is " + plain(exact * metering.step()) + " "
                + metering.unit() + ", and machine files go in steps of " + plain(metering.step())
                + ": no step keeps it within the label.");
    }

    /** Whether rounding from one multiple of the planned rates to another leaves every product on its side of the label's limits. */
    private boolean withinLabels(double exact, double rounded) {
        if (trip == null) {
            return true;
        }
        for (RateMap.Share share : products()) {
            LabelUse use = season.shelf().labelUse(share.name(), field.crop()).orElse(null);
            double rate = share.perAcre().inBase();
            double highest = limit(use == null ? null : use.highRate(), share.perAcre(), rate * exact);
            double lowest = limit(use == null ? null : use.lowRate(), share.perAcre(), 0);
            if (rate * rounded > Math.max(highest, rate * exact) || rate * rounded < Math.min(lowest, rate * exact)) {
                return false;
            }
        }
        return true;
    }

    /** A limit of the label in the base unit of the rate; where it was not read, what stands in its place. */
    private static double limit(@Nullable Amount limit, Amount rate, double unread) {
        return limit != null && limit.comparableWith(rate) ? limit.inBase() : unread;
    }

    private void notes(List<RateMap.Clear> clear) {
        if (trip != null && !season.ground().lookedForAll(field.name())) {
            notes.add("What else lies around " + field.name() + " is unknown: look over the field and note it.");
        }
        if (!clear.isEmpty()) {
            notes.add("A cell that reaches into a setback is at rate zero as a whole.");
        }
        notes.add("A drawing is no survey: pace off the distances before you begin. The current label is the law.");
    }
}
