package plumbrow.documents.workbook;

import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
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

/** A season that uses every column of the workbook, blank and filled. Names and values are invented. */
final class Fixture {
    private static final String TAG = "bag tag";
    private static final Distribution NO_GAIN = new Distribution.Fixed(0);
    private static final Distribution FULL_STAND = new Distribution.Fixed(100);

    private Fixture() {}

    static Season season() {
        return new Season(
                2026,
                day(2, 16),
                "R. Alder",
                farms(),
                fields(),
                history(),
                shelf(),
                pests(),
                programs(),
                assumptions(),
                FixtureTerms.ground(),
                FixtureTerms.work());
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2026, month, day);
    }

    private static List<Farm> farms() {
        return List.of(new Farm("Home place", "L. Marsh", 1, 1), new Farm("Müller \"river\", 40", "A. Ng", 0.5, 0.5));
    }

    static Boundary outline() {
        List<Boundary.Point> shell = ring(-43.6, 42.0, 0.0048, 0.0072);
        List<Boundary.Point> pond = ring(-43.598, 42.002, 0.0006, 0.0004);
        return new Boundary(List.of(new Boundary.Polygon(shell, List.of(pond))));
    }

    private static Boundary twoPieces() {
        return new Boundary(List.of(
                new Boundary.Polygon(ring(-43.58, 42.0, 0.0031, 0.0021), List.of()),
                new Boundary.Polygon(ring(-43.57, 42.0, 0.00123456789, 0.0021), List.of())));
    }

    private static List<Boundary.Point> ring(double west, double south, double width, double height) {
        return List.of(
                new Boundary.Point(west, south),
                new Boundary.Point(west + width, south),
                new Boundary.Point(west + width, south + height),
                new Boundary.Point(west, south + height),
                new Boundary.Point(west, south));
    }

    private static List<Field> fields() {
        return List.of(
                new Field(
                        "East 80",
                        "Home place",
                        78.4,
                        outline(),
                        "IA",
                        "Adams",
                        Crop.CORN,
                        Texture.SILT_LOAM,
                        3.2,
                        6.4,
                        4.0),
                new Field(
                        "5-4",
                        "Home place",
                        20.1234567890123,
                        twoPieces(),
                        "IA",
                        "O'Brien",
                        Crop.SOYBEAN,
                        null,
                        null,
                        null,
                        null),
                new Field(
                        "River",
                        "Müller \"river\", 40",
                        40,
                        null,
                        "IL",
                        "Pike",
                        Crop.WHEAT,
                        Texture.CLAY,
                        null,
                        7.0,
                        0.0));
    }

    private static List<CropYear> history() {
        return List.of(new CropYear("East 80", 2025, "soybean", 58.5), new CropYear("River", 2025, "fallow", null));
    }

    private static Shelf shelf() {
        return new Shelf(
                products(),
                seeds(),
                traits(),
                actives(),
                labelUses(),
                activeLimits(),
                controls(),
                FixtureTerms.labels());
    }

    private static List<Product> products() {
        return List.of(
                new Product(
                        "Hybrid A 108",
                        ProductKind.SEED,
                        310,
                        FarmUnit.UNIT,
                        new Amount(12, FarmUnit.UNIT),
                        null,
                        List.of(),
                        null,
                        null,
                        "dealer sheet"),
                new Product("Bin run wheat", ProductKind.SEED, 0, FarmUnit.BU, null, null, null, null, null, "own bin"),
                new Product(
                        "Bean 24", ProductKind.SEED, 0.95, FarmUnit.LB, null, null, null, null, null, "dealer sheet"),
                new Product(
                        "Ridge 12",
                        ProductKind.INSECTICIDE,
                        48.5,
                        FarmUnit.GAL,
                        new Amount(30, FarmUnit.QT),
                        "0000-12",
                        List.of("IA", "IL"),
                        List.of("IA: Adams"),
                        LocalDate.of(2025, 11, 3),
                        "label, page 1\nand quote"),
                new Product(
                        "Clear Row",
                        ProductKind.HERBICIDE,
                        14,
                        FarmUnit.LB,
                        null,
                        "0000-44",
                        List.of("IA"),
                        List.of(),
                        null,
                        "quote"));
    }

    private static List<Seed> seeds() {
        SavedSeed saved = new SavedSeed(3, 6.1, 1.75, 4, 8, 60, 160);
        return List.of(
                new Seed(
                        "Hybrid A 108",
                        Crop.CORN,
                        80_000.0,
                        null,
                        95,
                        null,
                        List.of("Cry3Bb1", "Cry34/35"),
                        5,
                        new RefugeRule(RefugeRule.Form.BLEND, 5.0, 0.0, 4, TAG),
                        new Distribution.Pert(-2, 3, 8),
                        FULL_STAND,
                        null,
                        SeedRights.UNASKED,
                        new SeedTag(List.of("glyphosate"), List.of("Ridge 12"), null)),
                new Seed(
                        "Bin run wheat",
                        Crop.WHEAT,
                        null,
                        13_500.0,
                        88,
                        List.of(),
                        0,
                        new RefugeRule(RefugeRule.Form.NONE, null, null, null, ""),
                        NO_GAIN,
                        new Distribution.Pert(94, 97, 100),
                        saved,
                        new SeedRights(Ask.NO, Ask.NO, Ask.YES, Ask.YES, Ask.NO)),
                new Seed(
                        "Bean 24",
                        Crop.SOYBEAN,
                        null,
                        2800.0,
                        90.5,
                        List.of(),
                        0,
                        new RefugeRule(RefugeRule.Form.UNKNOWN, null, null, null, ""),
                        NO_GAIN,
                        FULL_STAND,
                        null,
                        SeedRights.UNASKED));
    }

    private static List<Trait> traits() {
        return List.of(
                new Trait("Cry3Bb1", "Cry3", "western corn rootworm", new Distribution.Pert(0.7, 0.85, 0.95), TAG),
                new Trait("Cry34/35", "Cry34/35", "western corn rootworm", new Distribution.Fixed(0.8), TAG));
    }

    private static List<ActiveContent> actives() {
        return List.of(
                new ActiveContent("Ridge 12", "bifenthrin", 2, FarmUnit.GAL, null),
                new ActiveContent("Clear Row", "dicamba", 0.7, FarmUnit.LB, 0.85));
    }

    private static List<LabelUse> labelUses() {
        Amount low = new Amount(3, FarmUnit.FL_OZ);
        Amount high = new Amount(6, FarmUnit.FL_OZ);
        return List.of(
                new LabelUse(
                        "Ridge 12", Crop.CORN, low, high, Ask.YES, new Amount(1, FarmUnit.PT), 2, 30, "label, page 6"),
                new LabelUse("Clear Row", Crop.SOYBEAN, null, null, Ask.UNKNOWN, null, null, null, "not read yet"),
                new LabelUse("Clear Row", Crop.CORN, null, new Amount(8, FarmUnit.OZ), Ask.NO, null, 1, 0, "label"));
    }

    private static List<ActiveLimit> activeLimits() {
        return List.of(
                new ActiveLimit(
                        "Ridge 12", Crop.CORN, "bifenthrin", 0.3, ActiveLimit.Basis.ACTIVE_INGREDIENT, "label, page 6"),
                new ActiveLimit(
                        "Clear Row", Crop.CORN, "dicamba", null, ActiveLimit.Basis.ACID_EQUIVALENT, "label, page 3"));
    }

    private static List<Control> controls() {
        return List.of(
                new Control(
                        "Ridge 12",
                        "western corn rootworm",
                        new Amount(6, FarmUnit.FL_OZ),
                        new Distribution.Pert(0.35, 0.55, 0.75),
                        "trial 2024"),
                new Control(
                        "Ridge 12",
                        "western corn rootworm",
                        new Amount(4, FarmUnit.FL_OZ),
                        new Distribution.Fixed(0.4),
                        "x"),
                new Control(
                        "Clear Row",
                        "waterhemp",
                        new Amount(8, FarmUnit.OZ),
                        new Distribution.Fixed(0.9),
                        "trial 2023"));
    }

    private static Pests pests() {
        return new Pests(
                List.of(
                        new InsectPressure(
                                "East 80",
                                "western corn rootworm",
                                InsectPressure.Measure.NODE_INJURY,
                                new Distribution.Pert(0.2, 0.7, 1.6),
                                new Distribution.Pert(8, 15, 22),
                                0.2,
                                new ScoutingSample(20, 0.6, 120),
                                LocalDate.of(2025, 8, 4),
                                "root digs"),
                        new InsectPressure(
                                "River",
                                "aphid",
                                InsectPressure.Measure.INSECTS_PER_SAMPLE,
                                new Distribution.Fixed(4),
                                new Distribution.Fixed(0.5),
                                0,
                                null,
                                null,
                                "guess")),
                List.of(new TraitDoubt("East 80", "Cry3", "western corn rootworm", 0.25, 0.3, "neighbour's roots")),
                List.of(new WeedPressure(
                        "East 80", "waterhemp", new Distribution.Pert(2, 8, 30), 1.5, 60, "last year's map")),
                FixtureTerms.resistance());
    }

    private static List<Program> programs() {
        RefugePlan noBlock = new RefugePlan(null, null);
        Pass plant = new Pass(
                1,
                PassKind.SEED,
                day(5, 4),
                "Hybrid A 108",
                new Amount(34, FarmUnit.THOUSAND_SEEDS),
                100,
                24.5,
                NO_GAIN,
                0);
        Pass granule = new Pass(
                2,
                PassKind.GRANULE,
                day(5, 4),
                "Ridge 12",
                new Amount(5.5, FarmUnit.FL_OZ),
                50,
                0,
                new Distribution.Pert(0, 1, 3),
                0,
                new ScoutingTrigger("western corn rootworm", 0.8, "nodes on ten roots", 1.25, 2, 1.5));
        Pass till = new Pass(3, PassKind.TILLAGE, null, null, null, 100, 18, NO_GAIN, 1.5);
        return List.of(
                new Program("East 80", "Trait alone", true, new RefugePlan(0.0, 6), "as last year", List.of(plant)),
                new Program("East 80", "Trait and granule", false, noBlock, "", List.of(plant, granule, till)),
                new Program("East 80", "Nothing at all", false, noBlock, "", List.of()),
                new Program(
                        "River",
                        "Saved",
                        true,
                        noBlock,
                        "",
                        List.of(new Pass(
                                1,
                                PassKind.SEED,
                                LocalDate.of(2025, 10, 2),
                                "Bin run wheat",
                                new Amount(1.8, FarmUnit.BU),
                                100,
                                16,
                                NO_GAIN,
                                0))));
    }

    private static List<AssumptionLine> assumptions() {
        String board = "board, February";
        return List.of(
                line(Crop.CORN, AssumptionQuantity.PRICE, new Distribution.Lognormal(4.35, 0.28, 0.8), board),
                line(Crop.SOYBEAN, AssumptionQuantity.PRICE, new Distribution.Pert(8.9, 10.4, 12.6), board),
                line(Crop.WHEAT, AssumptionQuantity.PRICE, new Distribution.Triangular(4.8, 5.6, 7), board),
                line(Crop.CORN, AssumptionQuantity.HANDLING, new Distribution.Fixed(0.32), "elevator"),
                line(Crop.CORN, AssumptionQuantity.GENETIC_LAG, new Distribution.Normal(1.9, 0.2), "trials"),
                line(Crop.CORN, AssumptionQuantity.DELAY_LOSS, new Distribution.Fixed(0.7), "trials"),
                line(Crop.CORN, AssumptionQuantity.PRICE_YIELD_TIE, new Distribution.Fixed(-0.3), "county yields"),
                line(Crop.CORN, AssumptionQuantity.YIELD, new Distribution.Weibull(201, 0.16), "county yields"),
                new AssumptionLine(
                        null,
                        "East 80",
                        AssumptionQuantity.YIELD,
                        new Distribution.Past(List.of(170.0, 182.5, 195.0)),
                        "monitor"));
    }

    private static AssumptionLine line(
            Crop crop, AssumptionQuantity quantity, Distribution distribution, String source) {
        return new AssumptionLine(crop, null, quantity, distribution, source);
    }
}
