package plumbrow.advice.farmplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.ReadWhole;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.means.FarmLimit;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.means.Means;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Shelf;

/**
 * Corn fields of 100 acres with one weed and one herbicide at $10 a quart that takes nearly all of it: spraying pays on each. Seed
 * costs $80 an acre, the trip $8. All values are single.
 */
final class SmallFarm {
    static final String FARM = "Home";
    static final String OTHER = "Beside";
    static final String HERBICIDE = "Green";
    private static final Distribution NONE = new Distribution.Fixed(0);

    private final List<Field> fields = new ArrayList<>();
    private final List<Program> programs = new ArrayList<>();
    private final List<Done> log = new ArrayList<>();
    private final List<PriceBreak> breaks = new ArrayList<>();
    private final List<Machine> machines = new ArrayList<>();
    private final List<WorkWindow> windows = new ArrayList<>();
    private final List<FarmLimit> limits = new ArrayList<>();
    private @Nullable Amount onHand;

    /** A field sprayed at so many quarts an acre or not at all; the label allows 0.5 to 2. */
    SmallFarm field(String name, double qt) {
        return fieldOf(FARM, name, qt);
    }

    /** The same of another farm. */
    SmallFarm fieldOf(String farm, String name, double qt) {
        bareField(farm, name);
        program(name, "sprayed", qt);
        return this;
    }

    /** A field without a program. */
    SmallFarm bareField(String name) {
        return bareField(FARM, name);
    }

    private SmallFarm bareField(String farm, String name) {
        fields.add(new Field(name, farm, 100, null, "IA", "Alder", Crop.CORN, Texture.LOAM, 3.0, 6.5, 1.0));
        return this;
    }

    /** Adds the choice of leaving the spray out. */
    SmallFarm withBare(String name) {
        program(name, "bare", 0);
        return this;
    }

    private void program(String field, String name, double qt) {
        List<Pass> passes = new ArrayList<>();
        LocalDate day = LocalDate.of(2026, 5, 1);
        passes.add(new Pass(1, PassKind.SEED, day, "corn", new Amount(1, FarmUnit.UNIT), 100, 0, NONE, 0));
        if (qt > 0) {
            passes.add(new Pass(
                    2, PassKind.SPRAY, day.plusDays(20), HERBICIDE, new Amount(qt, FarmUnit.QT), 100, 8, NONE, 0));
        }
        passes.add(
                new Pass(passes.size() + 1, PassKind.HARVEST, LocalDate.of(2026, 10, 14), null, null, 100, 0, NONE, 0));
        boolean first = programs.stream().noneMatch(one -> one.field().equals(field));
        programs.add(new Program(field, name, first, new RefugePlan(null, null), "", passes));
    }

    /** The spray of a field as done, a day after its plan. */
    SmallFarm done(String field, double qt) {
        log.add(new Done(
                field, LocalDate.of(2026, 5, 22), HERBICIDE, new Amount(qt, FarmUnit.QT), 100, null, "log book"));
        return this;
    }

    SmallFarm onHand(Amount amount) {
        onHand = amount;
        return this;
    }

    SmallFarm priceBreak(double from, double usd) {
        breaks.add(new PriceBreak(FARM, HERBICIDE, from, usd, "invented"));
        return this;
    }

    /** A sprayer that does 20 acres an hour, and so many hours in May for it. */
    SmallFarm sprayerHours(double hours) {
        machines.add(new Machine(FARM, "sprayer", MachineKind.SPRAYER, 33, 10, 50, "invented"));
        windows.add(new WorkWindow(
                FARM,
                "May",
                MachineKind.SPRAYER,
                LocalDate.of(2026, 5, 10),
                LocalDate.of(2026, 5, 31),
                1,
                hours,
                "invented"));
        return this;
    }

    SmallFarm money(double usd) {
        limits.add(new FarmLimit(FARM, usd, null, null, .5, "invented"));
        return this;
    }

    FarmPlan plan() {
        return plans().get(0);
    }

    List<FarmPlan> plans(String... farms) {
        return FarmPlanner.of(season(), List.of(farms), new PlanOptions(100, 3, false));
    }

    /** The plans of all farms, with those that are known. */
    List<FarmPlan> plans(Map<String, KnownPlan> known) {
        return FarmPlanner.of(season(), List.of(), new PlanOptions(100, 3, false), known);
    }

    private Season season() {
        Season season = ReadWhole.season(new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Adviser",
                List.of(new Farm(FARM, "A grower", 1, 1), new Farm(OTHER, "A neighbour", 1, 1)),
                fields,
                List.of(),
                new Shelf(
                        List.of(
                                product("corn", ProductKind.SEED, 80, FarmUnit.UNIT, null),
                                product(HERBICIDE, ProductKind.HERBICIDE, 10, FarmUnit.QT, onHand)),
                        List.of(seed()),
                        List.of(),
                        List.of(new ActiveContent(HERBICIDE, "atrazine", 4, FarmUnit.GAL, null)),
                        List.of(new LabelUse(
                                HERBICIDE,
                                Crop.CORN,
                                new Amount(.5, FarmUnit.QT),
                                new Amount(2, FarmUnit.QT),
                                Ask.NO,
                                new Amount(4, FarmUnit.QT),
                                3,
                                30,
                                "invented label p. 3")),
                        List.of(new ActiveLimit(
                                HERBICIDE,
                                Crop.CORN,
                                "atrazine",
                                2.5,
                                ActiveLimit.Basis.ACTIVE_INGREDIENT,
                                "invented label p. 2")),
                        List.of(new Control(
                                HERBICIDE,
                                "waterhemp",
                                new Amount(1, FarmUnit.QT),
                                new Distribution.Fixed(.95),
                                "invented"))),
                new Pests(
                        List.of(),
                        List.of(),
                        fields.stream()
                                .map(field -> new WeedPressure(
                                        field.name(), "waterhemp", new Distribution.Fixed(20), 1, 50, "invented"))
                                .toList(),
                        List.of()),
                programs,
                List.of(
                        new AssumptionLine(
                                Crop.CORN, null, AssumptionQuantity.PRICE, new Distribution.Fixed(4), "invented"),
                        new AssumptionLine(
                                Crop.CORN, null, AssumptionQuantity.YIELD, new Distribution.Fixed(200), "invented"))));
        Work work = season.work();
        return season.withPrograms(
                season.programs(),
                new Work(work.sprayPlans(), work.crew(), log, new Means(machines, windows, limits, breaks, List.of())));
    }

    private static Product product(String name, ProductKind kind, double usd, FarmUnit unit, @Nullable Amount onHand) {
        boolean seed = kind == ProductKind.SEED;
        return new Product(
                name,
                kind,
                usd,
                unit,
                onHand,
                seed ? null : "0-0",
                seed ? null : List.of("IA"),
                seed ? null : List.of(),
                seed ? null : LocalDate.of(2026, 1, 5),
                "invented");
    }

    private static Seed seed() {
        return new Seed(
                "corn",
                Crop.CORN,
                80_000.0,
                null,
                95,
                List.of(),
                0,
                new RefugeRule(RefugeRule.Form.NONE, null, null, null, "invented tag"),
                NONE,
                new Distribution.Fixed(100),
                null,
                SeedRights.UNASKED);
    }
}
