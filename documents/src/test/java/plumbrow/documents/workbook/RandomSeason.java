package plumbrow.documents.workbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.CostShares;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.Acres;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.ScoutingTrigger;
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
import plumbrow.advice.weeds.Basis;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.LikeWeed;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.Tool;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.advice.weeds.WeedRating;

/** A season made up at random from a seed: within the rules, with numbers of all digits and gaps wherever one may be. */
final class RandomSeason {
    static final String[] WEEDS = {"waterhemp", "kochia", "velvetleaf"};
    static final Map<String, String> COUNTIES = Map.of("IA", "Kossuth", "IL", "De Witt", "MN", "Faribault");

    private static final String[] WORDS = {
        "Éast",
        "80",
        "hill",
        "\"bottom\"",
        "3,5",
        "o'clock",
        "#7",
        "Süd",
        "a;b",
        "12",
        "yes",
        "TRUE",
        "2026-01-02",
        "日本"
    };
    private static final List<Crop> CROPS = List.of(Crop.CORN, Crop.SOYBEAN, Crop.WHEAT);
    private static final LocalDate AS_OF = LocalDate.of(2026, 3, 1);

    private final Random random;
    private final int fields;

    RandomSeason(long seed, int fields) {
        this.random = new Random(seed);
        this.fields = fields;
    }

    Season make() {
        List<Farm> farms = make(
                1 + random.nextInt(3),
                i -> new Farm(
                        name(i),
                        text(),
                        1 - share() / 2,
                        share(),
                        new CostShares(
                                maybe(this::share),
                                maybe(this::share),
                                null,
                                maybe(this::share),
                                null,
                                maybe(this::share),
                                maybe(this::share))));
        List<Field> land = make(fields, i -> field(i, farms.get(random.nextInt(farms.size()))));
        Shelf shelf = shelf();
        List<Program> programs =
                land.stream().flatMap(field -> programs(field).stream()).toList();
        RandomTerms terms = new RandomTerms(random);
        return new Season(
                2026,
                AS_OF,
                text(),
                farms,
                land,
                make(
                        fields,
                        i -> new CropYear(
                                land.get(i).name(),
                                2025 - random.nextInt(9),
                                pick("corn", "Oats", "winter wheat", "fallow"),
                                maybe(this::hundred),
                                maybe(() -> pick(List.of(), List.of("glyphosate"))))),
                shelf,
                pests(land, shelf),
                programs,
                assumptions(land),
                terms.ground(land),
                terms.work(land, programs));
    }

    private Field field(int number, Farm farm) {
        Boundary boundary = maybe(() -> outline(number));
        String state = pick("IA", "IL", "MN");
        double acres = boundary == null ? 1 + hundred() : Acres.inside(boundary) * (0.95 + share() / 10);
        return new Field(
                name(number),
                farm.name(),
                acres,
                boundary,
                state,
                COUNTIES.getOrDefault(state, ""),
                CROPS.get(number % 3),
                maybe(() -> pick(Texture.values())),
                maybe(this::hundred),
                maybe(() -> 4 + 5 * share()),
                maybe(this::hundred));
    }

    private Boundary outline(int number) {
        return new Boundary(make(1 + random.nextInt(2), i -> {
            double west = -43 + 0.05 * number + 0.02 * i;
            double north = 42 + share() / 100;
            Boundary.Point corner = new Boundary.Point(west, 41.99);
            return new Boundary.Polygon(
                    List.of(
                            corner,
                            new Boundary.Point(west + 0.001 + share() / 100, 41.99 - share() / 1000),
                            new Boundary.Point(west + 0.0005 + share() / 2000, north),
                            corner),
                    List.of());
        }));
    }

    private Shelf shelf() {
        List<Trait> traits = make(3, i -> new Trait("P" + i, "G" + i, "worm", distribution(1), text()));
        List<Product> products = new ArrayList<>(make(
                3,
                i -> new Product(
                        "spray " + i,
                        ProductKind.HERBICIDE,
                        hundred(),
                        FarmUnit.GAL,
                        maybe(() -> volume(99)),
                        maybe(this::text),
                        maybe(() -> List.of("IA", "IL")),
                        maybe(() -> pick(List.of(), List.of("IA: Adams"))),
                        maybe(() -> AS_OF.minusDays(random.nextInt(900))),
                        text())));
        List<Seed> seeds = make(6, i -> seed("seed " + i, CROPS.get(i % 3), i >= 3, traits));
        seeds.forEach(seed -> products.add(new Product(
                seed.product(),
                ProductKind.SEED,
                seed.saved() != null ? 0 : hundred(),
                seed.saved() != null ? FarmUnit.BU : FarmUnit.UNIT,
                null,
                null,
                null,
                null,
                null,
                text())));
        return new Shelf(
                products,
                seeds,
                traits,
                make(
                        3,
                        i -> new ActiveContent(
                                "spray " + i, "active " + i, 0.1 + share(), FarmUnit.GAL, maybe(this::part))),
                make(3, i -> label("spray " + i)),
                make(
                        3,
                        i -> new ActiveLimit(
                                "spray " + i,
                                Crop.CORN,
                                "active " + i,
                                maybe(this::part),
                                pick(ActiveLimit.Basis.values()),
                                text())),
                make(3, i -> new Control("spray " + i, WEEDS[i % 3], volume(20), distribution(1), text())),
                new RandomTerms(random).labels());
    }

    private LabelUse label(String product) {
        Amount low = new Amount(part(), FarmUnit.QT);
        Amount high = new Amount(low.value() + 100, FarmUnit.QT);
        return new LabelUse(
                product,
                pick(Crop.values()),
                maybe(() -> low),
                maybe(() -> high),
                pick(Ask.values()),
                maybe(() -> volume(500)),
                maybe(() -> 1 + random.nextInt(5)),
                maybe(() -> random.nextInt(90)),
                text());
    }

    private Seed seed(String name, Crop crop, boolean saved, List<Trait> traits) {
        List<String> carried =
                saved ? List.of() : List.of(traits.get(0).name(), traits.get(2).name());
        return new Seed(
                name,
                crop,
                saved ? maybe(this::hundred) : (Double) (1 + hundred()),
                saved ? (Double) (1 + hundred()) : null,
                100 * part(),
                maybe(() -> distribution(100)),
                carried,
                hundred(),
                new RefugeRule(
                        pick(RefugeRule.Form.values()),
                        maybe(this::hundred),
                        maybe(this::hundred),
                        maybe(() -> 1 + random.nextInt(9)),
                        pick("", text())),
                distribution(20),
                distribution(100),
                saved
                        ? new SavedSeed(share(), hundred(), share(), share(), hundred() * 0.9, hundred(), 1 + hundred())
                        : null,
                new SeedRights(
                        pick(Ask.values()),
                        pick(Ask.values()),
                        pick(Ask.values()),
                        pick(Ask.values()),
                        pick(Ask.values())),
                new SeedTag(
                        maybe(() -> pick(List.of(), List.of("glyphosate"), List.of("glyphosate", "dicamba"))),
                        maybe(List::of),
                        maybe(this::text)));
    }

    private Pests pests(List<Field> land, Shelf shelf) {
        return new Pests(
                make(
                        fields,
                        i -> new InsectPressure(
                                land.get(i).name(),
                                "worm",
                                pick(InsectPressure.Measure.values()),
                                distribution(3),
                                distribution(100),
                                share(),
                                maybe(() -> new ScoutingSample(1 + random.nextInt(50), part(), hundred())),
                                maybe(() -> AS_OF.minusDays(random.nextInt(400))),
                                text())),
                make(
                        fields,
                        i -> new TraitDoubt(
                                land.get(i).name(),
                                shelf.traits().get(i % 3).group(),
                                "worm",
                                share(),
                                share(),
                                text())),
                make(
                        fields,
                        i -> new WeedPressure(
                                land.get(i).name(),
                                WEEDS[i % 3],
                                distribution(50),
                                distribution(20),
                                100 * part(),
                                text())),
                new RandomTerms(random).resistance(land),
                weedBook(land));
    }

    private WeedBook weedBook(List<Field> land) {
        return new WeedBook(
                make(
                        12,
                        i -> new MonthClimate(
                                land.get(0).name(),
                                i + 1,
                                50 + i,
                                maybe(() -> 40 + share()),
                                maybe(() -> 70 + share()),
                                part(),
                                10 * share(),
                                text())),
                make(5, i -> new WeatherDay("IA: Kossuth", AS_OF.plusDays(i), 30 + i, 50 + share(), share(), text())),
                make(
                        fields,
                        i -> new CropTiming(
                                land.get(i).name(),
                                maybe(() -> AS_OF.plusDays(70)),
                                maybe(() -> AS_OF.plusDays(120)),
                                distribution(20),
                                text())),
                make(2, i -> new LikeWeed(WEEDS[i % 3], pick("waterhemp", "giant foxtail"), text())),
                make(3, this::rating),
                List.of(),
                make(
                        4,
                        i -> new FloorDepth(
                                land.get(0).name(), pick(Tool.values()), "hole " + i, 1 + share(), text())));
    }

    private WeedRating rating(int i) {
        Timing timing = pick(Timing.values());
        return new WeedRating(
                "spray " + i,
                WEEDS[i % 3],
                timing,
                volume(20),
                timing == Timing.SOIL ? null : maybe(() -> 1 + share()),
                maybe(() -> 1 + random.nextInt(60)),
                distribution(1),
                pick(Basis.values()),
                maybe(this::text),
                text());
    }

    private List<Program> programs(Field field) {
        int crop = CROPS.indexOf(field.crop());
        return make(
                1 + random.nextInt(3),
                i -> new Program(
                        field.name(),
                        "program " + i,
                        i == 0,
                        new RefugePlan(maybe(this::hundred), maybe(() -> 1 + i)),
                        pick("", text()),
                        make(random.nextInt(4), pass -> pass(pass + 1, crop))));
    }

    private Pass pass(int number, int crop) {
        LocalDate date = maybe(() -> LocalDate.of(2026, 4, 20).plusDays(10L * number + random.nextInt(9)));
        Distribution injury = distribution(100);
        return switch (random.nextInt(3)) {
            case 0 ->
                new Pass(
                        number,
                        PassKind.SEED,
                        date,
                        pick("seed " + crop, "seed " + (crop + 3)),
                        new Amount(part(), pick(FarmUnit.SEEDS, FarmUnit.THOUSAND_SEEDS)),
                        100 * part(),
                        hundred(),
                        injury,
                        hundred());
            case 1 ->
                new Pass(number, PassKind.SPRAY, date, "spray " + random.nextInt(3), volume(1), 100, share(), injury, 0)
                        .waitingFor(maybe(() -> new ScoutingTrigger(
                                "worm", part(), maybe(this::text), part(), 1 + share(), maybe(this::hundred))));
            default ->
                new Pass(
                        number,
                        pick(PassKind.TILLAGE, PassKind.SCOUTING, PassKind.HARVEST),
                        date,
                        null,
                        null,
                        100,
                        9,
                        injury,
                        share());
        };
    }

    private List<AssumptionLine> assumptions(List<Field> land) {
        List<Supplier<Distribution>> distributions = List.of(
                () -> new Distribution.Fixed(part()),
                () -> new Distribution.Pert(part(), 1 + part(), 2 + part()),
                () -> new Distribution.Triangular(part(), 1 + part(), 2 + part()),
                () -> new Distribution.Normal(part(), part()),
                () -> new Distribution.Weibull(part(), part()),
                () -> new Distribution.Lognormal(part(), part(), part()),
                () -> new Distribution.Past(List.of(part(), part(), part())));
        List<AssumptionLine> lines = new ArrayList<>(make(
                3,
                i -> new AssumptionLine(
                        CROPS.get(i),
                        null,
                        AssumptionQuantity.PRICE,
                        distributions.get(random.nextInt(7)).get(),
                        text())));
        land.forEach(field -> lines.add(new AssumptionLine(
                null,
                field.name(),
                AssumptionQuantity.YIELD,
                distributions.get(pick(0, 1, 2, 3, 4, 6)).get(),
                text())));
        return lines;
    }

    private Amount volume(double most) {
        return new Amount(most * part(), pick(FarmUnit.FL_OZ, FarmUnit.PT, FarmUnit.ML));
    }

    private Distribution distribution(double most) {
        double low = share() * most / 3;
        return random.nextBoolean()
                ? new Distribution.Fixed(most * share())
                : new Distribution.Pert(low, low + most * part() / 3, low + most * (1 + share()) / 3);
    }

    private static <T> List<T> make(int count, IntFunction<T> one) {
        return IntStream.range(0, count).mapToObj(one).toList();
    }

    private <T> @Nullable T maybe(Supplier<T> value) {
        return random.nextBoolean() ? value.get() : null;
    }

    @SafeVarargs
    private <T> T pick(T... values) {
        return values[random.nextInt(values.length)];
    }

    private String name(int number) {
        return text() + " " + number;
    }

    private String text() {
        return pick(WORDS) + " " + pick(WORDS);
    }

    private double share() {
        return random.nextDouble();
    }

    /** More than 0 up to 1. */
    private double part() {
        return 1 - random.nextDouble();
    }

    private double hundred() {
        return 100 * random.nextDouble();
    }
}
