package plumbrow.advice.weighing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.ScoutingSample;
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
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.SeedTag;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.stand.StandCount;

/** A season of one 100-acre corn field, built up by what a test needs. Everything is lawful unless a test says not. */
final class OneField {
    static final String FIELD = "Creek 100";
    static final Distribution NONE = new Distribution.Fixed(0);
    static final Distribution ALL = new Distribution.Fixed(100);

    private boolean fullStands = true;
    private @Nullable StandCount count;
    private double cropShare = 1;
    private double costShare = 1;
    private final List<Product> products = new ArrayList<>();
    private final List<Seed> seeds = new ArrayList<>();
    private final List<Trait> traits = new ArrayList<>();
    private final List<ActiveContent> actives = new ArrayList<>();
    private final List<ActiveLimit> limits = new ArrayList<>();
    private final List<LabelUse> uses = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();
    private final List<InsectPressure> insects = new ArrayList<>();
    private final List<TraitDoubt> doubts = new ArrayList<>();
    private final List<WeedPressure> weeds = new ArrayList<>();
    private final List<Program> programs = new ArrayList<>();
    private final List<AssumptionLine> assumptions = new ArrayList<>();

    /** Stands as seeds, germination, emergence and response give them; else every stand is the best one, without doubt. */
    OneField realStands() {
        fullStands = false;
        return this;
    }

    OneField counted(StandCount stand) {
        count = stand;
        return this;
    }

    OneField shares(double crop, double cost) {
        cropShare = crop;
        costShare = cost;
        return this;
    }

    OneField assumptions(AssumptionQuantity quantity, Distribution distribution) {
        assumptions.add(new AssumptionLine(Crop.CORN, null, quantity, distribution, "invented for the test"));
        return this;
    }

    OneField assumptions(double price, double yield) {
        return assumptions(AssumptionQuantity.PRICE, new Distribution.Fixed(price))
                .assumptions(AssumptionQuantity.YIELD, new Distribution.Fixed(yield));
    }

    /** A seed that costs so much an acre: 1 unit plants 1 acre. */
    OneField seed(String name, double usdPerAcre, double blendPct, Distribution gain, String... carried) {
        RefugeRule rule = carried.length == 0
                ? new RefugeRule(RefugeRule.Form.NONE, null, null, null, "invented tag")
                : new RefugeRule(RefugeRule.Form.BLEND, blendPct, null, null, "invented tag");
        products.add(new Product(
                name, ProductKind.SEED, usdPerAcre, FarmUnit.UNIT, null, null, null, null, null, "invented"));
        seeds.add(new Seed(
                name,
                Crop.CORN,
                32_000.0,
                null,
                95,
                null,
                List.of(carried),
                blendPct,
                rule,
                gain,
                ALL,
                null,
                SeedRights.UNASKED,
                new SeedTag(List.of(), List.of(), "held against the tag by the test")));
        return this;
    }

    OneField savedSeed(String name, SavedSeed saved) {
        products.add(new Product(name, ProductKind.SEED, 0, FarmUnit.BU, null, null, null, null, null, "invented"));
        seeds.add(new Seed(
                name,
                Crop.CORN,
                null,
                1_500.0,
                85,
                List.of(),
                0,
                new RefugeRule(RefugeRule.Form.NONE, null, null, null, "none"),
                NONE,
                ALL,
                saved,
                new SeedRights(Ask.NO, Ask.NO, Ask.NO, Ask.YES, Ask.NO)));
        return this;
    }

    OneField trait(String name, String group, String insect, Distribution control) {
        traits.add(new Trait(name, group, insect, Sure.of(control), "invented"));
        return this;
    }

    OneField doubt(String group, String insect, double chance) {
        return doubt(group, insect, chance, 0);
    }

    OneField doubt(String group, String insect, double chance, double controlIfFailed) {
        doubts.add(new TraitDoubt(FIELD, group, insect, chance, controlIfFailed, "invented"));
        return this;
    }

    /** A lawful insecticide, liquid, priced by the fluid ounce; labelled 2 to 6 fl oz. */
    OneField insecticide(String name, double usdPerFlOz) {
        products.add(new Product(
                name,
                ProductKind.INSECTICIDE,
                usdPerFlOz,
                FarmUnit.FL_OZ,
                null,
                "0-0",
                List.of("IA"),
                List.of(),
                LocalDate.of(2026, 1, 5),
                "invented label"));
        actives.add(new ActiveContent(name, "bifenthrin", 2, FarmUnit.GAL, null));
        uses.add(new LabelUse(
                name,
                Crop.CORN,
                new Amount(2, FarmUnit.FL_OZ),
                new Amount(6, FarmUnit.FL_OZ),
                Ask.NO,
                new Amount(12, FarmUnit.FL_OZ),
                2,
                30,
                "invented label p. 3"));
        limits.add(new ActiveLimit(
                name, Crop.CORN, "bifenthrin", 0.3, ActiveLimit.Basis.ACTIVE_INGREDIENT, "invented label p. 2"));
        return this;
    }

    OneField control(String product, String pest, double flOz, Distribution share) {
        controls.add(new Control(product, pest, new Amount(flOz, FarmUnit.FL_OZ), Sure.of(share), "invented"));
        return this;
    }

    OneField insect(String insect, Distribution pressure, Distribution lossPct, @Nullable ScoutingSample sample) {
        insects.add(new InsectPressure(
                FIELD,
                insect,
                InsectPressure.Measure.INSECTS_PER_PLANT,
                pressure,
                Sure.of(lossPct),
                0,
                sample,
                null,
                "invented"));
        return this;
    }

    OneField insect(String insect, Distribution pressure, Distribution lossPct) {
        insects.add(new InsectPressure(
                FIELD,
                insect,
                InsectPressure.Measure.INSECTS_PER_PLANT,
                pressure,
                Sure.of(lossPct),
                0,
                null,
                null,
                "invented"));
        return this;
    }

    OneField weed(String weed, Distribution density, double first, double most) {
        weeds.add(new WeedPressure(FIELD, weed, density, Sure.of(first), most, "invented"));
        return this;
    }

    /** As a season has it: one number for the loss per plant is spread. */
    OneField enteredWeed(String weed, Distribution density, Distribution lossPerPlant, double most) {
        weeds.add(new WeedPressure(FIELD, weed, density, lossPerPlant, most, "invented"));
        return this;
    }

    /** As a season has it: one number for the control is spread. */
    OneField enteredControl(String product, String pest, double flOz, Distribution share) {
        controls.add(new Control(product, pest, new Amount(flOz, FarmUnit.FL_OZ), share, "invented"));
        return this;
    }

    OneField program(String name, boolean baseline, Pass... passes) {
        programs.add(new Program(FIELD, name, baseline, new RefugePlan(null, null), "", List.of(passes)));
        return this;
    }

    static Pass plant(String seed) {
        return pass(1, PassKind.SEED, LocalDate.of(2026, 5, 1), seed, new Amount(1, FarmUnit.UNIT), 100, NONE, 0);
    }

    static Pass plant(int number, String seed, double sharePct) {
        return pass(
                number, PassKind.SEED, LocalDate.of(2026, 5, 1), seed, new Amount(1, FarmUnit.UNIT), sharePct, NONE, 0);
    }

    static Pass spray(int number, String product, double flOz) {
        return pass(
                number,
                PassKind.SPRAY,
                LocalDate.of(2026, 5, 1),
                product,
                new Amount(flOz, FarmUnit.FL_OZ),
                100,
                NONE,
                0);
    }

    static Pass harvest(int number) {
        return new Pass(number, PassKind.HARVEST, LocalDate.of(2026, 10, 10), null, null, 100, 0, NONE, 0);
    }

    static Pass pass(
            int number,
            PassKind kind,
            LocalDate date,
            String product,
            Amount rate,
            double sharePct,
            Distribution injury,
            double delayDays) {
        return new Pass(number, kind, date, product, rate, sharePct, 0, injury, delayDays);
    }

    private Seed coming(Seed seed) {
        return fullStands
                ? new Seed(
                        seed.product(),
                        seed.crop(),
                        seed.seedsPerUnit(),
                        seed.seedsPerPound(),
                        seed.germinationPct(),
                        ALL,
                        seed.traits(),
                        seed.blendRefugePct(),
                        seed.rule(),
                        seed.gainBuPerAcre(),
                        seed.standPct(),
                        seed.saved(),
                        seed.rights(),
                        seed.tag())
                : seed;
    }

    Season season() {
        List<AssumptionLine> lines = new ArrayList<>(assumptions);
        if (fullStands) {
            lines.add(new AssumptionLine(
                    Crop.CORN,
                    null,
                    AssumptionQuantity.BEST_STAND,
                    new Distribution.Fixed(32_000 * 0.95),
                    "invented for the test"));
        }
        Field field = new Field(FIELD, "Home", 100, null, "IA", "Adams", Crop.CORN, Texture.LOAM, 3.0, 6.5, 1.0);
        Season read = ReadWhole.season(new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Adviser",
                List.of(new Farm("Home", "A grower", cropShare, costShare)),
                List.of(field),
                List.of(),
                new Shelf(products, seeds.stream().map(this::coming).toList(), traits, actives, uses, limits, controls),
                new Pests(insects, doubts, weeds),
                programs,
                lines));
        return count == null ? read : read.withPrograms(programs, read.work().withStands(List.of(count)));
    }

    FieldAdvice weigh(int draws) {
        return weigh(WeighingOptions.DEFAULT.withDraws(draws));
    }

    FieldAdvice weigh(WeighingOptions options) {
        Season season = season();
        Map<String, Distribution> changed =
                new HashMap<>(fullStands ? Map.of("stand sharpness", new Distribution.Fixed(1)) : Map.of());
        changed.putAll(options.changed());
        return Adviser.adviseField(season, season.fields().get(0), options.withChanged(changed));
    }
}
