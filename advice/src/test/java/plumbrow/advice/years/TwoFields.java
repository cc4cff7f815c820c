package plumbrow.advice.years;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.ReadWhole;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.Sure;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
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
import plumbrow.advice.shelf.Trait;

/** A corn field and a soybean field beside it, built up by what a test needs. */
final class TwoFields {
    static final String CORN = "Creek 100";
    static final String BEANS = "Hill 40";
    private static final Distribution NONE = new Distribution.Fixed(0);

    private final List<Product> products = new ArrayList<>();
    private final List<Seed> seeds = new ArrayList<>();
    private final List<Trait> traits = new ArrayList<>();
    private final List<ActiveContent> actives = new ArrayList<>();
    private final List<LabelUse> uses = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();
    private final List<InsectPressure> insects = new ArrayList<>();
    private final List<TraitDoubt> doubts = new ArrayList<>();
    private final List<WeedPressure> weeds = new ArrayList<>();
    private final List<KnownResistance> resistance = new ArrayList<>();
    private final List<ActiveLimit> limits = new ArrayList<>();
    private final List<Program> programs = new ArrayList<>();

    TwoFields() {
        seed("bare corn", Crop.CORN, 0);
        seed("beans", Crop.SOYBEAN, 0);
    }

    TwoFields seed(String name, Crop crop, double blendPct, String... carried) {
        products.add(new Product(name, ProductKind.SEED, 80, FarmUnit.UNIT, null, null, null, null, null, "invented"));
        RefugeRule.Form form = carried.length == 0 ? RefugeRule.Form.NONE : RefugeRule.Form.BLEND;
        seeds.add(new Seed(
                name,
                crop,
                crop == Crop.CORN ? 32_000.0 : 1_000_000.0,
                null,
                95,
                new Distribution.Fixed(100),
                List.of(carried),
                blendPct,
                new RefugeRule(form, blendPct, null, null, "invented tag"),
                NONE,
                new Distribution.Fixed(100),
                null,
                SeedRights.UNASKED));
        return this;
    }

    TwoFields trait(String name, double control) {
        traits.add(new Trait(name, name, "corn rootworm", Sure.of(control), "invented"));
        return this;
    }

    TwoFields rootworm(double nodes) {
        insects.add(new InsectPressure(
                CORN,
                "corn rootworm",
                InsectPressure.Measure.NODE_INJURY,
                new Distribution.Fixed(nodes),
                Sure.of(15),
                0,
                null,
                null,
                "invented"));
        return this;
    }

    TwoFields doubt(String group, double chance, double ifFailed) {
        doubts.add(new TraitDoubt(CORN, group, "corn rootworm", chance, ifFailed, "invented"));
        return this;
    }

    /** A herbicide of one active that takes a fixed share of a weed at 1 qt. */
    TwoFields herbicide(String name, String active, String weed, double control) {
        return herbicide(name, active, weed, Sure.of(control));
    }

    TwoFields herbicide(String name, String active, String weed, Distribution control) {
        products.add(new Product(
                name,
                ProductKind.HERBICIDE,
                10,
                FarmUnit.QT,
                null,
                "0-0",
                List.of("IA"),
                List.of(),
                LocalDate.of(2026, 1, 5),
                "invented label"));
        actives.add(new ActiveContent(name, active, 4, FarmUnit.GAL, null));
        for (Crop crop : new Crop[] {Crop.CORN, Crop.SOYBEAN}) {
            uses.add(new LabelUse(
                    name,
                    crop,
                    new Amount(.5, FarmUnit.QT),
                    new Amount(2, FarmUnit.QT),
                    Ask.NO,
                    new Amount(4, FarmUnit.QT),
                    3,
                    30,
                    "invented label p. 3"));
        }
        controls.add(new Control(name, weed, new Amount(1, FarmUnit.QT), control, "invented"));
        return this;
    }

    /** A program with a block of bare corn beside the seed. */
    TwoFields block(String name, boolean baseline, String seed, double refugePct) {
        LocalDate day = LocalDate.of(2026, 5, 1);
        programs.add(new Program(
                CORN,
                name,
                baseline,
                new RefugePlan(null, null),
                "",
                List.of(
                        new Pass(
                                1, PassKind.SEED, day, seed, new Amount(1, FarmUnit.UNIT), 100 - refugePct, 0, NONE, 0),
                        new Pass(
                                2,
                                PassKind.SEED,
                                day,
                                "bare corn",
                                new Amount(1, FarmUnit.UNIT),
                                refugePct,
                                0,
                                NONE,
                                0))));
        return this;
    }

    TwoFields weed(String weed, double plantsM2) {
        weeds.add(new WeedPressure(CORN, weed, new Distribution.Fixed(plantsM2), Sure.of(1), 50, "invented"));
        return this;
    }

    TwoFields resists(String weed, String group) {
        resistance.add(new KnownResistance(CORN, weed, group, "invented"));
        return this;
    }

    TwoFields program(String name, boolean baseline, String seed, String... sprays) {
        return on(CORN, name, baseline, seed, sprays);
    }

    TwoFields beans(String name, String... sprays) {
        return on(BEANS, name, true, "beans", sprays);
    }

    private TwoFields on(String field, String name, boolean baseline, String seed, String... sprays) {
        List<Pass> passes = new ArrayList<>();
        LocalDate day = LocalDate.of(2026, 5, 1);
        passes.add(new Pass(1, PassKind.SEED, day, seed, new Amount(1, FarmUnit.UNIT), 100, 0, NONE, 0));
        for (String spray : sprays) {
            passes.add(new Pass(
                    passes.size() + 1,
                    PassKind.SPRAY,
                    day.plusDays(20L * passes.size()),
                    spray,
                    new Amount(1, FarmUnit.QT),
                    100,
                    0,
                    NONE,
                    0));
        }
        programs.add(new Program(field, name, baseline, new RefugePlan(null, null), "", passes));
        return this;
    }

    /** With what the gates ask of a herbicide beside its rates: most of its active in a season, and the day of harvest. */
    TwoFields lawful() {
        for (ActiveContent active : actives) {
            limits.add(new ActiveLimit(
                    active.product(),
                    Crop.CORN,
                    active.ingredient(),
                    9.0,
                    ActiveLimit.Basis.ACTIVE_INGREDIENT,
                    "invented label p. 2"));
        }
        programs.replaceAll(program -> {
            List<Pass> passes = new ArrayList<>(program.passes());
            LocalDate harvest = LocalDate.of(2026, 10, 14);
            passes.add(new Pass(passes.size() + 1, PassKind.HARVEST, harvest, null, null, 100, 0, NONE, 0));
            return new Program(
                    program.field(), program.name(), program.baseline(), program.refuge(), program.note(), passes);
        });
        return this;
    }

    Season season() {
        List<AssumptionLine> assumptions = new ArrayList<>();
        for (Crop crop : new Crop[] {Crop.CORN, Crop.SOYBEAN}) {
            boolean corn = crop == Crop.CORN;
            assumptions.add(new AssumptionLine(
                    crop, null, AssumptionQuantity.PRICE, new Distribution.Normal(corn ? 4.5 : 11, .1), "invented"));
            assumptions.add(new AssumptionLine(
                    crop, null, AssumptionQuantity.YIELD, new Distribution.Normal(corn ? 200 : 55, .15), "invented"));
            assumptions.add(new AssumptionLine(
                    crop,
                    null,
                    AssumptionQuantity.BEST_STAND,
                    new Distribution.Fixed(corn ? 32_000 * 0.95 : 12_000),
                    "invented: every stand is full"));
        }
        return ReadWhole.season(new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Adviser",
                List.of(new Farm("Home", "A grower", 1, 1)),
                List.of(field(CORN, Crop.CORN), field(BEANS, Crop.SOYBEAN)),
                List.of(),
                new Shelf(products, seeds, traits, actives, uses, limits, controls),
                new Pests(insects, doubts, weeds, resistance),
                programs,
                assumptions));
    }

    private static Field field(String name, Crop crop) {
        return new Field(name, "Home", 100, null, "IA", "Adams", crop, Texture.LOAM, 3.0, 6.5, 1.0);
    }
}
