package plumbrow.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
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

/** An invented shelf with something for every part of the weighing: traits of two groups, one insecticide, two herbicides. */
final class BenchShelf {
    static final String PLAIN = "Plain seed";
    static final String SINGLE = "One-trait seed";
    static final String PYRAMID = "Two-trait seed";
    static final String INSECTICIDE = "Insecticide";
    static final String EARLY = "Early herbicide";
    static final String LATE = "Late herbicide";
    private static final String SOURCE = "invented for the benchmark";

    private final List<Product> products = new ArrayList<>();
    private final List<Seed> seeds = new ArrayList<>();
    private final List<ActiveContent> actives = new ArrayList<>();
    private final List<LabelUse> uses = new ArrayList<>();
    private final List<ActiveLimit> limits = new ArrayList<>();
    private final List<Control> controls = new ArrayList<>();

    private BenchShelf() {}

    static Shelf shelf() {
        return new BenchShelf().build();
    }

    private Shelf build() {
        seed(PLAIN, 210, 0, new Distribution.Pert(-3, 0, 3));
        seed(SINGLE, 255, 5, new Distribution.Pert(-2, 1, 5), "Cry3Bb1");
        seed(PYRAMID, 285, 5, new Distribution.Pert(-2, 2, 6), "Cry3Bb1", "Cry34/35");
        spray(INSECTICIDE, ProductKind.INSECTICIDE, 2.4, "bifenthrin", 2, 0.3);
        spray(EARLY, ProductKind.HERBICIDE, 0.9, "S-metolachlor", 7.6, 3.7);
        spray(LATE, ProductKind.HERBICIDE, 1.6, "mesotrione", 4, 0.24);
        control(INSECTICIDE, BenchSeason.ROOTWORM, 3, 0.3, 0.45, 0.6);
        control(INSECTICIDE, BenchSeason.ROOTWORM, 6, 0.5, 0.7, 0.85);
        control(INSECTICIDE, BenchSeason.BORER, 6, 0.3, 0.5, 0.7);
        for (String weed : List.of(BenchSeason.WATERHEMP, BenchSeason.FOXTAIL)) {
            control(EARLY, weed, 20, 0.6, 0.8, 0.95);
            control(LATE, weed, 3, 0.7, 0.9, 0.98);
        }
        List<Trait> traits = List.of(
                new Trait("Cry3Bb1", "Cry3", BenchSeason.ROOTWORM, new Distribution.Pert(0.6, 0.8, 0.95), SOURCE),
                new Trait("Cry34/35", "Cry34/35", BenchSeason.ROOTWORM, new Distribution.Pert(0.6, 0.85, 0.95), SOURCE),
                new Trait("Cry3Bb1", "Cry3", BenchSeason.BORER, new Distribution.Pert(0.4, 0.6, 0.8), SOURCE));
        return new Shelf(
                products,
                seeds,
                traits,
                actives,
                uses,
                limits,
                controls,
                BenchLabels.book(List.of(INSECTICIDE, EARLY, LATE)));
    }

    private void seed(String name, double usdPerUnit, double blendPct, Distribution gain, String... traits) {
        products.add(
                new Product(name, ProductKind.SEED, usdPerUnit, FarmUnit.UNIT, null, null, null, null, null, SOURCE));
        RefugeRule rule = traits.length == 0
                ? new RefugeRule(RefugeRule.Form.NONE, null, null, null, SOURCE)
                : new RefugeRule(RefugeRule.Form.BLEND, blendPct, null, null, SOURCE);
        Distribution stand = new Distribution.Pert(94, 98, 100);
        seeds.add(new Seed(
                name,
                Crop.CORN,
                80_000.0,
                null,
                95,
                List.of(traits),
                blendPct,
                rule,
                gain,
                stand,
                null,
                SeedRights.UNASKED));
    }

    private void spray(
            String name,
            ProductKind kind,
            double usdPerFlOz,
            String ingredient,
            double poundsPerGal,
            double mostLbPerAcre) {
        products.add(new Product(
                name,
                kind,
                usdPerFlOz,
                FarmUnit.FL_OZ,
                null,
                "0-0",
                List.of("IA"),
                List.of(),
                LocalDate.of(2026, 1, 5),
                SOURCE));
        actives.add(new ActiveContent(name, ingredient, poundsPerGal, FarmUnit.GAL, null));
        Amount low = new Amount(2, FarmUnit.FL_OZ);
        Amount high = new Amount(32, FarmUnit.FL_OZ);
        Amount season = new Amount(64, FarmUnit.FL_OZ);
        uses.add(new LabelUse(name, Crop.CORN, low, high, Ask.NO, season, 2, 30, SOURCE));
        limits.add(new ActiveLimit(
                name, Crop.CORN, ingredient, mostLbPerAcre, ActiveLimit.Basis.ACTIVE_INGREDIENT, SOURCE));
    }

    private void control(String product, String pest, double flOz, double low, double likely, double high) {
        controls.add(new Control(
                product, pest, new Amount(flOz, FarmUnit.FL_OZ), new Distribution.Pert(low, likely, high), SOURCE));
    }
}
