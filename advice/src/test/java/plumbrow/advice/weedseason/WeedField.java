package plumbrow.advice.weedseason;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.assumptions.Sure;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Control;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.weeds.Basis;
import plumbrow.advice.weeds.CropTiming;
import plumbrow.advice.weeds.FloorDepth;
import plumbrow.advice.weeds.LikeWeed;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.TillageWork;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.Tool;
import plumbrow.advice.weeds.WeatherDay;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.advice.weeds.WeedRating;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;

/** A corn field of the central Corn Belt with weeds, built up by what a test needs; normals rounded, value from memory. */
public final class WeedField {
    public static final String FIELD = "Creek 100";
    private static final double[] MEAN_F = {19, 25, 37, 50, 61, 72, 75, 72, 64, 52, 37, 25};

    private double rainIn = 4;
    private double rainDays = 11;
    private final List<Product> products = new ArrayList<>();
    private final List<ActiveContent> actives = new ArrayList<>();
    private final List<LabelUse> uses = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();
    private final List<WeedPressure> weeds = new ArrayList<>();
    private final List<KnownResistance> resistance = new ArrayList<>();
    private final List<Program> programs = new ArrayList<>();
    private final List<LikeWeed> likes = new ArrayList<>();
    private final List<WeedRating> ratings = new ArrayList<>();
    private final List<TillageWork> tillage = new ArrayList<>();
    private final List<FloorDepth> floor = new ArrayList<>();
    private final List<WeatherDay> days = new ArrayList<>();
    private final List<AssumptionLine> assumptions = new ArrayList<>();
    private boolean normals = true;
    private Distribution late = new Distribution.Fixed(0);

    public WeedField() {
        products.add(
                new Product("seed", ProductKind.SEED, 100, FarmUnit.UNIT, null, null, null, null, null, "invented"));
    }

    WeedField rain(double inches, double days) {
        rainIn = inches;
        rainDays = days;
        return this;
    }

    /** Without twelve months of climate. */
    WeedField withoutNormals() {
        normals = false;
        return this;
    }

    /** A measured year, 1 March to 30 September: so much warmer than the normals, and this much rain every third day. */
    WeedField measured(int year, double warmerF, double rainIn) {
        for (LocalDate day = LocalDate.of(year, 3, 1); day.getMonthValue() < 10; day = day.plusDays(1)) {
            double mean = MEAN_F[day.getMonthValue() - 1] + warmerF;
            days.add(new WeatherDay(
                    "IA: Adams",
                    day,
                    mean - 11,
                    mean + 11,
                    day.getDayOfYear() % 3 == 0 ? rainIn : 0,
                    "gauge, invented"));
        }
        return this;
    }

    public WeedField assumptions(AssumptionQuantity quantity, Distribution distribution) {
        assumptions.add(new AssumptionLine(null, FIELD, quantity, distribution, "invented"));
        return this;
    }

    WeedField late(Distribution days) {
        late = days;
        return this;
    }

    public WeedField herbicide(String name, String... ingredients) {
        products.add(new Product(
                name, ProductKind.HERBICIDE, 1, FarmUnit.FL_OZ, null, null, null, null, null, "invented label"));
        for (String ingredient : ingredients) {
            actives.add(new ActiveContent(name, ingredient, 4, FarmUnit.GAL, null));
        }
        uses.add(new LabelUse(name, Crop.CORN, oz(20), oz(40), Ask.NO, oz(80), 2, 30, "invented label"));
        return this;
    }

    public WeedField weed(String name, Distribution density, double first, double most) {
        weeds.add(new WeedPressure(FIELD, name, density, Sure.of(first), most, "invented"));
        return this;
    }

    public WeedField like(String weed, String as) {
        likes.add(new LikeWeed(weed, as, "invented"));
        return this;
    }

    public WeedField resists(String weed, String group, @Nullable Double sharePct) {
        resistance.add(new KnownResistance(FIELD, weed, group, sharePct, "invented"));
        return this;
    }

    public WeedField rating(String product, String weed, Timing timing, double flOz, Distribution control) {
        ratings.add(new WeedRating(
                product, weed, timing, oz(flOz), null, null, control, Basis.TRIAL, null, "strip trial, invented"));
        return this;
    }

    /** A look at plots of 30 fl oz on soil, so many days after. */
    WeedField look(String product, String weed, int days, Distribution control) {
        ratings.add(new WeedRating(
                product, weed, Timing.SOIL, oz(30), null, days, control, Basis.TRIAL, null, "strip trial, invented"));
        return this;
    }

    WeedField dug(double... inches) {
        for (double depth : inches) {
            floor.add(new FloorDepth(FIELD, Tool.FIELD_CULTIVATOR, "hole " + floor.size(), depth, "dug"));
        }
        return this;
    }

    /** A program planted on 1 May; the first is the baseline. Passes are numbered in the order given. */
    public WeedField program(String name, Step... steps) {
        programs.add(programOf(name, programs.isEmpty(), steps));
        for (int i = 0; i < steps.length; i++) {
            if (steps[i].depthIn > 0) {
                tillage.add(new TillageWork(FIELD, name, i + 1, Tool.FIELD_CULTIVATOR, steps[i].depthIn, "invented"));
            }
        }
        return this;
    }

    static Program programOf(String name, boolean baseline, Step... steps) {
        List<Pass> passes = new ArrayList<>();
        for (Step step : steps) {
            passes.add(step.pass(passes.size() + 1));
        }
        passes.add(new Pass(
                passes.size() + 1,
                PassKind.SEED,
                LocalDate.of(2026, 5, 1),
                "seed",
                new Amount(1, FarmUnit.UNIT),
                100,
                0,
                new Distribution.Fixed(0),
                0));
        return new Program(FIELD, name, baseline, new RefugePlan(null, null), "", passes);
    }

    /** A spray (a product) or, where there is a depth, a field cultivator. */
    public record Step(@Nullable LocalDate date, String product, double flOz, double depthIn) {
        Pass pass(int number) {
            return depthIn > 0
                    ? new Pass(number, PassKind.TILLAGE, date, null, null, 100, 0, new Distribution.Fixed(0), 0)
                    : new Pass(number, PassKind.SPRAY, date, product, oz(flOz), 100, 0, new Distribution.Fixed(0), 0);
        }
    }

    public static Step spray(int month, int day, String product, double flOz) {
        return new Step(LocalDate.of(2026, month, day), product, flOz, 0);
    }

    static Step cultivate(int month, int day, double inches) {
        return new Step(LocalDate.of(2026, month, day), "", 0, inches);
    }

    static Amount oz(double value) {
        return new Amount(value, FarmUnit.FL_OZ);
    }

    public Season season() {
        List<MonthClimate> months = new ArrayList<>();
        for (int month = 1; normals && month <= 12; month++) {
            double mean = MEAN_F[month - 1];
            months.add(new MonthClimate(
                    "IA: Adams", month, mean, mean - 11, mean + 11, rainIn, rainDays, "value from memory"));
        }
        return new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Adviser",
                List.of(new Farm("Home", "A grower", 1, 1)),
                List.of(new Field(FIELD, "Home", 100, null, "IA", "Adams", Crop.CORN, Texture.LOAM, 3.0, 6.5, 1.0)),
                List.of(),
                new Shelf(products, List.of(seed()), List.of(), actives, uses, List.of(), controls),
                new Pests(
                        List.of(),
                        List.of(),
                        weeds,
                        resistance,
                        new WeedBook(
                                months,
                                days,
                                List.of(new CropTiming(FIELD, null, null, late, "invented")),
                                likes,
                                ratings,
                                tillage,
                                floor)),
                programs,
                assumptions());
    }

    private List<AssumptionLine> assumptions() {
        List<AssumptionLine> lines = new ArrayList<>(List.of(
                new AssumptionLine(Crop.CORN, null, AssumptionQuantity.PRICE, new Distribution.Fixed(4), "invented"),
                new AssumptionLine(Crop.CORN, null, AssumptionQuantity.YIELD, new Distribution.Fixed(200), "invented"),
                new AssumptionLine(
                        Crop.CORN,
                        null,
                        AssumptionQuantity.BEST_STAND,
                        new Distribution.Fixed(32_000 * 0.95),
                        "invented")));
        lines.addAll(assumptions);
        return lines;
    }

    private static Seed seed() {
        return new Seed(
                "seed",
                Crop.CORN,
                32_000.0,
                null,
                95,
                new Distribution.Fixed(100),
                List.of(),
                0,
                new RefugeRule(RefugeRule.Form.NONE, null, null, null, "none"),
                new Distribution.Fixed(0),
                new Distribution.Fixed(100),
                null,
                SeedRights.UNASKED);
    }

    public FieldAdvice weigh(int draws) {
        Season season = season();
        return Adviser.adviseField(season, season.fields().get(0), WeighingOptions.DEFAULT.withDraws(draws));
    }

    /** Mean loss of a program over draws [%]. */
    double lossPct(String program, int draws) {
        Followed followed = follow(program);
        double sum = 0;
        for (double loss : followed.season().loss(followed.drawn(draws), draws).lossPct()) {
            sum += loss;
        }
        return sum / draws;
    }

    Followed follow(String program) {
        Season season = season();
        OwnInputs inputs = new OwnInputs();
        FieldSeason field = (FieldSeason) WeedSeasons.of(season, season.fields().get(0), inputs);
        Program found = season.programs(FIELD).stream()
                .filter(one -> one.name().equals(program))
                .findFirst()
                .orElseThrow();
        return new Followed(field.program(found), inputs, field);
    }

    record Followed(ProgramSeason season, OwnInputs inputs, FieldSeason field) {
        /** Where an input stands among the draws. */
        int place(String id) {
            return inputs.all().stream().map(OwnInputs.Input::id).toList().indexOf(id);
        }

        double[][] drawn(int draws) {
            return inputs.draws(new DrawSource(draws, 7));
        }
    }
}
