package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.Set;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit.Basis;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.Droplets;
import plumbrow.advice.shelf.Method;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;

/** Labels that were read whole, and plans that keep them. */
final class WholeLabel {
    static final LocalDate SPRAYED = LocalDate.of(2026, 5, 20);

    private WholeLabel() {}

    /** A field with a creek 200 ft off, soybean to follow, and one spray pass of a herbicide that keeps every limit. */
    static Scene scene() {
        Scene scene = new Scene()
                .product("Tackline", ProductKind.HERBICIDE)
                .use("Tackline", "1 pt", "2 qt", Ask.NO, "1 gal", 2, 60)
                .active("Tackline", "atrazine", 4, FarmUnit.GAL, null)
                .limit("Tackline", "atrazine", 2.5, Basis.ACTIVE_INGREDIENT)
                .spray("Tackline", "1 qt", SPRAYED);
        scene.plans.add(plan(1));
        read(scene, "Tackline");
        around(scene);
        return scene.harvest(Scene.HARVEST);
    }

    /** Terms, care, setback and plant-back rows of a product, all read. */
    static void read(Scene scene, String product) {
        scene.terms.add(terms(product));
        scene.cares.add(care(product));
        scene.setbacks.add(new Setback(product, FeatureKind.STREAM, 66.0, false, "label p. 4"));
        scene.tolerances.add(new ToleranceRule(product, Crop.CORN, null, null, null, "label p. 5"));
        scene.plantBacks.add(new PlantBack(product, "soybean", 300, null, null, "", "label p. 9"));
        scene.plantBacks.add(new PlantBack(product, PlantBack.ANY_OTHER, 500, null, null, "", "label p. 9"));
        scene.plantBacks.add(new PlantBack(product, "corn", 0, null, null, "", "label p. 9"));
    }

    static void around(Scene scene) {
        scene.features.add(new Feature("Home", FeatureKind.STREAM, "Mill Creek", null, 200.0, "map"));
        scene.nextCrops.add(new NextCrop("Home", "soybean", LocalDate.of(2027, 5, 10), NextCrop.Use.NEXT, false));
    }

    static UseTerms terms(String product) {
        return new UseTerms(
                product,
                Crop.CORN,
                12,
                7,
                60,
                Ask.NO,
                "VE",
                "V8",
                30.0,
                4.0,
                Set.of(Method.GROUND_BROADCAST, Method.BAND),
                15.0,
                Droplets.MEDIUM,
                Droplets.VERY_COARSE,
                24.0,
                3.0,
                10.0,
                85.0,
                4.0,
                "label p. 5");
    }

    static ProductCare care(String product) {
        return new ProductCare(
                product,
                LocalDate.of(2026, 1, 10),
                Ask.NO,
                Ask.NO,
                Ask.NO,
                Ask.NO,
                Ask.NO,
                0,
                Set.of("Gloves"),
                "label p. 2");
    }

    static SprayPlan plan(int pass) {
        return new SprayPlan(
                "Home",
                "Program",
                pass,
                null,
                Method.GROUND_BROADCAST,
                15.0,
                Droplets.COARSE,
                20.0,
                0.0,
                "V4",
                10.0,
                3.0,
                Ask.NO,
                "Pat");
    }
}
