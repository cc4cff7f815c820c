package plumbrow.documents.workbook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.means.FarmLimit;
import plumbrow.advice.means.Machine;
import plumbrow.advice.means.MachineKind;
import plumbrow.advice.means.Means;
import plumbrow.advice.means.PriceBreak;
import plumbrow.advice.means.Supply;
import plumbrow.advice.means.WorkWindow;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.MeantPass;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.season.Ground;
import plumbrow.advice.season.Work;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.advice.stand.StandCount;
import plumbrow.advice.tank.Addition;
import plumbrow.advice.tank.HourLimit;
import plumbrow.advice.tank.MixCare;
import plumbrow.advice.tank.Nozzle;
import plumbrow.advice.tank.Sprayer;
import plumbrow.advice.tank.TankBook;
import plumbrow.advice.tank.WaterTest;

/** What the fixture's labels ask, what lies around its fields, and who sprays: every column, blank and filled. */
final class FixtureTerms {
    private static final String LABEL = "label, page 6";

    private FixtureTerms() {}

    static LabelBook labels() {
        return new LabelBook(
                terms(),
                soilRates(),
                setbacks(),
                plantBacks(),
                mixRules(),
                specialLabels(),
                cares(),
                tolerances(),
                limits(),
                bulletins(),
                List.of());
    }

    private static List<BulletinLook> bulletins() {
        return List.of(
                new BulletinLook("Ridge 12", "IA", "Adams", YearMonth.of(2026, 5), day(4, 20), "S. Lind", ""),
                new BulletinLook(
                        "Ridge 12",
                        "IL",
                        "Pike",
                        YearMonth.of(2026, 6),
                        day(5, 2),
                        "K. Ng",
                        "not within 100 ft of a stream"));
    }

    private static List<ToleranceRule> tolerances() {
        return List.of(
                new ToleranceRule("Ridge 12", Crop.CORN, null, null, "PRE", "label p. 6"),
                new ToleranceRule("Ridge 12", Crop.CORN, "glyphosate", "VE", "V8", "label p. 6"));
    }

    private static List<LabelLimit> limits() {
        return List.of(
                new LabelLimit("Ridge 12", Crop.CORN, LabelLimit.Kind.NOT_AFTER, "06-12", "label p. 3"),
                new LabelLimit(
                        "Ridge 12", null, LabelLimit.Kind.DUTY, "keep a record of every application", "label p. 3"),
                new LabelLimit("Ridge 12", null, LabelLimit.Kind.CANCELLED, "2026-12-31", "order of 2025"),
                new LabelLimit("Ridge 12", null, LabelLimit.Kind.AIR_GAL_AC, "5", "label p. 3"),
                new LabelLimit(
                        "Clear Row",
                        Crop.CORN,
                        LabelLimit.Kind.NO_MAXIMUM,
                        "applications; season amount",
                        "label p. 3"));
    }

    private static List<UseTerms> terms() {
        return List.of(
                new UseTerms(
                        "Ridge 12",
                        Crop.CORN,
                        24,
                        7,
                        30,
                        Ask.NO,
                        "VE",
                        "V6",
                        999.0,
                        4.5,
                        EnumSet.of(Method.BAND, Method.IN_FURROW),
                        5.0,
                        Droplets.MEDIUM,
                        Droplets.ULTRA_COARSE,
                        24.0,
                        3.0,
                        10.0,
                        999.0,
                        0.0,
                        LABEL),
                new UseTerms(
                        "Clear Row",
                        Crop.SOYBEAN,
                        null,
                        null,
                        null,
                        Ask.UNKNOWN,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        "not read yet"),
                new UseTerms(
                        "Clear Row",
                        Crop.WHEAT,
                        0,
                        0,
                        0,
                        Ask.YES,
                        "",
                        "10.5.1",
                        null,
                        999.0,
                        EnumSet.allOf(Method.class),
                        0.0,
                        Droplets.EXTREMELY_FINE,
                        null,
                        999.0,
                        0.0,
                        999.0,
                        84.5,
                        0.5,
                        LABEL));
    }

    private static List<SoilRate> soilRates() {
        Amount low = new Amount(3, FarmUnit.FL_OZ);
        Amount high = new Amount(5, FarmUnit.FL_OZ);
        return List.of(
                new SoilRate(
                        "Ridge 12",
                        Crop.CORN,
                        Set.of(Texture.SAND, Texture.LOAMY_SAND),
                        null,
                        3.0,
                        null,
                        null,
                        true,
                        null,
                        null,
                        LABEL),
                new SoilRate("Ridge 12", Crop.CORN, Set.of(), 3.0, null, 5.5, 7.5, false, low, high, LABEL),
                new SoilRate(
                        "Clear Row",
                        Crop.CORN,
                        Set.of(),
                        null,
                        null,
                        null,
                        null,
                        false,
                        null,
                        new Amount(8, FarmUnit.OZ),
                        LABEL),
                new SoilRate(
                        "Clear Row",
                        Crop.CORN,
                        Set.of(),
                        null,
                        null,
                        null,
                        null,
                        Ask.YES,
                        30.0,
                        60.5,
                        "VE",
                        "V8",
                        false,
                        null,
                        new Amount(6, FarmUnit.OZ),
                        LABEL));
    }

    private static List<Setback> setbacks() {
        return List.of(
                new Setback("Ridge 12", FeatureKind.STREAM, 66.0, false, LABEL),
                new Setback("Ridge 12", FeatureKind.SENSITIVE_CROP, 250.5, true, LABEL),
                new Setback("Clear Row", FeatureKind.WELL, null, false, "not read yet"));
    }

    private static List<PlantBack> plantBacks() {
        return List.of(
                new PlantBack("Ridge 12", "alfalfa", 300, 7.5, null, "at least 15 inches of rain", LABEL),
                new PlantBack("Ridge 12", "alfalfa", 120, null, 7.5, "", LABEL),
                new PlantBack("Ridge 12", PlantBack.ANY_OTHER, null, null, null, "", LABEL));
    }

    private static List<MixRule> mixRules() {
        return List.of(
                new MixRule("Ridge 12", "terbufos", MixRule.Word.FORBIDDEN, LABEL),
                new MixRule("Clear Row", "adjuvant", MixRule.Word.REQUIRED, LABEL),
                new MixRule("Clear Row", "adjuvant; Ridge 12", MixRule.Word.ONLY, LABEL));
    }

    private static List<SpecialLabel> specialLabels() {
        return List.of(
                new SpecialLabel("Ridge 12", Crop.WHEAT, "IA", null, day(4, 15), day(8, 31), true, "24(c) label"),
                new SpecialLabel(
                        "Clear Row",
                        Crop.CORN,
                        "IL",
                        List.of("Pike", "Adams"),
                        null,
                        SpecialLabel.NO_LAST_DAY,
                        "section 18"));
    }

    private static List<ProductCare> cares() {
        return List.of(
                new ProductCare(
                        "Ridge 12",
                        day(1, 12),
                        Ask.YES,
                        Ask.NO,
                        Ask.YES,
                        Ask.YES,
                        Ask.NO,
                        48,
                        Set.of("long sleeves", "gloves, 14 mil nitrile", "goggles"),
                        LABEL),
                new ProductCare(
                        "Clear Row",
                        null,
                        Ask.UNKNOWN,
                        Ask.UNKNOWN,
                        Ask.UNKNOWN,
                        Ask.UNKNOWN,
                        Ask.UNKNOWN,
                        null,
                        null,
                        "not read yet"),
                new ProductCare(
                        "Bean 24", null, Ask.NO, Ask.NO, Ask.NO, Ask.NO, Ask.NO, 0, Set.of(), "no label, plain seed"));
    }

    static List<KnownResistance> resistance() {
        return List.of(new KnownResistance("East 80", "waterhemp", "9", "greenhouse test 2024"));
    }

    static Ground ground() {
        List<Point> creek =
                List.of(new Point(-43.6, 41.999), new Point(-43.597123456789, 41.9985), new Point(-43.595, 41.999));
        return new Ground(
                List.of(
                        new Looked("East 80", FeatureKind.STREAM),
                        new Looked("East 80", FeatureKind.DWELLING),
                        new Looked("River", null)),
                List.of(
                        new Feature(
                                "East 80",
                                FeatureKind.STREAM,
                                "Mill \"Creek\"",
                                new Feature.Line(creek),
                                null,
                                "county map"),
                        new Feature("East 80", FeatureKind.DWELLING, "Ng, A.", null, 140.5, "paced off"),
                        new Feature(
                                "East 80",
                                FeatureKind.WELL,
                                "windmill",
                                new Feature.Spot(new Point(-43.5999, 42.0031)),
                                0.0,
                                "seen"),
                        new Feature(
                                "East 80",
                                FeatureKind.SENSITIVE_CROP,
                                "grapes",
                                new Feature.Area(Fixture.outline()),
                                300.0,
                                "registry")),
                List.of(new AlsoIn("East 80", "IA", "Page"), new AlsoIn("River", "IA", "Adams")),
                List.of(
                        new NextCrop("East 80", "alfalfa", LocalDate.of(2027, 4, 20), NextCrop.Use.NEXT, true),
                        new NextCrop("East 80", "cereal rye", day(9, 25), NextCrop.Use.COVER, false),
                        new NextCrop("5-4", "sorghum", null, NextCrop.Use.ESCAPE, null)),
                List.of(
                        new FieldLand("East 80", Ask.YES, 35.5, 6.0, "soil map"),
                        new FieldLand("River", Ask.UNKNOWN, null, null, "not looked up")));
    }

    static Work work() {
        return new Work(
                        List.of(
                                new SprayPlan(
                                        "East 80",
                                        "Trait and granule",
                                        2,
                                        "planter",
                                        Method.IN_FURROW,
                                        5.0,
                                        Droplets.COARSE,
                                        0.0,
                                        50.0,
                                        "PRE",
                                        0.0,
                                        2.5,
                                        Ask.NO,
                                        "S. Lind"),
                                new SprayPlan(
                                        "East 80",
                                        "Trait and granule",
                                        1,
                                        "planter",
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        null,
                                        Ask.UNKNOWN,
                                        null),
                                new SprayPlan(
                                        "River",
                                        "Saved",
                                        1,
                                        null,
                                        Method.ON_SEED,
                                        null,
                                        null,
                                        null,
                                        null,
                                        "1",
                                        null,
                                        null,
                                        Ask.UNKNOWN,
                                        null)),
                        new Crew(
                                List.of(
                                        new Person(
                                                "S. Lind",
                                                "C-0000",
                                                "IA",
                                                LocalDate.of(2028, 12, 31),
                                                LicenceKind.COMMERCIAL,
                                                EnumSet.of(Licence.Cover.FIELD_CROPS, Licence.Cover.AERIAL),
                                                Ask.YES),
                                        new Person("K. Ng", null, null, null, null, null, Ask.UNKNOWN)),
                                Set.of("goggles", "gloves, 14 mil nitrile"),
                                Ask.YES,
                                List.of(
                                        new Licence("S. Lind", "C-0001", "MN", null, LicenceKind.PRIVATE, Set.of()),
                                        new Licence("S. Lind", "C-0002", "IL", LocalDate.of(2027, 1, 1), null, null))),
                        List.of(
                                new Done(
                                        "East 80",
                                        LocalDate.of(2025, 11, 2),
                                        "Clear Row",
                                        new Amount(4.25, FarmUnit.OZ),
                                        62.5,
                                        "S. Lind",
                                        "log book",
                                        MeantPass.NONE),
                                new Done(
                                        "East 80",
                                        day(2, 2),
                                        "Ridge 12",
                                        new Amount(5, FarmUnit.FL_OZ),
                                        50,
                                        null,
                                        "memory",
                                        new MeantPass("Trait and granule", 2)),
                                new Done(
                                        "River",
                                        day(2, 1),
                                        "Ridge 12",
                                        new Amount(2, FarmUnit.FL_OZ),
                                        100,
                                        null,
                                        "receipt")),
                        means())
                .withStands(List.of(new StandCount(
                        "East 80",
                        day(4, 25),
                        day(5, 14),
                        new Distribution.Pert(14_000, 16_000, 18_000),
                        null,
                        32.0,
                        "ten counts, invented")));
    }

    private static Means means() {
        String farm = "Home place";
        return new Means(
                List.of(
                        new Machine(farm, "big sprayer", MachineKind.SPRAYER, 60, 12, 65, "own"),
                        new Machine(farm, "planter", MachineKind.PLANTER, 40.5, 5.5, 62.5, "own")),
                List.of(new WorkWindow(
                        farm, "first week of June", MachineKind.SPRAYER, day(6, 1), day(6, 7), 3.5, 7, "own count")),
                List.of(new FarmLimit(farm, 180_000.0, null, 10.0, 0.4, "own")),
                List.of(
                        new PriceBreak(farm, "Ridge 12", 20, 44.25, "dealer"),
                        new PriceBreak(farm, "Ridge 12", 40, 43, "dealer")),
                List.of(new Supply(farm, "Ridge 12", 60, "dealer")),
                tank(farm));
    }

    private static TankBook tank(String farm) {
        return new TankBook(
                List.of(new Sprayer(farm, "big sprayer", 1000, 20.0, 140.0, 50.0, 20.0, null, "own")),
                List.of(
                        new Nozzle(farm, "wide air 04", "04", 20, 40, Droplets.VERY_COARSE, "maker's chart"),
                        new Nozzle(farm, "wide air 04", "04", 40.5, 70, Droplets.COARSE, "maker's chart")),
                List.of(new MixCare(
                        "Ridge 12",
                        "SC",
                        new Amount(2.5, FarmUnit.GAL),
                        null,
                        "after the dry products",
                        null,
                        MixCare.Conditioner.ALLOWED,
                        null,
                        17.0,
                        "label, page 4")),
                List.of(new WaterTest(farm, day(2, 10), 120, 45, 55, 12, null, 7.6, "own sample")),
                List.of(
                        new Addition("Ridge 12", null, "Clear Row", .25, Addition.Basis.PERCENT, "label, page 4"),
                        new Addition("Ridge 12", "East 80", "Clear Row", 8.5, Addition.Basis.LB_PER_100_GAL, "own")),
                List.of(
                        new HourLimit("IA", null, HourLimit.Measure.AFTER_SUNRISE, 1.0, null, "invented rule"),
                        new HourLimit(null, "Ridge 12", HourLimit.Measure.AIR, null, 85.0, "label, page 5")));
    }

    private static LocalDate day(int month, int day) {
        return LocalDate.of(2026, month, day);
    }
}
