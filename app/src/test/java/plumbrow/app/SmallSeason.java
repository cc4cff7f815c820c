package plumbrow.app;

import java.time.LocalDate;
import java.util.List;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.Pests;
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

/** One invented farm with one corn field, one seed and one insecticide: enough to weigh, small enough to read. */
public final class SmallSeason {
    private static final String FIELD = "North 80";
    private static final String TODAY = "invented for this test";

    private SmallSeason() {}

    public static Season of(int year) {
        return new Season(
                year,
                LocalDate.of(year, 3, 2),
                "R. Alder",
                List.of(new Farm("Alder Home", "R. Alder", 1, 1)),
                List.of(new Field(FIELD, "Alder Home", 80, null, "IA", "Adams", Crop.CORN, null, 3.4, null, null)),
                List.of(),
                shelf(),
                new Pests(
                        List.of(new InsectPressure(
                                FIELD,
                                "corn rootworm",
                                InsectPressure.Measure.NODE_INJURY,
                                new Distribution.Pert(0.2, 0.9, 2.4),
                                new Distribution.Pert(10, 15, 20),
                                0,
                                null,
                                null,
                                TODAY)),
                        List.of(),
                        List.of()),
                List.of(
                        program("seed alone", true, List.of(seed())),
                        program("half rate", false, List.of(seed(), granules(2, 3), harvest(3))),
                        program("full rate", false, List.of(seed(), granules(2, 6), harvest(3)))),
                List.of(
                        line(AssumptionQuantity.PRICE, new Distribution.Lognormal(4.2, 0.25, 0.6)),
                        line(AssumptionQuantity.YIELD, new Distribution.Weibull(195, 0.14)),
                        line(AssumptionQuantity.HANDLING, new Distribution.Fixed(0.25))));
    }

    private static Shelf shelf() {
        return new Shelf(
                List.of(
                        product("Hollowbrook 108", ProductKind.SEED, 240, FarmUnit.UNIT),
                        product("Stonefly 3G", ProductKind.INSECTICIDE, 3.1, FarmUnit.LB)),
                List.of(new Seed(
                        "Hollowbrook 108",
                        Crop.CORN,
                        80_000.0,
                        null,
                        95,
                        List.of(),
                        0,
                        new RefugeRule(RefugeRule.Form.NONE, null, null, null, TODAY),
                        new Distribution.Fixed(0),
                        new Distribution.Fixed(100),
                        null,
                        new SeedRights(Ask.NO, Ask.NO, Ask.NO, Ask.NO, Ask.NO))),
                List.of(),
                List.of(new ActiveContent("Stonefly 3G", "tefluthrin", 0.03, FarmUnit.LB, null)),
                List.of(new LabelUse(
                        "Stonefly 3G",
                        Crop.CORN,
                        new Amount(3, FarmUnit.LB),
                        new Amount(6, FarmUnit.LB),
                        Ask.NO,
                        new Amount(6, FarmUnit.LB),
                        1,
                        30,
                        TODAY)),
                List.of(new ActiveLimit(
                        "Stonefly 3G", Crop.CORN, "tefluthrin", 0.2, ActiveLimit.Basis.ACTIVE_INGREDIENT, TODAY)),
                List.of(control(3, 0.55), control(6, 0.75)));
    }

    private static Product product(String name, ProductKind kind, double priceUsd, FarmUnit per) {
        boolean label = kind.underLabel();
        return new Product(
                name,
                kind,
                priceUsd,
                per,
                null,
                label ? "00000-1" : null,
                label ? List.of("IA") : null,
                label ? List.of() : null,
                label ? LocalDate.of(2026, 1, 15) : null,
                TODAY);
    }

    private static Control control(double pounds, double share) {
        return new Control(
                "Stonefly 3G", "corn rootworm", new Amount(pounds, FarmUnit.LB), new Distribution.Fixed(share), TODAY);
    }

    private static Program program(String name, boolean baseline, List<Pass> passes) {
        return new Program(FIELD, name, baseline, new RefugePlan(null, null), "", passes);
    }

    private static Pass seed() {
        Amount rate = new Amount(34_000, FarmUnit.SEEDS);
        return new Pass(
                1,
                PassKind.SEED,
                LocalDate.of(2027, 5, 2),
                "Hollowbrook 108",
                rate,
                100,
                0,
                new Distribution.Fixed(0),
                0);
    }

    private static Pass granules(int number, double pounds) {
        Amount rate = new Amount(pounds, FarmUnit.LB);
        return new Pass(
                number,
                PassKind.GRANULE,
                LocalDate.of(2027, 5, 2),
                "Stonefly 3G",
                rate,
                100,
                1.5,
                new Distribution.Fixed(0),
                0);
    }

    private static Pass harvest(int number) {
        return new Pass(
                number, PassKind.HARVEST, LocalDate.of(2027, 10, 9), null, null, 100, 0, new Distribution.Fixed(0), 0);
    }

    private static AssumptionLine line(AssumptionQuantity quantity, Distribution distribution) {
        return new AssumptionLine(Crop.CORN, null, quantity, distribution, TODAY);
    }
}
