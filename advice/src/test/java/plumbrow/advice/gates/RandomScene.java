package plumbrow.advice.gates;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit.Basis;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.SeedTag;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.Trait;
import plumbrow.advice.shelf.UseTerms;

/** Scenes by seed: the same number gives the same scene. Mostly complete labels, so that many programs may be advised. */
final class RandomScene {
    private static final List<String> INGREDIENTS = List.of("atrazine", "glyphosate", "2,4-D");
    private static final List<FeatureKind> AROUND = List.of(
            FeatureKind.STREAM,
            FeatureKind.WELL,
            FeatureKind.DWELLING,
            FeatureKind.BEE_YARD,
            FeatureKind.ORGANIC_FIELD,
            FeatureKind.OWN_HOUSE,
            FeatureKind.PUBLIC_ROAD);

    private final Random random;
    private final Scene scene = new Scene();
    private final double missing;

    private RandomScene(long seed) {
        random = new Random(seed);
        missing = Math.max(0, random.nextInt(4) - 1) * 0.004;
    }

    static Scene of(long seed) {
        return new RandomScene(seed).make();
    }

    private Scene make() {
        int products = 1 + random.nextInt(3);
        for (int i = 0; i < products; i++) {
            product("Product " + i);
        }
        int sprays = 1 + random.nextInt(3);
        for (int i = 0; i < sprays; i++) {
            scene.pass(
                    PassKind.SPRAY,
                    maybe(Scene.PLANTING.plusDays(random.nextInt(130))),
                    "Product " + random.nextInt(products),
                    maybe(new Amount(10 + random.nextInt(14), FarmUnit.FL_OZ)),
                    50 + random.nextInt(51));
            scene.plans.add(plan(scene.passes.size()));
        }
        surroundings();
        seeds();
        scene.harvest(maybe(Scene.HARVEST));
        return scene;
    }

    private void product(String name) {
        scene.product(
                name,
                ProductKind.HERBICIDE,
                maybe(rare() ? List.of("IL") : List.of("IA", "IL")),
                maybe(rare() ? List.of("IA: Marrow") : List.of("IL: Sorrel")));
        int low = 6 + random.nextInt(6);
        int high = low + 10 + random.nextInt(20);
        if (!rare()) {
            scene.use(
                    name,
                    maybe(low + " fl oz"),
                    maybe(high + " fl oz"),
                    ask(),
                    maybe(high * (2 + random.nextInt(2)) + " fl oz"),
                    maybe(2 + random.nextInt(2)),
                    maybe(random.nextInt(30)));
        }
        read(name);
        for (String ingredient : INGREDIENTS) {
            if (ingredient.equals("atrazine") || random.nextInt(3) == 0) {
                scene.active(name, ingredient, 1 + random.nextInt(4), FarmUnit.GAL, maybe(0.7));
                scene.limit(name, ingredient, maybe(1.0 + random.nextInt(4)), any(List.of(Basis.values())));
            }
        }
    }

    /** Labels read whole but for what is left out by chance. */
    private void read(String product) {
        scene.terms.add(new UseTerms(
                product,
                Crop.CORN,
                maybe(12 * random.nextInt(4)),
                maybe(rare() ? 14 : 0),
                maybe(30 * random.nextInt(4)),
                rare() ? Ask.UNKNOWN : any(List.of(Ask.YES, Ask.NO)),
                maybe(any(List.of("", "VE"))),
                maybe(any(List.of("", "V8", "R1"))),
                maybe(any(List.of(30.0, Limit.FREE))),
                maybe(any(List.of(4.0, Limit.FREE))),
                maybe(Set.of(Method.GROUND_BROADCAST, Method.BAND)),
                maybe(any(List.of(0.0, 10.0, 15.0))),
                maybe(any(List.of(Droplets.EXTREMELY_FINE, Droplets.MEDIUM))),
                maybe(any(List.of(Droplets.ULTRA_COARSE, Droplets.VERY_COARSE))),
                maybe(any(List.of(24.0, Limit.FREE))),
                maybe(3.0),
                maybe(10.0),
                maybe(any(List.of(85.0, Limit.FREE))),
                maybe(4.0),
                "label p. 5"));
        scene.cares.add(new ProductCare(
                product,
                maybe(LocalDate.of(2025, 2, 20).plusDays(random.nextInt(30))),
                rare() ? Ask.UNKNOWN : any(List.of(Ask.YES, Ask.NO)),
                rare() ? Ask.UNKNOWN : any(List.of(Ask.YES, Ask.NO)),
                no(),
                rare() ? Ask.UNKNOWN : any(List.of(Ask.YES, Ask.NO)),
                no(),
                maybe(any(List.of(0, 48))),
                maybe(any(List.of(Set.of("gloves"), Set.of("gloves", "apron")))),
                "label p. 2"));
        for (int month = 4; month <= 10; month++) {
            if (!rare()) {
                scene.bulletins.add(new BulletinLook(
                        product,
                        "IA",
                        "Marrow",
                        YearMonth.of(2026, month),
                        LocalDate.of(2026, month, 1).minusDays(20),
                        "Pat",
                        rare() ? "not after sunset" : ""));
            }
        }
        for (FeatureKind kind : AROUND) {
            scene.setbacks.add(new Setback(product, kind, maybe(any(List.of(0.0, 66.0))), rare(), "label p. 4"));
        }
        if (!rare()) {
            scene.tolerances.add(new ToleranceRule(product, Crop.CORN, null, null, "PRE", "label p. 5"));
            scene.tolerances.add(new ToleranceRule(
                    product, Crop.CORN, any(Arrays.asList(null, "glyphosate")), "VE", null, "label p. 5"));
        }
        scene.plantBacks.add(new PlantBack(product, "corn", maybe(rare() ? 20 : 0), null, null, "", "label p. 9"));
        scene.plantBacks.add(new PlantBack(product, "soybean", maybe(100), null, null, "", "label p. 9"));
        scene.plantBacks.add(new PlantBack(product, PlantBack.ANY_OTHER, maybe(150), null, null, "", "label p. 9"));
        if (random.nextInt(5) == 0) {
            scene.specialLabels.add(new SpecialLabel(
                    product,
                    Crop.CORN,
                    "IA",
                    maybe(List.of("Marrow")),
                    maybe(LocalDate.of(2026, 4, 1)),
                    maybe(any(List.of(LocalDate.of(2026, 9, 30), SpecialLabel.NO_LAST_DAY))),
                    "special label"));
        }
        if (random.nextInt(5) == 0) {
            scene.mixRules.add(new MixRule(product, "adjuvant", any(List.of(MixRule.Word.values())), "label p. 8"));
        }
        if (random.nextInt(4) == 0) {
            scene.soilRates.add(new SoilRate(
                    product,
                    Crop.CORN,
                    any(List.of(Set.of(), Set.of(Texture.SILTY_CLAY_LOAM))),
                    maybe(2.0),
                    maybe(6.0),
                    null,
                    null,
                    false,
                    maybe(new Amount(8, FarmUnit.FL_OZ)),
                    maybe(new Amount(40, FarmUnit.FL_OZ)),
                    "label p. 6"));
        }
    }

    private void surroundings() {
        if (rare()) {
            scene.looked.clear();
        }
        for (FeatureKind kind : AROUND) {
            if (random.nextInt(3) == 0) {
                scene.features.add(
                        new Feature("Home", kind, kind.word(), null, maybe(20.0 * random.nextInt(8)), "map"));
            }
        }
        if (!rare()) {
            scene.lands.add(new FieldLand(
                    "Home", rare() ? Ask.UNKNOWN : any(List.of(Ask.YES, Ask.NO)), maybe(35.0), maybe(12.0), "map"));
        }
        scene.nextCrops.add(new NextCrop(
                "Home",
                any(List.of("soybean", "oats")),
                maybe(LocalDate.of(2027, 4, 20)),
                NextCrop.Use.NEXT,
                random.nextBoolean()));
        if (rare()) {
            scene.alsoIn.add(new AlsoIn("Home", "IL", "Sorrel"));
        }
        if (random.nextInt(5) == 0) {
            scene.log.add(new Done(
                    "Home", LocalDate.of(2026, 4, 1), "Product 0", new Amount(8, FarmUnit.FL_OZ), 100, null, "log"));
        }
    }

    private SprayPlan plan(int pass) {
        return new SprayPlan(
                "Home",
                "Program",
                pass,
                any(List.of("A", "B")),
                maybe(rare() ? Method.AERIAL : Method.GROUND_BROADCAST),
                maybe(15.0),
                maybe(rare() ? Droplets.FINE : Droplets.COARSE),
                maybe(20.0),
                maybe(50.0),
                maybe(rare() ? "R2" : "V4"),
                maybe(10.0),
                maybe(3.0),
                rare() ? Ask.UNKNOWN : Ask.NO,
                maybe("Pat"));
    }

    private void seeds() {
        Form form = rare() ? Form.UNKNOWN : any(List.of(Form.NONE, Form.BLEND, Form.BLOCK));
        double blend = 5 * (1 + random.nextInt(2));
        scene.traits.add(new Trait("P1", "group 1", "corn rootworm", new Distribution.Fixed(0.9), ""));
        scene.traitSeed(
                "Trait",
                blend,
                Scene.rule(form, maybe(5.0 * (1 + random.nextInt(2))), maybe(300.0 * random.nextInt(3)), maybe(4)));
        scene.savedSeed("Bin", new SeedRights(no(), no(), any(List.of(Ask.YES, Ask.NO)), Ask.YES, no()));
        tag(0);
        tag(1);
        double refuge = 5 * random.nextInt(6);
        scene.plant("Trait", 100 - refuge).plant("Bin", refuge);
        scene.refuge = new RefugePlan(maybe(300.0 * random.nextInt(2)), maybe(rare() ? 3 : 4 + random.nextInt(4)));
    }

    /** Most seed is bare and tolerates glyphosate. */
    private void tag(int seed) {
        SeedTag tag = new SeedTag(
                maybe(rare() ? List.of() : List.of("glyphosate")), maybe(List.of()), maybe("Pat, 2026-02-02"));
        scene.seeds.set(seed, LabelEdits.with(scene.seeds.get(seed), "tag", tag));
    }

    private boolean rare() {
        return random.nextInt(80) == 0;
    }

    private Ask no() {
        return rare() ? Ask.UNKNOWN : Ask.NO;
    }

    private Ask ask() {
        return any(List.of(Ask.values()));
    }

    private <T> T any(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private <T> @Nullable T maybe(T value) {
        return random.nextDouble() < missing ? null : value;
    }
}
