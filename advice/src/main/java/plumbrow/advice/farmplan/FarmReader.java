package plumbrow.advice.farmplan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.farmplan.FarmPlan.SetAside;
import plumbrow.advice.farmplan.FarmProblem.Good;
import plumbrow.advice.farmplan.FarmProblem.Limit;
import plumbrow.advice.farmplan.FarmProblem.Option;
import plumbrow.advice.farmplan.FarmProblem.Place;
import plumbrow.advice.farmplan.FarmProblem.Tier;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.means.FarmLimit;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.Means;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.FieldSeasons;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.weighing.Bought;
import plumbrow.advice.weighing.CostKind;
import plumbrow.advice.weighing.ProgramDraws;
import plumbrow.advice.weighing.ProgramDraws.Weighed;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.science.figure.Numbers;

/**
 * Reads the plain problem of one farm out of a season.
 *
 * <p>Only programs that may be advised are options. Prices of a crop, what products control and the growing season are the
 * same draws on every field of the farm; what presses on a field is its own. A field without such a program takes its hours
 * and money all the same.
 */
final class FarmReader {
    private final Season season;
    private final Farm farm;
    private final Means means;
    private final FarmLimit limit;
    private final Gates gates;
    private final DrawSource source;
    private final FieldSeasons own;
    private final List<SharedLimit> shared = new ArrayList<>();
    private final List<WorkWindow> windows = new ArrayList<>();
    private final List<Product> goods = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final List<Field> fields = new ArrayList<>();
    private final Map<String, Double> gone;
    private final List<SetAside> aside = new ArrayList<>();
    private boolean refuge;

    /**
     * @param own the season cut by fields, so that no list of all fields is gone through for each program of each of them
     * @param gone what plans of other farms take out of the shed, by product in the unit of its price
     */
    FarmReader(Season season, FieldSeasons own, Farm farm, Gates gates, DrawSource source, Map<String, Double> gone) {
        this.gone = gone;
        this.season = season;
        this.own = own;
        this.farm = farm;
        this.means = season.work().means();
        this.limit = means.limit(farm.name());
        this.gates = gates;
        this.source = source;
    }

    FarmProblem read() {
        limits();
        goods();
        List<Place> places = new ArrayList<>();
        List<Field> ofFarm = season.fields().stream()
                .filter(field -> field.farm().equals(farm.name()))
                .toList();
        List<List<Option>> weighed = ofFarm.parallelStream().map(this::options).toList();
        for (int f = 0; f < ofFarm.size(); f++) {
            Field field = ofFarm.get(f);
            fields.add(field);
            if (!weighed.get(f).isEmpty()) {
                places.add(new Place(field.name(), weighed.get(f)));
            } else {
                setAside(field).ifPresentOrElse(places::add, () -> fields.remove(field));
            }
        }
        return new FarmProblem(
                places,
                shared.stream()
                        .filter(one -> one.kind() == SharedLimit.Kind.HOURS || one.kind() == SharedLimit.Kind.REFUGE)
                        .map(one ->
                                new Limit(one.name(), one.kind() == SharedLimit.Kind.REFUGE ? -one.most() : one.most()))
                        .toList(),
                goods.stream().map(this::good).toList(),
                limit.capitalUsd(),
                limit.leastInWorstTenthUsd());
    }

    private void limits() {
        for (WorkWindow window : means.windows()) {
            List<Machine> machines = machines(window);
            if (window.farm().equals(farm.name()) && !machines.isEmpty()) {
                windows.add(window);
                String with = machines.size() == 1
                        ? "the " + Numbers.plain(machines.get(0).widthFt()) + "-ft "
                                + window.kind().word()
                        : "the " + window.kind().word() + "s";
                shared.add(new SharedLimit(
                        SharedLimit.Kind.HOURS,
                        window.kind().word() + " hours, " + window.name(),
                        window.fitDays() * window.hoursPerDay(),
                        "h",
                        window.hoursPerDay(),
                        "Another day fit for " + with + ", " + window.name() + ","));
            } else if (window.farm().equals(farm.name())) {
                cautions.add("No " + window.kind().word() + " is entered for " + farm.name() + ": the window '"
                        + window.name() + "' does not limit it.");
            }
        }
        double corn = season.fields().stream()
                .filter(field -> field.farm().equals(farm.name()) && field.crop() == Crop.CORN)
                .mapToDouble(Field::acres)
                .sum();
        if (limit.leastRefugePct() != null && corn > 0) {
            refuge = true;
            shared.add(new SharedLimit(
                    SharedLimit.Kind.REFUGE,
                    "refuge, at least",
                    corn * limit.leastRefugePct() / 100,
                    "ac",
                    -10,
                    "Ten acres of refuge less"));
        }
        if (limit.capitalUsd() != null) {
            shared.add(new SharedLimit(
                    SharedLimit.Kind.MONEY, "money", limit.capitalUsd(), "$", 1000, "Another $1,000 of working money"));
        }
        if (limit.leastInWorstTenthUsd() != null) {
            shared.add(new SharedLimit(
                    SharedLimit.Kind.FLOOR,
                    "expected shortfall (mean margin of the worst 10 %), at least",
                    limit.leastInWorstTenthUsd(),
                    "$",
                    -1000,
                    "To ask for $1,000 less expected shortfall"));
        }
    }

    private List<Machine> machines(WorkWindow window) {
        return means.machines().stream()
                .filter(machine -> machine.farm().equals(farm.name()) && machine.kind() == window.kind())
                .toList();
    }

    private void goods() {
        Set<String> named = new HashSet<>();
        means.breaks().stream().filter(one -> one.farm().equals(farm.name())).forEach(one -> named.add(one.product()));
        means.supplies().stream()
                .filter(one -> one.farm().equals(farm.name()))
                .forEach(one -> named.add(one.product()));
        Set<String> used = used(farm.name());
        season.shelf().products().stream()
                .filter(product -> product.onHand() != null && used.contains(product.name()))
                .filter(this::countable)
                .forEach(product -> {
                    named.add(product.name());
                    sharedShed(product);
                });
        season.shelf().products().stream()
                .filter(product -> named.contains(product.name()))
                .forEach(goods::add);
        for (Product product : goods) {
            means.supplies().stream()
                    .filter(one ->
                            one.farm().equals(farm.name()) && one.product().equals(product.name()))
                    .forEach(one -> shared.add(new SharedLimit(
                            SharedLimit.Kind.SUPPLY,
                            product.name(),
                            one.mostQuantity(),
                            product.pricedPer().symbol(),
                            1,
                            "Another " + product.pricedPer().symbol() + " of " + product.name())));
        }
    }

    /** Products that programs of a farm's fields put on and that are bought. */
    private Set<String> used(String ofFarm) {
        Set<String> used = new HashSet<>();
        for (Field field : season.fields()) {
            if (field.farm().equals(ofFarm)) {
                own.programs(field).stream()
                        .flatMap(program -> program.passes().stream())
                        .flatMap(pass -> Optional.ofNullable(pass.product()).stream())
                        .filter(product ->
                                season.shelf().seed(product).map(Seed::saved).isEmpty())
                        .forEach(used::add);
            }
        }
        return used;
    }

    private boolean countable(Product product) {
        Amount hand = product.onHand();
        boolean countable =
                hand != null && hand.unit().dimension() == product.pricedPer().dimension();
        if (hand != null && !countable) {
            cautions.add("The " + hand.text() + " of " + product.name()
                    + " in the shed are not counted: it is priced per "
                    + product.pricedPer().symbol() + ". Enter both in units that can be turned into one another.");
        }
        return countable;
    }

    /** The shelf says how much is in the shed, not in whose: what another plan takes is not there for this one. */
    private void sharedShed(Product product) {
        double taken = gone.getOrDefault(product.name(), 0.0);
        Amount hand = product.onHand();
        if (taken > 1e-6 && hand != null) {
            cautions.add("Of the " + hand.text() + " of " + product.name() + " in the shed "
                    + Numbers.fixed(taken, 0) + " " + product.pricedPer().symbol()
                    + " are planned for farms that stand before " + farm.name()
                    + " in the season; the rest is counted here."
                    + " The shelf does not say whose shed it is.");
        }
    }

    private Good good(Product product) {
        Map<Double, Tier> tiers = new TreeMap<>();
        tiers.put(0.0, new Tier(0, product.priceUsd()));
        means.breaks().stream()
                .filter(one -> one.farm().equals(farm.name()) && one.product().equals(product.name()))
                .forEach(one -> tiers.put(one.fromQuantity(), new Tier(one.fromQuantity(), one.priceUsd())));
        Amount hand = product.onHand();
        return new Good(
                product.name(),
                product.priceUsd(),
                hand != null && hand.unit().dimension() == product.pricedPer().dimension()
                        ? Math.max(0, hand.in(product.pricedPer()).value() - gone.getOrDefault(product.name(), 0.0))
                        : 0,
                means.supplies().stream()
                        .filter(one ->
                                one.farm().equals(farm.name()) && one.product().equals(product.name()))
                        .mapToDouble(one -> one.mostQuantity())
                        .findFirst()
                        .orElse(1e7),
                List.copyOf(tiers.values()));
    }

    private List<Option> options(Field field) {
        ProgramDraws draws = new ProgramDraws(own.of(field), field, source, limit.yieldTie());
        List<Option> options = new ArrayList<>();
        for (Program program : own.programs(field)) {
            if (Gates.standing(gates.check(field, program)).advisable()) {
                Weighed weighed = draws.weigh(program);
                double[] scenarios = weighed.margins().clone();
                for (int k = 0; k < scenarios.length; k++) {
                    scenarios[k] *= field.acres();
                }
                options.add(new Option(
                        program.name(),
                        still(weighed, field),
                        weighed.spentUsdPerAcre() * field.acres(),
                        scenarios,
                        uses(field, program),
                        taken(field, program)));
            }
        }
        return options;
    }

    /** What a program still costs: what is done is paid for, whatever is decided. */
    private static double still(Weighed weighed, Field field) {
        return (weighed.mostUsdPerAcre() - weighed.spentUsdPerAcre()) * field.acres();
    }

    /**
     * What a field without a program that may be advised will take all the same: hours, money and goods of its baseline. What it
     * brings is not counted.
     */
    private Optional<Place> setAside(Field field) {
        Optional<Program> likely = own.programs(field).stream()
                .filter(Program::baseline)
                .findFirst()
                .or(() -> own.programs(field).stream().findFirst());
        if (likely.isEmpty()) {
            cautions.add(
                    field.name() + " is left out, of the limits too: it has no program. What it will need of hours and"
                            + " money is not in this plan.");
            return Optional.empty();
        }
        Program program = likely.get();
        try {
            Weighed weighed = new ProgramDraws(own.of(field), field, source, limit.yieldTie()).weigh(program);
            double cost = still(weighed, field);
            double spent = weighed.spentUsdPerAcre() * field.acres();
            Option option = new Option(
                    program.name(),
                    cost,
                    spent,
                    new double[source.draws()],
                    uses(field, program),
                    taken(field, program));
            aside.add(new SetAside(
                    field.name(),
                    field.acres(),
                    program.name(),
                    cost,
                    "No program of " + field.name() + " may be advised yet. Hours, money and goods of " + program.name()
                            + " are set aside for it; what it brings is not counted."));
            return Optional.of(new Place(field.name(), List.of(option), false));
        } catch (SeasonGapException gap) {
            cautions.add(field.name() + " is left out, of the limits too: none of its programs may be advised, and "
                    + gap.getMessage() + " What it will need of hours and money is not in this plan.");
            return Optional.empty();
        }
    }

    private double[] uses(Field field, Program program) {
        DoneWork done = done(field);
        double[] uses = new double[windows.size() + (refuge ? 1 : 0)];
        for (int w = 0; w < windows.size(); w++) {
            uses[w] = hours(windows.get(w), field, program, done);
        }
        if (refuge) {
            uses[windows.size()] = field.crop() == Crop.CORN ? -refugeAcres(field, program) : 0;
        }
        return uses;
    }

    /** Hours of all machines of the kind together, for what is not done yet; what shares a tank is one trip. */
    private double hours(WorkWindow window, Field field, Program program, DoneWork done) {
        double perHour =
                machines(window).stream().mapToDouble(Machine::acresPerHour).sum();
        Work work = own.of(field).work();
        Map<String, Double> trips = new LinkedHashMap<>();
        for (Pass pass : program.passes()) {
            if (pass.date() != null
                    && window.holds(pass.date())
                    && window.kind().does(pass.kind())
                    && !onSeed(pass)
                    && !done.isDone(program, pass)) {
                String tank = work.sprayPlan(program, pass).map(SprayPlan::tank).orElse("pass " + pass.number());
                trips.merge(tank + " " + pass.date(), pass.sharePct() / 100, Math::max);
            }
        }
        return trips.values().stream().mapToDouble(Double::doubleValue).sum() * field.acres() / perHour;
    }

    private DoneWork done(Field field) {
        return DoneWork.of(own.of(field), field);
    }

    private boolean onSeed(Pass pass) {
        return pass.product() != null
                && season.shelf()
                        .product(pass.product())
                        .filter(product -> product.kind() == ProductKind.SEED_TREATMENT)
                        .isPresent();
    }

    private double refugeAcres(Field field, Program program) {
        double acres = 0;
        for (Pass pass : program.passes()) {
            if (pass.kind() == PassKind.SEED && pass.product() != null && !onSeed(pass)) {
                Seed seed = season.shelf().seed(pass.product()).orElse(null);
                double share = seed == null ? 0 : seed.traits().isEmpty() ? 1 : seed.blendRefugePct() / 100;
                acres += share * field.acres() * pass.sharePct() / 100;
            }
        }
        return acres;
    }

    /** What the operator still buys of each good, for what is not done yet: on shared ground the landlord brings his part. */
    private double[] taken(Field field, Program program) {
        DoneWork done = done(field);
        double[] taken = new double[goods.size()];
        for (int g = 0; g < taken.length; g++) {
            for (Pass pass : program.passes()) {
                if (goods.get(g).name().equals(pass.product()) && !done.isDone(program, pass)) {
                    taken[g] += Bought.perAcre(season, pass).orElse(0)
                            * field.acres()
                            * CostKind.of(goods.get(g)).operatorShare(farm);
                }
            }
        }
        return taken;
    }

    List<SharedLimit> shared() {
        return shared;
    }

    List<Product> products() {
        return goods;
    }

    List<Field> fields() {
        return fields;
    }

    List<SetAside> aside() {
        return aside;
    }

    List<String> cautions() {
        return cautions;
    }
}
