package plumbrow.advice.nextseason;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.Chances;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.means.Means;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.prices.OldPrice;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.WeedBook;

/**
 * A season that begins where the last one ended.
 *
 * <p>Farms, fields, soil, shelf, labels, people, machines and what lies around come along. Each field's history has one more year.
 * A field that keeps its crop keeps its programs, pests and assumptions, with days a year on; one that turns to another crop takes
 * those of the latest season in which it carried that crop, else has none yet. What was counted in an earlier season says so.
 * Prices are marked as old. What changes from year to year and nobody has looked at since is unknown again: bee yards,
 * sensitive crops and organic fields around, what follows this crop, stands.
 *
 * @param season as it begins, with the lines of the log that the last season knew
 * @param turns what each field carried and carries, in the order of the season
 * @param stock what was in the shed and is
 * @param old prices that came along
 * @param cautions what has to be looked at, a sentence each
 */
public record NextSeason(
        Season season, List<Turn> turns, List<Stock> stock, List<OldPrice> old, List<String> cautions) {
    public NextSeason {
        turns = List.copyOf(turns);
        stock = List.copyOf(stock);
        old = List.copyOf(old);
        cautions = List.copyOf(cautions);
    }

    /**
     * A field from one season to the next.
     *
     * @param was what it carried, as it goes into its history
     * @param crop what it is to carry
     * @param why who or what says so
     * @param programsOf harvest year of the season that its programs and pests come from; null where it has none yet
     * @param programs how many
     */
    public record Turn(
            String field,
            CropYear was,
            Crop crop,
            String why,
            @Nullable Integer programsOf,
            int programs) {}

    /** What lies around and is not the same from year to year. */
    private static final Set<FeatureKind> OF_A_YEAR =
            Set.of(FeatureKind.BEE_YARD, FeatureKind.SENSITIVE_CROP, FeatureKind.ORGANIC_FIELD);

    /**
     * Begins a season.
     *
     * @param last the latest season, as it was put in
     * @param earlier those before it, in any order
     * @throws IllegalArgumentException with a sentence, where the year, the day or a crop can't be
     */
    public static NextSeason of(Season last, List<Season> earlier, BeginAsked asked) {
        demand(last, asked);
        return new Maker(last, earlier, asked).make();
    }

    private static void demand(Season last, BeginAsked asked) {
        if (asked.year() <= last.year() || asked.year() > last.year() + 5) {
            throw new IllegalArgumentException("Found the year " + asked.year() + ", expected one after " + last.year()
                    + ", the latest season of the book, and no more than five years on.");
        }
        LocalDate first = LocalDate.of(asked.year() - 1, 1, 1);
        LocalDate end = LocalDate.of(asked.year(), 12, 31);
        if (asked.asOf().isBefore(first) || asked.asOf().isAfter(end)) {
            throw new IllegalArgumentException("Found " + asked.asOf() + ", expected a day of the season of "
                    + asked.year() + ", between " + first + " and " + end + ".");
        }
        if (asked.asOf().isBefore(last.asOf())) {
            throw new IllegalArgumentException("Found " + asked.asOf() + ", expected a day not before " + last.asOf()
                    + ", the day of the last season's assumptions.");
        }
        for (String field : asked.crops().keySet()) {
            if (last.field(field).isEmpty()) {
                throw new IllegalArgumentException(
                        "There is no field called “" + field + "” in " + last.year() + "; its crop can't be set.");
            }
        }
    }

    private static final class Maker {
        private final Season last;
        private final List<Season> earlier;
        private final BeginAsked asked;
        private final List<Turn> turns = new ArrayList<>();
        private final List<String> cautions = new ArrayList<>();
        private final Map<String, Season> from = new HashMap<>();

        Maker(Season last, List<Season> earlier, BeginAsked asked) {
            this.last = last;
            this.earlier = earlier.stream()
                    .filter(season -> season.year() < last.year())
                    .sorted(Comparator.comparingInt(Season::year).reversed())
                    .toList();
            this.asked = asked;
        }

        NextSeason make() {
            List<Field> fields = last.fields().stream().map(this::turned).toList();
            ShedStock shed = ShedStock.of(last, asked.asOf());
            List<CropYear> history = new ArrayList<>(last.history());
            turns.forEach(turn -> history.add(turn.was()));
            Season next = new Season(
                    asked.year(),
                    asked.asOf(),
                    last.adviser(),
                    last.farms(),
                    fields,
                    history,
                    last.shelf(),
                    pests(),
                    programs(),
                    assumptions(fields),
                    ground(),
                    work());
            next = next.withShelf(last.shelf()
                    .withProducts(shed.products().stream().map(this::priced).toList()));
            say(shed);
            return new NextSeason(next, turns, shed.changed(), OldPrice.all(next), cautions);
        }

        private Field turned(Field field) {
            Crop said = asked.crops().get(field.name());
            NextCropRule rule = said == null ? NextCropRule.of(last, field) : new NextCropRule(said, "as you say");
            Season source = source(field.name(), rule.crop());
            if (source != null) {
                from.put(field.name(), source);
            }
            turns.add(new Turn(
                    field.name(),
                    harvested(field),
                    rule.crop(),
                    rule.why(),
                    source == null ? null : source.year(),
                    source == null ? 0 : source.programs(field.name()).size()));
            return field.growing(rule.crop());
        }

        /** The latest season in which a field carried a crop; null where the book has none. */
        private @Nullable Season source(String field, Crop crop) {
            return Stream.concat(Stream.of(last), earlier.stream())
                    .filter(season -> season.field(field).map(Field::crop).orElse(null) == crop)
                    .findFirst()
                    .orElse(null);
        }

        /** What a field carried: what was planted last by the log, else what the season says. */
        private CropYear harvested(Field field) {
            Optional<Seed> planted = last.work().log(field.name()).stream()
                    .filter(line ->
                            line.date().getYear() == last.year() || line.date().isAfter(lastAutumn()))
                    .sorted(Comparator.comparing(Done::date).reversed())
                    .flatMap(line -> last.shelf().seed(line.product()).stream())
                    .findFirst();
            String crop = planted.map(Seed::crop).orElse(field.crop()).word();
            List<String> tolerant =
                    planted.map(seed -> seed.tag().herbicideTraits()).orElse(null);
            return new CropYear(field.name(), last.year(), crop, asked.yields().get(field.name()), tolerant);
        }

        /** From then on a seed is of the last season: wheat is drilled in the autumn before. */
        private LocalDate lastAutumn() {
            return LocalDate.of(last.year() - 1, 7, 31);
        }

        private int yearsOn(Season source) {
            return asked.year() - source.year();
        }

        private List<Program> programs() {
            List<Program> all = new ArrayList<>();
            for (Turn turn : turns) {
                Season source = from.get(turn.field());
                List<Program> there = source == null
                        ? List.of()
                        : source.programs(turn.field()).stream()
                                .filter(this::known)
                                .toList();
                if (source != null && there.stream().anyMatch(Program::baseline)) {
                    there.forEach(program -> all.add(later(program, yearsOn(source))));
                }
            }
            return all;
        }

        /** Whether the shelf still has all that a program of an earlier season takes. */
        private boolean known(Program program) {
            return program.passes().stream()
                    .map(Pass::product)
                    .filter(Objects::nonNull)
                    .allMatch(product -> last.shelf().product(product).isPresent());
        }

        private static Program later(Program program, int years) {
            return new Program(
                    program.field(),
                    program.name(),
                    program.baseline(),
                    program.refuge(),
                    program.note(),
                    program.passes().stream()
                            .map(pass -> pass.on(
                                    pass.date() == null ? null : pass.date().plusYears(years), pass.rate()))
                            .toList());
        }

        private Pests pests() {
            List<InsectPressure> insects = new ArrayList<>();
            List<WeedPressure> weeds = new ArrayList<>();
            List<CropTiming> crops = new ArrayList<>();
            List<TillageWork> tillage = new ArrayList<>();
            Set<String> kept = new HashSet<>();
            programs().forEach(program -> kept.add(program.field() + "\n" + program.name()));
            for (Turn turn : turns) {
                Season source = from.get(turn.field());
                if (source == null) {
                    continue;
                }
                Pests there = source.pests();
                WeedBook book = there.weedBook();
                there.insects().stream()
                        .filter(one -> one.field().equals(turn.field()))
                        .map(one -> seen(one, source.year()))
                        .forEach(insects::add);
                there.weeds().stream()
                        .filter(one -> one.field().equals(turn.field()))
                        .map(one -> seen(one, source.year()))
                        .forEach(weeds::add);
                book.crops().stream()
                        .filter(one -> one.field().equals(turn.field()))
                        .map(one -> later(one, yearsOn(source)))
                        .forEach(crops::add);
                book.tillage().stream()
                        .filter(one -> kept.contains(one.field() + "\n" + one.program()))
                        .filter(one -> one.field().equals(turn.field()))
                        .forEach(tillage::add);
            }
            Pests pests = last.pests();
            WeedBook book = pests.weedBook();
            return new Pests(
                    insects,
                    pests.traitDoubts(),
                    weeds,
                    pests.resistance(),
                    new WeedBook(
                            book.climate(), book.days(), crops, book.likes(), book.ratings(), tillage, book.floor()));
        }

        private static CropTiming later(CropTiming one, int years) {
            return new CropTiming(
                    one.field(),
                    one.up() == null ? null : one.up().plusYears(years),
                    one.closed() == null ? null : one.closed().plusYears(years),
                    one.daysLate(),
                    one.source());
        }

        private static InsectPressure seen(InsectPressure one, int year) {
            return new InsectPressure(
                    one.field(),
                    one.insect(),
                    one.measure(),
                    one.pressure(),
                    one.lossPerUnitPct(),
                    one.neighbourShare(),
                    one.sample(),
                    one.scouted(),
                    asOf(one.source(), year));
        }

        private static WeedPressure seen(WeedPressure one, int year) {
            return new WeedPressure(
                    one.field(),
                    one.weed(),
                    one.densityPerSquareMetre(),
                    one.lossPerPlantPct(),
                    one.mostLossPct(),
                    asOf(one.source(), year));
        }

        private static String asOf(String source, int year) {
            String mark = "As of " + year + ", not looked at since. ";
            String rest = source.replaceFirst("^As of \\d{4}, not looked at since\\. ", "");
            boolean older = !rest.equals(source);
            String whole = older ? source : mark + rest;
            return whole.substring(0, Math.min(1000, whole.length()));
        }

        private List<AssumptionLine> assumptions(List<Field> fields) {
            List<AssumptionLine> lines = new ArrayList<>();
            last.assumptions().stream()
                    .filter(line -> line.field() == null)
                    .map(line -> priced(line, last.year()))
                    .forEach(lines::add);
            for (Field field : fields) {
                Season source = from.get(field.name());
                if (source != null) {
                    source.assumptions().stream()
                            .filter(line -> field.name().equals(line.field()))
                            .map(line -> priced(line, source.year()))
                            .forEach(lines::add);
                }
            }
            return lines;
        }

        private AssumptionLine priced(AssumptionLine line, int of) {
            return OldPrice.priced(line.quantity())
                    ? new AssumptionLine(
                            line.crop(),
                            line.field(),
                            line.quantity(),
                            line.distribution(),
                            OldPrice.marked(
                                    line.source(),
                                    of,
                                    Chances.of(line.distribution()).mean(),
                                    asked.year()))
                    : line;
        }

        /** Saved seed has no price of its own: its cost is worked out from the grain. */
        private Product priced(Product product) {
            boolean saved = last.shelf().seed(product.name()).map(Seed::saved).isPresent();
            return saved
                    ? product
                    : ShedStock.sourced(
                            product, OldPrice.marked(product.source(), last.year(), product.priceUsd(), asked.year()));
        }

        private Ground ground() {
            Ground ground = last.ground();
            List<Looked> looked = new ArrayList<>();
            for (Looked one : ground.looked()) {
                if (one.kind() == null) {
                    for (FeatureKind kind : FeatureKind.values()) {
                        if (!OF_A_YEAR.contains(kind)) {
                            looked.add(new Looked(one.field(), kind));
                        }
                    }
                } else if (!OF_A_YEAR.contains(one.kind())) {
                    looked.add(one);
                }
            }
            // What lies on the ground is this year's.
            List<FieldLand> lands = ground.lands().stream()
                    .map(land ->
                            new FieldLand(land.field(), land.erodible(), null, land.groundWaterFt(), land.source()))
                    .toList();
            return new Ground(
                    looked.stream().distinct().toList(), ground.features(), ground.alsoIn(), List.of(), lands);
        }

        private Work work() {
            Set<String> kept = new HashSet<>();
            programs().forEach(program -> kept.add(program.field() + "\n" + program.name()));
            List<SprayPlan> plans = new ArrayList<>();
            for (Turn turn : turns) {
                Season source = from.get(turn.field());
                if (source != null) {
                    source.work().sprayPlans().stream()
                            .filter(plan -> plan.field().equals(turn.field())
                                    && kept.contains(plan.field() + "\n" + plan.program()))
                            .map(this::byKnown)
                            .forEach(plans::add);
                }
            }
            Means means = last.work().means();
            int years = asked.year() - last.year();
            return new Work(
                    plans,
                    last.work().crew(),
                    last.work().log(),
                    new Means(
                            means.machines(),
                            means.windows().stream()
                                    .map(one -> new WorkWindow(
                                            one.farm(),
                                            one.name(),
                                            one.kind(),
                                            one.from().plusYears(years),
                                            one.until().plusYears(years),
                                            one.fitDays(),
                                            one.hoursPerDay(),
                                            one.source()))
                                    .toList(),
                            means.limits(),
                            means.breaks().stream()
                                    .map(one -> new PriceBreak(
                                            one.farm(),
                                            one.product(),
                                            one.fromQuantity(),
                                            one.priceUsd(),
                                            OldPrice.marked(one.source(), last.year(), one.priceUsd(), asked.year())))
                                    .toList(),
                            means.supplies(),
                            means.tank()));
        }

        /** Who sprayed in an earlier season may no longer be among the people. */
        private SprayPlan byKnown(SprayPlan plan) {
            String who = plan.applicator();
            return who == null || last.work().crew().person(who).isPresent()
                    ? plan
                    : new SprayPlan(
                            plan.field(),
                            plan.program(),
                            plan.pass(),
                            plan.tank(),
                            plan.method(),
                            plan.carrierGalPerAcre(),
                            plan.droplets(),
                            plan.boomIn(),
                            plan.driftReductionPct(),
                            plan.cropStage(),
                            plan.cropHeightIn(),
                            plan.weedHeightIn(),
                            plan.bloom(),
                            null);
        }

        private void say(ShedStock shed) {
            long bare = turns.stream().filter(turn -> turn.programsOf() == null).count();
            if (bare > 0) {
                cautions.add(bare + (bare == 1 ? " field turns" : " fields turn")
                        + " to a crop that the book has never had there: programs, pests and assumptions of its own are to be"
                        + " entered.");
            }
            cautions.add("What follows in " + (asked.year() + 1)
                    + " is not known yet; plant-back limits of labels ask for it.");
            if (!last.ground().looked().isEmpty()) {
                cautions.add(
                        "Bee yards, sensitive crops and organic fields around are to be looked for again; those noted stay.");
            }
            if (!last.work().means().supplies().isEmpty()) {
                cautions.add("What can be bought of a product came along as it was; ask the dealer.");
            }
            cautions.addAll(shed.cautions());
        }
    }
}
