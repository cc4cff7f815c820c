package plumbrow.advice.loadcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.loadcard.LoadCard.Finding;
import plumbrow.advice.loadcard.LoadCard.Line;
import plumbrow.advice.loadcard.LoadCard.Weight;
import plumbrow.advice.means.Machine;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.ScoutingTrigger;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.Dimension;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveName;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.tank.Addition;
import plumbrow.advice.tank.MixCare;
import plumbrow.advice.tank.Nozzle;
import plumbrow.advice.tank.Sprayer;
import plumbrow.advice.tank.TankBook;
import plumbrow.advice.tank.WaterTest;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.science.figure.Numbers;
import plumbrow.science.spraying.BoomFlow;
import plumbrow.science.spraying.CatchCourse;
import plumbrow.science.spraying.JarTest;
import plumbrow.science.spraying.Loads;
import plumbrow.science.spraying.MixingOrder;
import plumbrow.science.spraying.NozzlePressure;
import plumbrow.science.spraying.NozzleSize;
import plumbrow.science.spraying.ProductPerLoad;
import plumbrow.science.spraying.RowGranules;
import plumbrow.science.spraying.WaterConditioner;

/**
 * Makes the load card of a trip from program, labels, sprayer, nozzles and water. All arithmetic is that of the figures; what is not
 * on file is told as unknown, with where to look.
 */
public final class LoadCards {
    private static final double RATED_PSI = 40;
    private static final double OZ_PER_GAL = 128;
    private static final double INCHES_PER_FOOT = 12;
    private static final double QUART_ML = 946.352946;
    private static final double RINSE_SHARE = 0.1;
    private static final double USUAL_RESIDUE_GAL = 5;
    private static final double FREE = 999;
    private static final double[] ROWS_IN = {30, 22, 20, 15};

    private final Season season;
    private final SprayTrip trip;
    private final @Nullable Machine machine;
    private final @Nullable Sprayer sprayer;
    private final TankBook tank;
    private final List<Finding> findings = new ArrayList<>();

    private LoadCards(Season season, SprayTrip trip, @Nullable Machine machine) {
        this.season = season;
        this.trip = trip;
        this.machine = machine;
        this.tank = season.work().means().tank();
        this.sprayer = machine == null
                ? null
                : tank.sprayer(machine.farm(), machine.name()).orElse(null);
    }

    /**
     * The card of a trip.
     *
     * @param machineName which sprayer; null for the farm's first that has a tank on file, else its first
     */
    public static LoadCard of(Season season, SprayTrip trip, @Nullable String machineName) {
        List<Machine> machines = trip.machines(season);
        TankBook tank = season.work().means().tank();
        Optional<Machine> machine = machineName != null
                ? machines.stream()
                        .filter(one -> one.name().equals(machineName))
                        .findFirst()
                : machines.stream()
                        .filter(one -> tank.sprayer(one.farm(), one.name()).isPresent())
                        .findFirst()
                        .or(() -> machines.stream().findFirst());
        return new LoadCards(season, trip, machine.orElse(null)).card();
    }

    private LoadCard card() {
        SprayPlan plan = trip.plan();
        Double carrier = plan == null ? null : plan.carrierGalPerAcre();
        Sprayer known = sprayer;
        Double usable = known == null ? null : Double.valueOf(Math.floor(known.tankGal()));
        boolean dry = trip.granules() || (!trip.sprayed() && carrier == null);
        LoadCard.Loads loads = dry ? null : loads(carrier, usable);
        LoadCard.Limits limits = limits(carrier);
        List<Line> lines = new ArrayList<>();
        for (Pass pass : trip.passes()) {
            line(pass, carrier, loads).ifPresent(lines::add);
            ScoutingTrigger trigger = pass.trigger();
            if (trigger != null) {
                find(
                        Weight.MIND,
                        pass.product() + " goes out " + trigger.words() + ": scout before you fill.",
                        "sheet passes");
            }
        }
        String conditioner = dry ? null : additions(lines, carrier, loads);
        lines.sort(Comparator.comparingInt(line -> line.step() < 0 ? Integer.MAX_VALUE : line.step()));
        room(lines, loads);
        List<LoadCard.NozzleChoice> nozzles = nozzles(carrier, limits);
        LoadCard.Catch catching = catching(carrier);
        labelLimits(LabelLimit.Kind.DUTY)
                .forEach(limit -> find(
                        Weight.MIND, "The label of " + limit.product() + ": " + limit.value() + ".", limit.source()));
        List<String> wear = wear();
        Integer reentry = reentry();
        List<Finding> sorted = findings.stream()
                .distinct()
                .sorted(Comparator.comparing(Finding::weight))
                .toList();
        return new LoadCard(
                trip.field().name(),
                trip.field().farm(),
                trip.program().name(),
                trip.passes().stream().map(Pass::number).toList(),
                trip.products(),
                trip.date(),
                trip.acres(),
                plan == null ? null : plan.applicator(),
                machine == null ? null : machine.name(),
                machine == null ? null : Double.valueOf(machine.speedMph()),
                carrier,
                usable,
                loads,
                lines,
                steps(lines, dry),
                nozzles,
                limits,
                catching,
                conditioner,
                granules(),
                wear,
                reentry,
                dry ? List.of() : cleanOut(),
                sorted,
                sentence(loads, sorted));
    }

    private void find(Weight weight, String says, String source) {
        findings.add(new Finding(weight, says, source));
    }

    private LoadCard.@Nullable Loads loads(@Nullable Double carrier, @Nullable Double usable) {
        if (carrier == null) {
            find(Weight.LOOK_UP, "The carrier volume is not planned: say so on the sheet sprays.", "sheet sprays");
        }
        if (usable == null) {
            Machine known = machine;
            find(
                    Weight.LOOK_UP,
                    known == null
                            ? "No sprayer of the farm is on file: enter it on the sheets machines and sprayers."
                            : "The tank of the " + known.name() + " is not on file: enter it on the sheet sprayers.",
                    "sheet sprayers");
        }
        if (carrier == null || usable == null || usable < carrier / 100) {
            return null;
        }
        double acres = trip.acres();
        double perLoad = usable / carrier;
        double full = Loads.fullLoads(acres, perLoad);
        double last = Loads.lastLoadAcres(acres, perLoad);
        double exact = last * carrier;
        double lastGal = Math.min(usable, Math.ceil(exact - 1e-9));
        double left = last > 0 ? lastGal - exact : 0;
        Double mostLeft = sprayer == null ? null : sprayer.mostLeftGal();
        if (mostLeft != null && left > mostLeft) {
            find(
                    Weight.MIND,
                    "Filling to the gallon leaves " + Numbers.fixed(left, 1) + " gal, more than the "
                            + Numbers.plain(mostLeft) + " gal that may be left.",
                    "sheet sprayers");
        }
        double even = Numbers.wholeUp(acres / perLoad);
        return new LoadCard.Loads(
                (int) full,
                perLoad,
                usable,
                last,
                last > 0 ? lastGal : 0,
                left,
                left / carrier,
                mostLeft,
                (int) even,
                acres / even);
    }

    // ---- what goes in ----

    private Optional<Line> line(Pass pass, @Nullable Double carrier, LoadCard.@Nullable Loads loads) {
        String name = pass.product();
        Amount rate = pass.rate();
        if (name == null || rate == null) {
            return Optional.empty();
        }
        MixCare care = tank.mixing(name).orElse(null);
        LabelUse use = season.shelf().labelUse(name, trip.field().crop()).orElse(null);
        Amount lowest = use == null ? null : use.lowRate();
        Amount highest = use == null ? null : use.highRate();
        if (use == null || highest == null) {
            find(
                    Weight.LOOK_UP,
                    "The highest rate of " + name
                            + " has not been read; amounts are never rounded above the planned rate.",
                    use == null ? "its label" : use.source());
        }
        double most = highest == null || !highest.comparableWith(rate)
                ? rate.value()
                : highest.in(rate.unit()).value();
        double least = lowest == null || !lowest.comparableWith(rate)
                ? 0
                : lowest.in(rate.unit()).value();
        if (rate.value() > most * (1 + 1e-12)) {
            find(
                    Weight.BARRED,
                    name + ": the planned rate of " + rate.text() + "/ac is above the label's " + Numbers.plain(most)
                            + " " + rate.unit().symbol() + "/ac.",
                    use == null ? "" : use.source());
            most = rate.value();
        }
        double floor = Math.min(least, rate.value());
        double ceiling = most;
        LoadCard.Measured full = loads == null || loads.full() == 0
                ? null
                : measured(
                        name,
                        new Amount(ProductPerLoad.ofAcres(rate.value(), loads.fullAcres()), rate.unit()),
                        rate.value(),
                        floor,
                        ceiling,
                        care);
        LoadCard.Measured last = loads == null || loads.lastAcres() == 0
                ? null
                : measured(
                        name,
                        new Amount(ProductPerLoad.ofAcres(rate.value(), loads.lastAcres()), rate.unit()),
                        rate.value(),
                        floor,
                        ceiling,
                        care);
        Amount total = new Amount(ProductPerLoad.ofAcres(rate.value(), trip.acres()), rate.unit());
        return Optional.of(new Line(
                name,
                "pass " + pass.number(),
                rate.text() + "/ac",
                formulation(name, care),
                step(care),
                care == null ? null : care.order(),
                full,
                last,
                Measures.total(total),
                stock(name, total, care),
                jar(rate.value(), jarUnit(rate.unit()), rate.unit().dimension() == Dimension.VOLUME, carrier)));
    }

    private LoadCard.@Nullable Measured measured(
            String name, Amount exact, double rate, double least, double most, @Nullable MixCare care) {
        if (exact.unit().dimension() != Dimension.VOLUME && exact.unit().dimension() != Dimension.MASS) {
            return null;
        }
        LoadCard.Measured measured = Measures.of(exact, rate, least, most, care);
        if (measured == null) {
            find(
                    Weight.LOOK_UP,
                    name + ": " + Numbers.read(exact.value(), exact.unit().symbol())
                            + " can't be measured within the label; take a finer tool or mix a larger load.",
                    "");
        } else if (Math.abs(measured.offPct()) > 2) {
            find(
                    Weight.MIND,
                    name + ": measuring " + measured.words() + " is " + Numbers.fixed(Math.abs(measured.offPct()), 1)
                            + " % off the rate; a finer tool or a larger load is nearer.",
                    "");
        }
        return measured;
    }

    private @Nullable String formulation(String name, @Nullable MixCare care) {
        String code = care == null ? null : care.formulation();
        if (code == null && !trip.granules()) {
            find(
                    Weight.LOOK_UP,
                    "The formulation of " + name + " is not on file, so its place in the mixing order is unknown.",
                    "its label, first page");
        }
        return code;
    }

    private static int step(@Nullable MixCare care) {
        String code = care == null ? null : care.formulation();
        return code == null ? -1 : MixingOrder.step(code.toUpperCase(Locale.ROOT));
    }

    private static @Nullable String jarUnit(FarmUnit unit) {
        return switch (unit) {
            case FL_OZ -> "fl-oz";
            case PT -> "pt";
            case QT -> "qt";
            case GAL -> "gal";
            case OZ -> "oz";
            case LB -> "lb";
            default -> null;
        };
    }

    private static String jar(double rate, @Nullable String unit, boolean liquid, @Nullable Double carrier) {
        if (unit == null || carrier == null) {
            return "";
        }
        double amount = JarTest.intoJar(rate, unit, carrier, QUART_ML);
        return Numbers.fixed(amount, amount < 1 ? 2 : 1) + (liquid ? " mL" : " g");
    }

    private String stock(String name, Amount total, @Nullable MixCare care) {
        Product product = season.shelf().product(name).orElse(null);
        Amount there = product == null ? null : product.onHand();
        if (there == null || !there.comparableWith(total)) {
            return "stock not on file";
        }
        Amount needed = total.in(there.unit());
        if (needed.value() > there.value() * (1 + 1e-9)) {
            double missing = needed.value() - there.value();
            String open = containers(new Amount(missing, there.unit()), care);
            find(
                    Weight.MIND,
                    name + ": " + Numbers.read(missing, there.unit().symbol()) + " short of what the job takes" + open
                            + ".",
                    "sheet shelf");
            return "short by " + Numbers.read(missing, there.unit().symbol());
        }
        return "enough: " + there.text() + " on hand";
    }

    private static String containers(Amount amount, @Nullable MixCare care) {
        Amount container = care == null ? null : care.container();
        if (container == null || !container.comparableWith(amount)) {
            return "";
        }
        double count = Math.ceil(amount.in(container.unit()).value() / container.value() - 1e-9);
        return ", " + Numbers.fixed(count, 0) + " × " + container.text();
    }

    /** Adjuvants and conditioners; each once, at the highest rate any partner asks for. Says what the water test asks for. */
    private @Nullable String additions(List<Line> lines, @Nullable Double carrier, LoadCard.@Nullable Loads loads) {
        List<Addition> wanted = new ArrayList<>();
        for (String product : trip.products()) {
            for (Addition addition : tank.additions(product, trip.field().name())) {
                Addition same = wanted.stream()
                        .filter(one -> one.addition().equals(addition.addition()) && one.basis() == addition.basis())
                        .findFirst()
                        .orElse(null);
                if (same == null) {
                    wanted.add(addition);
                } else if (addition.rate() > same.rate()) {
                    wanted.set(wanted.indexOf(same), addition);
                }
            }
        }
        String conditioner = conditioner(wanted);
        for (Addition addition : wanted) {
            forbidden(addition);
            lines.add(line(addition, carrier, loads));
        }
        trip.products().forEach(this::forbiddenPartners);
        return conditioner;
    }

    private Line line(Addition addition, @Nullable Double carrier, LoadCard.@Nullable Loads loads) {
        MixCare care = tank.mixing(addition.addition()).orElse(null);
        FarmUnit unit = FarmUnit.parse(addition.basis().unit()).orElseThrow();
        double rate = addition.rate();
        LoadCard.Measured full = loads == null || loads.full() == 0
                ? null
                : measured(
                        addition.addition(),
                        new Amount(amount(addition, loads.fullAcres(), loads.fullGal()), unit),
                        rate,
                        0,
                        rate * ROUND_UP,
                        care);
        LoadCard.Measured last = loads == null || loads.lastAcres() == 0
                ? null
                : measured(
                        addition.addition(),
                        new Amount(amount(addition, loads.lastAcres(), loads.lastGal()), unit),
                        rate,
                        0,
                        rate * ROUND_UP,
                        care);
        Amount total = carrier == null && !addition.basis().perAcre()
                ? null
                : new Amount(amount(addition, trip.acres(), trip.acres() * (carrier == null ? 0 : carrier)), unit);
        String jarUnit = switch (addition.basis()) {
            case PERCENT -> "percent";
            case LB_PER_100_GAL -> "lb-100gal";
            case FL_OZ_PER_ACRE -> "fl-oz";
            case PT_PER_ACRE -> "pt";
            case LB_PER_ACRE -> "lb";
            case GAL_PER_100_GAL, QT_PER_100_GAL -> null;
        };
        return new Line(
                addition.addition(),
                "with " + addition.product(),
                Numbers.plain(rate) + " " + addition.basis().word(),
                formulation(addition.addition(), care),
                step(care),
                care == null ? null : care.order(),
                full,
                last,
                total == null ? "" : Measures.total(total),
                total == null ? "" : stock(addition.addition(), total, care),
                jar(rate, jarUnit, unit.dimension() == Dimension.VOLUME, carrier));
    }

    /** An adjuvant has no highest rate of its own here: to the nearest mark, at most a tenth above what is asked. */
    private static final double ROUND_UP = 1.1;

    private static double amount(Addition addition, double acres, double gallons) {
        return addition.basis().perAcre()
                ? ProductPerLoad.ofAcres(addition.rate(), acres)
                : ProductPerLoad.ofVolume(addition.rate(), gallons);
    }

    private @Nullable String conditioner(List<Addition> wanted) {
        Addition ams = wanted.stream()
                .filter(one -> one.basis() == Addition.Basis.LB_PER_100_GAL && conditioner(one.addition()))
                .findFirst()
                .orElse(null);
        double labelLow = 0;
        for (String product : trip.products()) {
            MixCare care = tank.mixing(product).orElse(null);
            MixCare.Conditioner word = care == null ? null : care.ams();
            if (care == null || word == null) {
                continue;
            }
            if (word == MixCare.Conditioner.FORBIDDEN && ams != null) {
                find(
                        Weight.BARRED,
                        "The label of " + product + " forbids ammonium sulfate in the tank.",
                        care.source());
            } else if (word == MixCare.Conditioner.REQUIRED && ams == null) {
                find(
                        Weight.BARRED,
                        "The label of " + product + " asks for ammonium sulfate, and none is on the sheet additions.",
                        care.source());
            }
            Double low = care.amsLowLb();
            Double high = care.amsHighLb();
            labelLow = Math.max(labelLow, low == null ? 0 : low);
            if (ams != null && low != null && word == MixCare.Conditioner.REQUIRED && ams.rate() < low) {
                find(
                        Weight.BARRED,
                        ams.addition() + " at " + Numbers.plain(ams.rate()) + " lb/100 gal is under the "
                                + Numbers.plain(low) + " that the label of " + product + " asks for.",
                        care.source());
            }
            if (ams != null && high != null && ams.rate() > high) {
                find(
                        Weight.BARRED,
                        ams.addition() + " at " + Numbers.plain(ams.rate()) + " lb/100 gal is above the "
                                + Numbers.plain(high) + " of the label of " + product + ".",
                        care.source());
            }
        }
        if (ams == null && labelLow == 0) {
            return null;
        }
        Optional<WaterTest> test = tank.water(trip.field().farm());
        if (test.isEmpty()) {
            find(
                    Weight.LOOK_UP,
                    "No water test of the farm is on file: what the water needs is unknown.",
                    "the water tests of the workbook");
            return "What the water needs is unknown: no test on file.";
        }
        WaterTest water = test.get();
        Double iron = water.iron();
        double least = WaterConditioner.lbPer100Gal(
                water.calcium(), water.magnesium(), water.sodium(), water.potassium(), iron == null ? 0 : iron);
        double hardness = WaterConditioner.hardnessPpm(water.calcium(), water.magnesium());
        if (ams != null && ams.rate() < least) {
            find(
                    Weight.MIND,
                    "The water needs at least " + Numbers.fixed(least, 1) + " lb of ammonium sulfate in 100 gal, and "
                            + Numbers.plain(ams.rate()) + " is planned.",
                    water.source());
        }
        return "Water of " + water.tested() + ": hardness " + Numbers.fixed(hardness, 0)
                + " ppm; to neutralise it takes "
                + Numbers.fixed(least, 1) + " lb of ammonium sulfate in 100 gal"
                + (iron == null ? " (iron not tested)" : "")
                + (ams == null ? "" : "; planned " + Numbers.plain(ams.rate()))
                + ". The larger of this and the label holds.";
    }

    private boolean conditioner(String name) {
        return tank.mixing(name).map(MixCare::formulation).filter("AMS"::equals).isPresent()
                || name.toUpperCase(Locale.ROOT).contains("AMS");
    }

    /** Whether a label in the tank forbids an addition by its name or kind. */
    private void forbidden(Addition addition) {
        Product product = season.shelf().product(addition.addition()).orElse(null);
        for (MixRule rule : season.shelf().labels().mixRules()) {
            boolean named = rule.partners().stream()
                    .anyMatch(partner -> partner.equalsIgnoreCase(addition.addition())
                            || (product != null && product.kind().word().equalsIgnoreCase(partner)));
            if (trip.products().contains(rule.product())) {
                forbidden(rule, addition.addition(), named);
            }
        }
    }

    /** Whether a label forbids another product in the tank. */
    private void forbiddenPartners(String product) {
        for (MixRule rule : season.shelf().labels().mixRules()) {
            if (rule.product().equals(product)) {
                trip.products().stream()
                        .filter(other -> !other.equals(product))
                        .forEach(other -> forbidden(
                                rule, other, rule.partners().stream().anyMatch(partner -> meant(partner, other))));
            }
        }
    }

    /** What a rule says of something else in the tank that it names or doesn't. */
    private void forbidden(MixRule rule, String other, boolean named) {
        if (rule.word() == MixRule.Word.FORBIDDEN && named) {
            find(
                    Weight.BARRED,
                    "The label of " + rule.product() + " forbids " + rule.partner() + " in the tank, and " + other
                            + " is.",
                    rule.source());
        } else if (rule.word() == MixRule.Word.ONLY && !named) {
            find(
                    Weight.BARRED,
                    "The label of " + rule.product() + " allows only " + rule.partner() + " in the tank, and " + other
                            + " is in it.",
                    rule.source());
        }
    }

    private boolean meant(String partner, String product) {
        return partner.equalsIgnoreCase(product)
                || season.shelf()
                        .product(product)
                        .filter(one -> one.kind().word().equalsIgnoreCase(partner))
                        .isPresent()
                || season.shelf().actives(product).stream()
                        .anyMatch(active -> ActiveName.same(active.ingredient(), partner));
    }

    /** Products may not fill the tank. */
    private void room(List<Line> lines, LoadCard.@Nullable Loads loads) {
        if (loads == null) {
            return;
        }
        double liquids = lines.stream()
                .map(loads.full() > 0 ? Line::full : Line::last)
                .filter(Objects::nonNull)
                .mapToDouble(LoadCard.Measured::gallons)
                .sum();
        double volume = loads.full() > 0 ? loads.fullGal() : loads.lastGal();
        if (liquids > volume / 2) {
            find(Weight.BARRED, "Products take more than half of the load; the carrier volume can't be right.", "");
        }
    }

    /** The mixing order, step by step. */
    private List<String> steps(List<Line> lines, boolean dry) {
        if (dry || lines.isEmpty()) {
            return List.of();
        }
        List<String> steps = new ArrayList<>();
        steps.add("Clean tank, half to three quarters full of water, agitation on.");
        int before = -2;
        for (Line line : lines) {
            String own = line.labelOrder();
            String what = line.step() < 0 ? "Look up where it goes: " : "";
            String wait = line.step() == 1
                    ? " Slurry it first; let it disperse fully, 3 to 5 minutes (common practice, no source)."
                    : line.step() >= 0 && line.step() != before
                            ? " Agitate until it is dispersed before the next."
                            : "";
            steps.add(what
                    + line.product()
                    + (line.formulation() == null
                            ? ""
                            : " (" + line.formulation() + ", " + (line.step() < 0 ? "" : MixingOrder.words(line.step()))
                                    + ")")
                    + (own == null ? "." : ". The label says: " + own + ".")
                    + wait);
            before = line.step();
        }
        steps.add("Fill with water to the volume of the load, and keep agitating until it is sprayed out.");
        List<String> codes = lines.stream()
                .flatMap(line -> Optional.ofNullable(line.formulation()).stream())
                .toList();
        if (MixingOrder.disputed(codes)) {
            find(
                    Weight.MIND,
                    "Published orders differ on solutions and microcapsules against emulsifiable concentrates: the labels decide.",
                    "Oklahoma, South Dakota and North Dakota State");
        }
        return steps;
    }

    // ---- how it goes out ----

    private LoadCard.Limits limits(@Nullable Double carrier) {
        Droplets finest = null;
        Droplets coarsest = null;
        Double carrierLow = null;
        Double boom = null;
        Map<String, String> says = new LinkedHashMap<>();
        boolean unread = false;
        for (String product : trip.products()) {
            UseTerms terms =
                    season.shelf().labels().terms(product, trip.field().crop()).orElse(null);
            if (terms == null) {
                find(
                        Weight.LOOK_UP,
                        "What the label of " + product + " asks beyond its rate has not been read.",
                        "its label");
                unread = true;
                continue;
            }
            if (trip.sprayed() && (terms.finest() == null || terms.coarsest() == null)) {
                find(Weight.LOOK_UP, "The droplet class of " + product + " has not been read.", terms.source());
                unread = true;
            }
            Droplets fine = terms.finest();
            if (fine != null && (finest == null || fine.compareTo(finest) > 0)) {
                finest = fine;
                says.put("fine", "droplets " + fine.word() + " or coarser (" + product + ")");
            }
            Droplets coarse = terms.coarsest();
            if (coarse != null && (coarsest == null || coarse.compareTo(coarsest) < 0)) {
                coarsest = coarse;
                if (coarse != Droplets.ULTRA_COARSE) {
                    says.put("coarse", "droplets " + coarse.word() + " or finer (" + product + ")");
                }
            }
            Double low = terms.carrierLowGalPerAcre();
            if (low != null && low > 0 && (carrierLow == null || low > carrierLow)) {
                carrierLow = low;
                says.put("carrier", "at least " + Numbers.plain(low) + " gal/ac (" + product + ")");
            }
            Double high = terms.boomHighestIn();
            if (trip.sprayed() && high != null && high < FREE && (boom == null || high < boom)) {
                boom = high;
                says.put("boom", "boom " + Numbers.plain(high) + " in or lower (" + product + ")");
            }
        }
        if (!trip.sprayed()) {
            says.remove("fine");
            says.remove("coarse");
        }
        if (finest != null && coarsest != null && finest.compareTo(coarsest) > 0) {
            find(Weight.BARRED, "No droplet class meets all labels in the tank.", "");
        }
        if (carrier != null && carrierLow != null && carrier < carrierLow) {
            find(
                    Weight.BARRED,
                    "The planned " + Numbers.plain(carrier) + " gal/ac is less than the " + Numbers.plain(carrierLow)
                            + " gal/ac that the labels ask for.",
                    "");
        }
        return new LoadCard.Limits(
                unread ? null : finest, unread ? null : coarsest, carrierLow, boom, List.copyOf(says.values()));
    }

    private List<LoadCard.NozzleChoice> nozzles(@Nullable Double carrier, LoadCard.Limits limits) {
        Machine driven = machine;
        Double spacing = sprayer == null ? null : sprayer.spacingIn();
        if (!trip.sprayed() || driven == null || carrier == null) {
            return List.of();
        }
        if (spacing == null) {
            find(Weight.LOOK_UP, "The nozzle spacing is not on file: which nozzle fits is unknown.", "sheet sprayers");
            return List.of();
        }
        List<Nozzle> charts = tank.nozzles(trip.field().farm());
        if (charts.isEmpty()) {
            find(Weight.LOOK_UP, "No nozzle of the farm is on file: copy the maker's chart.", "sheet nozzles");
            return List.of();
        }
        double gpm = BoomFlow.gpm(carrier, driven.speedMph(), spacing);
        pump(gpm, driven, spacing);
        List<LoadCard.NozzleChoice> choices = new ArrayList<>();
        for (String name : charts.stream().map(Nozzle::nozzle).distinct().toList()) {
            List<Nozzle> chart =
                    charts.stream().filter(one -> one.nozzle().equals(name)).toList();
            choices.add(choice(name, chart, gpm, carrier, spacing, limits));
        }
        choices.sort(Comparator.comparing((LoadCard.NozzleChoice one) -> !one.fits())
                .thenComparing(one -> Math.abs(one.psi() - RATED_PSI)));
        if (choices.stream().noneMatch(LoadCard.NozzleChoice::fits)) {
            find(
                    Weight.MIND,
                    "No nozzle on file gives " + Numbers.plain(carrier) + " gal/ac at "
                            + Numbers.plain(driven.speedMph())
                            + " mph in a droplet class that all labels allow: change speed, volume or nozzle.",
                    "sheet nozzles");
        }
        return choices;
    }

    /** The product whose label names other nozzles only; empty where this one may be used. */
    private Optional<String> namesOthers(String nozzle) {
        return labelLimits(LabelLimit.Kind.NOZZLES)
                .filter(limit -> limit.names().stream().noneMatch(name -> name.equalsIgnoreCase(nozzle)))
                .map(LabelLimit::product)
                .findFirst();
    }

    private Stream<LabelLimit> labelLimits(LabelLimit.Kind kind) {
        return season.shelf().labels().limits().stream()
                .filter(limit -> limit.kind() == kind
                        && trip.products().contains(limit.product())
                        && (limit.crop() == null || limit.crop() == trip.field().crop()));
    }

    private LoadCard.NozzleChoice choice(
            String name, List<Nozzle> chart, double gpm, double carrier, double spacing, LoadCard.Limits limits) {
        String size = chart.get(0).size();
        double rated = NozzleSize.ratedGpm(size);
        double psi = NozzlePressure.psi(gpm, rated, RATED_PSI);
        Nozzle at = chart.stream()
                .filter(line -> psi >= line.lowPsi() - .5 && psi <= line.highPsi() + .5)
                .findFirst()
                .orElse(null);
        if (at == null) {
            double low = chart.stream().mapToDouble(Nozzle::lowPsi).min().orElseThrow();
            double high = chart.stream().mapToDouble(Nozzle::highPsi).max().orElseThrow();
            return new LoadCard.NozzleChoice(
                    name,
                    size,
                    psi,
                    null,
                    false,
                    "its chart goes from " + Numbers.plain(low) + " to " + Numbers.plain(high) + " psi");
        }
        Droplets found = at.droplets();
        Optional<String> others = namesOthers(name);
        if (others.isPresent()) {
            return new LoadCard.NozzleChoice(
                    name, size, psi, found, false, "the label of " + others.get() + " names other nozzles only");
        }
        if (limits.finest() == null || limits.coarsest() == null) {
            return new LoadCard.NozzleChoice(name, size, psi, found, false, "what the labels ask is not read");
        }
        if (found.compareTo(limits.finest()) < 0) {
            return new LoadCard.NozzleChoice(
                    name,
                    size,
                    psi,
                    found,
                    false,
                    "finer than " + limits.finest().word());
        }
        if (found.compareTo(limits.coarsest()) > 0) {
            return new LoadCard.NozzleChoice(
                    name,
                    size,
                    psi,
                    found,
                    false,
                    "coarser than " + limits.coarsest().word());
        }
        List<Nozzle> allowed = chart.stream()
                .filter(line -> line.droplets().compareTo(limits.finest()) >= 0
                        && line.droplets().compareTo(limits.coarsest()) <= 0)
                .toList();
        double slow = allowed.stream().mapToDouble(Nozzle::lowPsi).min().orElseThrow();
        double fast = allowed.stream().mapToDouble(Nozzle::highPsi).max().orElseThrow();
        return new LoadCard.NozzleChoice(
                name,
                size,
                psi,
                found,
                true,
                "allowed from " + mph(slow, rated, carrier, spacing) + " to " + mph(fast, rated, carrier, spacing)
                        + " mph");
    }

    private static String mph(double psi, double rated, double carrier, double spacing) {
        return Numbers.fixed(BoomFlow.mph(NozzlePressure.waterGpm(psi, rated, RATED_PSI), carrier, spacing), 1);
    }

    private void pump(double gpm, Machine driven, double spacing) {
        Double pump = sprayer == null ? null : sprayer.pumpGpm();
        Double agitation = sprayer == null ? null : sprayer.agitationGpm();
        if (pump == null) {
            find(Weight.LOOK_UP, "What the pump gives is not on file.", "sheet sprayers");
            return;
        }
        double needed = gpm * driven.widthFt() * INCHES_PER_FOOT / spacing + (agitation == null ? 0 : agitation);
        if (needed > pump) {
            find(
                    Weight.MIND,
                    "Nozzles and agitation take " + Numbers.fixed(needed, 0) + " gal/min, and the pump gives "
                            + Numbers.plain(pump) + ".",
                    "sheet sprayers");
        }
    }

    private LoadCard.@Nullable Catch catching(@Nullable Double carrier) {
        Machine driven = machine;
        Double spacing = sprayer == null ? null : sprayer.spacingIn();
        if (!trip.sprayed() || driven == null || carrier == null || spacing == null) {
            return null;
        }
        double gpm = BoomFlow.gpm(carrier, driven.speedMph(), spacing);
        double course = CatchCourse.courseFeet(spacing);
        return new LoadCard.Catch(gpm, gpm * OZ_PER_GAL, course, course * 60 / (driven.speedMph() * 88));
    }

    private List<LoadCard.RowRate> granules() {
        List<LoadCard.RowRate> rates = new ArrayList<>();
        for (Pass pass : trip.passes()) {
            Amount rate = pass.rate();
            String product = pass.product();
            if (!trip.granules()
                    || rate == null
                    || product == null
                    || rate.unit().dimension() != Dimension.MASS) {
                continue;
            }
            for (double row : ROWS_IN) {
                rates.add(new LoadCard.RowRate(
                        product,
                        row,
                        RowGranules.ozPer1000Feet(rate.in(FarmUnit.LB).value(), row)));
            }
        }
        return rates;
    }

    // ---- people and afterwards ----

    private @Nullable List<String> wear() {
        Set<String> all = new TreeSet<>();
        boolean unread = false;
        for (String product : trip.products()) {
            Set<String> worn =
                    season.shelf().labels().care(product).map(ProductCare::wear).orElse(null);
            if (worn == null) {
                unread = true;
                find(Weight.LOOK_UP, "What handlers of " + product + " must wear has not been read.", "its label");
            } else {
                all.addAll(worn);
            }
        }
        Set<String> gear = season.work().crew().gear();
        if (gear != null) {
            List<String> lacking =
                    all.stream().filter(piece -> !gear.contains(piece)).toList();
            if (!lacking.isEmpty()) {
                find(Weight.BARRED, "Not at hand: " + String.join(", ", lacking) + ".", "sheet crew");
            }
        }
        return unread ? null : List.copyOf(all);
    }

    private @Nullable Integer reentry() {
        Integer longest = 0;
        for (String product : trip.products()) {
            Integer hours = season.shelf()
                    .labels()
                    .terms(product, trip.field().crop())
                    .map(UseTerms::reentryHours)
                    .orElse(null);
            if (hours == null) {
                find(
                        Weight.LOOK_UP,
                        "The restricted-entry interval of " + product + " has not been read.",
                        "its label");
                longest = null;
            } else if (longest != null) {
                longest = Math.max(longest, hours);
            }
        }
        return longest;
    }

    private List<String> cleanOut() {
        List<String> lines = new ArrayList<>();
        for (String product : trip.products()) {
            String words = tank.mixing(product).map(MixCare::cleanOut).orElse(null);
            if (words == null) {
                find(Weight.LOOK_UP, "How the tank is cleaned after " + product + " has not been read.", "its label");
                lines.add(product + ": look up on the label.");
            } else {
                lines.add(product + ": " + words + ".");
            }
        }
        Sprayer known = sprayer;
        if (known != null) {
            Double left = known.mostLeftGal();
            double residue = left == null || left == 0 ? USUAL_RESIDUE_GAL : left;
            double rinse = known.tankGal() * RINSE_SHARE;
            lines.add("Three rinses of " + Numbers.fixed(rinse, 0) + " gal each leave 1 part in "
                    + Numbers.fixed(Math.rint(1 / JarTest.leftAfter(residue, rinse, 3) / 10) * 10, 0) + " of what "
                    + Numbers.plain(residue)
                    + " gal held; flush boom ends, screens and lines each time. Never mix bleach with"
                    + " ammonia.");
        }
        return lines;
    }

    private String sentence(LoadCard.@Nullable Loads loads, List<Finding> sorted) {
        String barred = sorted.stream().anyMatch(one -> one.weight() == Weight.BARRED) ? "Barred: do not mix. " : "";
        if (trip.granules()) {
            return barred + "Granules with the planter on " + acres(trip.acres()) + " ac.";
        }
        if (loads == null) {
            return barred + "Loads are unknown: "
                    + sorted.stream()
                            .filter(one -> one.weight() == Weight.LOOK_UP)
                            .map(Finding::says)
                            .findFirst()
                            .orElse("something is not on file.");
        }
        String full = loads.full() == 0
                ? ""
                : loads.full() + (loads.full() == 1 ? " full load of " : " full loads of ")
                        + Numbers.fixed(loads.fullGal(), 0) + " gal on " + acres(loads.fullAcres()) + " ac"
                        + (loads.full() == 1 ? "" : " each");
        String last = loads.lastAcres() == 0
                ? ""
                : (full.isEmpty() ? "One load of " : ", and a last one of ") + Numbers.fixed(loads.lastGal(), 0)
                        + " gal on " + acres(loads.lastAcres()) + " ac";
        return barred + full + last + ".";
    }

    private static String acres(double acres) {
        return Numbers.fixed(acres, acres == Math.rint(acres) ? 0 : 1);
    }
}
