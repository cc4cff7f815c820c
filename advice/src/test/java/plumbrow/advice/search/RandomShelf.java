package plumbrow.advice.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.ReadWhole;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.WeedBook;

/** Small seasons of one corn field with weeds, an insect and a few products, from a seeded generator. */
final class RandomShelf {
    static final String FIELD = "Creek 100";
    private static final List<String> ACTIVES = List.of("mesotrione", "glyphosate", "atrazine", "acetochlor");
    private static final LocalDate EARLY = LocalDate.of(2026, 5, 3);
    private static final double[] MEAN_F = {19, 25, 37, 50, 61, 72, 75, 72, 64, 52, 37, 25};
    private static final RefugePlan NO_REFUGE = new RefugePlan(null, null);

    private final RandomGenerator random;
    private final List<Product> products = new ArrayList<>();
    private final List<Seed> seeds = new ArrayList<>();
    private final List<ActiveContent> actives = new ArrayList<>();
    private final List<ActiveLimit> limits = new ArrayList<>();
    private final List<LabelUse> uses = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();

    private RandomShelf(RandomGenerator random) {
        this.random = random;
    }

    static Season of(RandomGenerator random) {
        return new RandomShelf(random).season();
    }

    /** The same with months of weather, so that its weeds are followed day by day. */
    static Season followed(RandomGenerator random) {
        Season season = of(random);
        List<MonthClimate> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            double mean = MEAN_F[month - 1];
            months.add(new MonthClimate("IA: Adams", month, mean, mean - 11, mean + 11, 4, 11, "value from memory"));
        }
        return season.withPests(new Pests(
                season.pests().insects(),
                season.pests().traitDoubts(),
                season.pests().weeds(),
                season.pests().resistance(),
                new WeedBook(
                        months,
                        List.of(),
                        List.of(new CropTiming(FIELD, null, null, new Distribution.Pert(0, 1, 5), "invented")),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of())));
    }

    /** What a trip on a day costs, whatever is in its tank [$/ac]. */
    static double tripUsdPerAcre(LocalDate day) {
        return day.equals(EARLY) ? 8 : 9;
    }

    private Season season() {
        seed("Plain", 80);
        seed("Hardy", 95);
        int herbicides = 2;
        for (int i = 0; i < herbicides; i++) {
            product("Herb " + i, ProductKind.HERBICIDE, ACTIVES.get(random.nextInt(ACTIVES.size())));
            control("Herb " + i, "waterhemp");
            control("Herb " + i, "giant foxtail");
        }
        product("Bug", ProductKind.INSECTICIDE, "bifenthrin");
        control("Bug", "corn borer");
        Season bare = new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Tester",
                List.of(new Farm("Home", "G. Rower", 0.5 + random.nextDouble() / 2, 0.4 + 0.6 * random.nextDouble())),
                List.of(new Field(FIELD, "Home", 100, null, "IA", "Adams", Crop.CORN, Texture.LOAM, 3.0, 6.5, 1.0)),
                List.of(),
                new Shelf(products, seeds, List.of(), actives, uses, limits, controls),
                new Pests(
                        List.of(new InsectPressure(
                                FIELD,
                                "corn borer",
                                InsectPressure.Measure.LARVAE_PER_PLANT,
                                pert(0, 2),
                                pert(2, 6),
                                0,
                                null,
                                null,
                                "invented")),
                        List.of(),
                        List.of(
                                new WeedPressure(FIELD, "waterhemp", pert(1, 40), 1.5, 50, "invented"),
                                new WeedPressure(FIELD, "giant foxtail", pert(1, 60), 0.6, 40, "invented")),
                        random.nextBoolean()
                                ? List.of()
                                : List.of(new KnownResistance(FIELD, "waterhemp", "9", "invented"))),
                List.of(
                        program("own", true, "Plain", "Herb 1"),
                        program("other", false, random.nextBoolean() ? "Plain" : "Hardy", "Herb 1")),
                List.of(
                        line(
                                AssumptionQuantity.PRICE,
                                new Distribution.Lognormal(3 + 2 * random.nextDouble(), 0.25, 0.6)),
                        line(AssumptionQuantity.YIELD, new Distribution.Weibull(120 + 60 * random.nextDouble(), 0.2)),
                        line(AssumptionQuantity.HANDLING, pert(0.1, 0.4)),
                        line(AssumptionQuantity.PRICE_YIELD_TIE, new Distribution.Fixed(-0.3))));
        Season read = ReadWhole.season(bare);
        Season planned = planned(random.nextInt(3) == 0 ? forbidding(read) : read);
        return random.nextInt(4) == 0 ? planned : limited(planned);
    }

    /** The first trip before emergence, the mates of the second in one tank. */
    private static Season planned(Season season) {
        return season.withPrograms(
                season.programs(),
                season.work()
                        .withSprayPlans(season.work().sprayPlans().stream()
                                .map(plan -> staged(plan, plan.pass() == 2 ? "PRE" : "V5", plan.weedHeightIn()))
                                .toList()));
    }

    private static SprayPlan staged(SprayPlan plan, String stage, @Nullable Double weedHeightIn) {
        return new SprayPlan(
                plan.field(),
                plan.program(),
                plan.pass(),
                stage.equals("PRE") ? null : "post",
                plan.method(),
                plan.carrierGalPerAcre(),
                plan.droplets(),
                plan.boomIn(),
                plan.driftReductionPct(),
                stage,
                plan.cropHeightIn(),
                weedHeightIn,
                plan.bloom(),
                plan.applicator());
    }

    /** The same with labels that end at different heights of weeds, each mate of a tank meant for weeds of its own height. */
    private Season limited(Season season) {
        Shelf shelf = season.shelf();
        LabelBook book = shelf.labels();
        LabelBook ending = new LabelBook(
                book.terms().stream()
                        .map(one -> endingAt(one, 3.0 + random.nextInt(4)))
                        .toList(),
                book.soilRates(),
                book.setbacks(),
                book.plantBacks(),
                book.mixRules(),
                book.specialLabels(),
                book.cares(),
                book.tolerances(),
                book.limits(),
                book.bulletins(),
                book.differences());
        List<SprayPlan> plans = season.work().sprayPlans().stream()
                .map(plan -> plan.pass() == 2 ? plan.overWeeds(0.0) : plan.overWeeds(2.0 + random.nextInt(4)))
                .toList();
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                season.fields(),
                season.history(),
                new Shelf(
                        shelf.products(),
                        shelf.seeds(),
                        shelf.traits(),
                        shelf.actives(),
                        shelf.labelUses(),
                        shelf.activeLimits(),
                        shelf.controls(),
                        ending),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work().withSprayPlans(plans));
    }

    private static UseTerms endingAt(UseTerms terms, double highestWeedIn) {
        return new UseTerms(
                terms.product(),
                terms.crop(),
                terms.reentryHours(),
                terms.daysBetween(),
                terms.grazingDays(),
                terms.feedingForbidden(),
                terms.earliestStage(),
                terms.latestStage(),
                terms.highestCropIn(),
                highestWeedIn,
                terms.methods(),
                terms.carrierLowGalPerAcre(),
                terms.finest(),
                terms.coarsest(),
                terms.boomHighestIn(),
                terms.windLowestMph(),
                terms.windHighestMph(),
                terms.warmestF(),
                terms.rainFreeHours(),
                terms.source());
    }

    /** The same with two products that must not go into one tank. */
    private static Season forbidding(Season season) {
        Shelf shelf = season.shelf();
        LabelBook book = shelf.labels();
        LabelBook ruled = new LabelBook(
                book.terms(),
                book.soilRates(),
                book.setbacks(),
                book.plantBacks(),
                List.of(new MixRule("Herb 0", "Herb 1", MixRule.Word.FORBIDDEN, "invented label p. 2")),
                book.specialLabels(),
                book.cares(),
                book.tolerances(),
                book.limits(),
                book.bulletins(),
                book.differences());
        return new Season(
                season.year(),
                season.asOf(),
                season.adviser(),
                season.farms(),
                season.fields(),
                season.history(),
                new Shelf(
                        shelf.products(),
                        shelf.seeds(),
                        shelf.traits(),
                        shelf.actives(),
                        shelf.labelUses(),
                        shelf.activeLimits(),
                        shelf.controls(),
                        ruled),
                season.pests(),
                season.programs(),
                season.assumptions(),
                season.ground(),
                season.work());
    }

    private Program program(String name, boolean baseline, String seed, String late) {
        boolean first = random.nextBoolean(); // which of the mates carries the trip's charge
        return new Program(
                FIELD,
                name,
                baseline,
                NO_REFUGE,
                "",
                List.of(
                        pass(1, PassKind.SEED, 5, 1, seed, new Amount(1, FarmUnit.UNIT), 20),
                        pass(2, PassKind.SPRAY, 5, 3, "Herb 0", rate(3), tripUsdPerAcre(EARLY)),
                        pass(3, PassKind.SPRAY, 6, 5, late, rate(6), first ? 9 : 0),
                        pass(4, PassKind.SPRAY, 6, 5, "Bug", rate(6), first ? 0 : 9),
                        pass(5, PassKind.HARVEST, 10, 14, null, null, 36)));
    }

    private static Pass pass(
            int number,
            PassKind kind,
            int month,
            int day,
            @Nullable String product,
            @Nullable Amount rate,
            double charge) {
        return new Pass(
                number, kind, LocalDate.of(2026, month, day), product, rate, 100, charge, new Distribution.Fixed(0), 0);
    }

    private static Amount rate(double flOz) {
        return new Amount(flOz, FarmUnit.FL_OZ);
    }

    private void seed(String name, double usd) {
        products.add(new Product(name, ProductKind.SEED, usd, FarmUnit.UNIT, null, null, null, null, null, "invented"));
        seeds.add(new Seed(
                name,
                Crop.CORN,
                32_000.0,
                null,
                95,
                List.of(),
                0,
                new RefugeRule(RefugeRule.Form.NONE, null, null, null, "invented tag"),
                new Distribution.Fixed(0),
                new Distribution.Fixed(100),
                null,
                SeedRights.UNASKED));
    }

    private void product(String name, ProductKind kind, String ingredient) {
        products.add(new Product(
                name,
                kind,
                0.5 + 6 * random.nextDouble(),
                FarmUnit.FL_OZ,
                null,
                "0-0",
                List.of("IA"),
                List.of(),
                LocalDate.of(2026, 1, 5),
                "invented label"));
        actives.add(new ActiveContent(name, ingredient, 2, FarmUnit.GAL, 0.8));
        uses.add(new LabelUse(
                name,
                Crop.CORN,
                rate(3),
                rate(6),
                random.nextBoolean() ? Ask.NO : Ask.YES,
                rate(6 + random.nextInt(6)),
                1 + random.nextInt(2),
                30,
                "invented label p. 3"));
        limits.add(new ActiveLimit(
                name,
                Crop.CORN,
                ingredient,
                0.08 + 0.1 * random.nextDouble(),
                ActiveLimit.Basis.ACTIVE_INGREDIENT,
                "invented label p. 2"));
    }

    private void control(String product, String pest) {
        if (random.nextInt(5) > 0) {
            controls.add(new Control(product, pest, rate(3), pert(0.4, 0.9), "invented"));
        }
        controls.add(new Control(product, pest, rate(6), pert(0.7, 1), "invented"));
    }

    private static AssumptionLine line(AssumptionQuantity quantity, Distribution distribution) {
        return new AssumptionLine(Crop.CORN, null, quantity, distribution, "invented");
    }

    private Distribution pert(double low, double high) {
        return new Distribution.Pert(low, low + (high - low) * random.nextDouble(), high);
    }
}
