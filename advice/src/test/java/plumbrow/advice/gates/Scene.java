package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Season;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelDifference;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.SavedSeed;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.shelf.UseTerms;

/** One corn field of 160 ac in Iowa, a shelf and a program, put together row by row as a test needs them. */
final class Scene {
    static final LocalDate PLANTING = LocalDate.of(2026, 5, 1);
    static final LocalDate HARVEST = LocalDate.of(2026, 10, 1);

    RefugePlan refuge = new RefugePlan(null, null);
    final List<Product> products = new ArrayList<>();
    final List<Seed> seeds = new ArrayList<>();
    final List<Trait> traits = new ArrayList<>();
    final List<ActiveContent> actives = new ArrayList<>();
    final List<LabelUse> uses = new ArrayList<>();
    final List<ActiveLimit> limits = new ArrayList<>();
    final List<Pass> passes = new ArrayList<>();
    final List<Control> controls = new ArrayList<>();
    final List<UseTerms> terms = new ArrayList<>();
    final List<ProductCare> cares = new ArrayList<>();
    final List<SoilRate> soilRates = new ArrayList<>();
    final List<Setback> setbacks = new ArrayList<>();
    final List<PlantBack> plantBacks = new ArrayList<>();
    final List<MixRule> mixRules = new ArrayList<>();
    final List<LabelDifference> differences = new ArrayList<>();
    final List<SpecialLabel> specialLabels = new ArrayList<>();
    final List<ToleranceRule> tolerances = new ArrayList<>();
    final List<LabelLimit> labelLimits = new ArrayList<>();
    final List<BulletinLook> bulletins = new ArrayList<>();
    final List<FieldLand> lands = new ArrayList<>();
    final List<CropYear> history = new ArrayList<>();
    final List<SprayPlan> plans = new ArrayList<>();
    final List<Feature> features = new ArrayList<>();
    final List<AlsoIn> alsoIn = new ArrayList<>();
    final List<NextCrop> nextCrops = new ArrayList<>();
    final List<Done> log = new ArrayList<>();
    final List<WeedPressure> weeds = new ArrayList<>();
    final List<InsectPressure> insects = new ArrayList<>();
    final List<KnownResistance> resistance = new ArrayList<>();
    Field field =
            new Field("Home", "Farm", 160, null, "IA", "Marrow", Crop.CORN, Texture.SILTY_CLAY_LOAM, 3.5, 6.5, 1.0);
    Crew crew = new Crew(
            List.of(new Person(
                    "Pat", "C-100", "IA", LocalDate.of(2026, 12, 31), LicenceKind.PRIVATE, Set.of(), Ask.NO)),
            Set.of("gloves", "goggles"),
            Ask.YES);
    final List<Looked> looked = new ArrayList<>(List.of(new Looked("Home", null)));

    Season season() {
        Shelf shelf = new Shelf(
                products,
                seeds,
                traits,
                actives,
                uses,
                limits,
                controls,
                new LabelBook(
                        terms,
                        soilRates,
                        setbacks,
                        plantBacks,
                        mixRules,
                        specialLabels,
                        cares,
                        tolerances,
                        labelLimits,
                        bulletins,
                        differences));
        return new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "",
                List.of(),
                List.of(field()),
                history,
                shelf,
                new Pests(insects, List.of(), weeds, resistance),
                List.of(program()),
                List.of(),
                new Ground(looked, features, alsoIn, nextCrops, lands),
                new Work(plans, crew, log));
    }

    Field field() {
        return field;
    }

    Program program() {
        return new Program("Home", "Program", true, refuge, "", passes);
    }

    List<Finding> findings(Gate gate) {
        return gate.check(Gates.of(season()).at(field(), program()));
    }

    Standing standing(Gate gate) {
        return Gates.standing(findings(gate));
    }

    Standing standing() {
        return Gates.standing(Gates.check(season(), field(), program()));
    }

    Scene product(String name, ProductKind kind) {
        return product(name, kind, List.of("IA", "IL"), List.of());
    }

    Scene product(String name, ProductKind kind, @Nullable List<String> states, @Nullable List<String> excluded) {
        products.add(new Product(name, kind, 10, FarmUnit.GAL, null, null, states, excluded, null, "label p. 1"));
        return this;
    }

    Scene use(
            String product,
            @Nullable String low,
            @Nullable String high,
            Ask lessForbidden,
            @Nullable String seasonMax,
            @Nullable Integer times,
            @Nullable Integer days) {
        uses.add(new LabelUse(
                product,
                Crop.CORN,
                amount(low),
                amount(high),
                lessForbidden,
                amount(seasonMax),
                times,
                days,
                "label p. 7"));
        return this;
    }

    Scene active(String product, String ingredient, double pounds, FarmUnit per, @Nullable Double acid) {
        actives.add(new ActiveContent(product, ingredient, pounds, per, acid));
        return this;
    }

    Scene limit(String product, String ingredient, @Nullable Double pounds, ActiveLimit.Basis basis) {
        limits.add(new ActiveLimit(product, Crop.CORN, ingredient, pounds, basis, "label p. 9"));
        return this;
    }

    Scene spray(String product, @Nullable String rate, @Nullable LocalDate date) {
        return pass(PassKind.SPRAY, date, product, amount(rate), 100);
    }

    Scene plant(String product, double sharePct) {
        return pass(PassKind.SEED, PLANTING, product, new Amount(34_000, FarmUnit.SEEDS), sharePct);
    }

    Scene harvest(@Nullable LocalDate date) {
        return pass(PassKind.HARVEST, date, null, null, 100);
    }

    Scene pass(
            PassKind kind, @Nullable LocalDate date, @Nullable String product, @Nullable Amount rate, double sharePct) {
        passes.add(new Pass(passes.size() + 1, kind, date, product, rate, sharePct, 0, new Distribution.Fixed(0), 0));
        return this;
    }

    Scene plainSeed(String name) {
        return seed(name, List.of(), 0, rule(RefugeRule.Form.NONE, null, null, null), null, SeedRights.UNASKED);
    }

    Scene traitSeed(String name, double blendPct, RefugeRule rule) {
        return seed(name, List.of("P1"), blendPct, rule, null, SeedRights.UNASKED);
    }

    /** Seed with two modes of action on a borer, for which 5 % is published, in the bag or in a block within half a mile. */
    Scene pyramidSeed(String name, double blendPct, RefugeRule rule) {
        Distribution control = new Distribution.Fixed(0.9);
        traits.add(new Trait("P1", "group 1", "corn borer", control, "guide"));
        traits.add(new Trait("P2", "group 2", "corn borer", control, "guide"));
        return seed(name, List.of("P1", "P2"), blendPct, rule, null, SeedRights.UNASKED);
    }

    Scene savedSeed(String name, SeedRights rights) {
        SavedSeed saved = new SavedSeed(3, 5.8, 1.25, 3.5, 10, 45, 200);
        return seed(name, List.of(), 0, rule(RefugeRule.Form.NONE, null, null, null), saved, rights);
    }

    Scene seed(
            String name,
            List<String> proteins,
            double blendPct,
            RefugeRule rule,
            @Nullable SavedSeed saved,
            SeedRights rights) {
        product(name, ProductKind.SEED);
        seeds.add(new Seed(
                name,
                Crop.CORN,
                80_000.0,
                null,
                95,
                proteins,
                blendPct,
                rule,
                new Distribution.Fixed(0),
                new Distribution.Fixed(100),
                saved,
                rights));
        return this;
    }

    static RefugeRule rule(
            RefugeRule.Form form, @Nullable Double pct, @Nullable Double farthestFt, @Nullable Integer rows) {
        return new RefugeRule(form, pct, farthestFt, rows, "bag tag");
    }

    /** "12 fl oz" as an amount; null, an empty text and "?" as unknown. */
    static @Nullable Amount amount(@Nullable String written) {
        if (written == null || written.isBlank() || written.equals("?")) {
            return null;
        }
        String[] parts = written.split(" ", 2);
        return new Amount(Double.parseDouble(parts[0]), FarmUnit.parse(parts[1]).orElseThrow());
    }
}
