package plumbrow.advice.gates;

import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.course.RefugePlan;
import plumbrow.advice.outlook.Law;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.quantity.FarmUnit;
import plumbrow.advice.shelf.ActiveLimit.Basis;
import plumbrow.advice.shelf.Ask;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule.Form;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Trait;

/** Scenes by seed: the same number gives the same scene. Mostly complete labels, so that many courses may be advised. */
final class RandomScene {
    private static final List<String> INGREDIENTS = List.of("atrazine", "glyphosate", "2,4-D");

    private final Random random;
    private final Scene scene = new Scene();
    private final double missing;

    private RandomScene(long seed) {
        random = new Random(seed);
        missing = Math.max(0, random.nextInt(4) - 1) * 0.02;
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
        }
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
        int low = 8 + random.nextInt(10);
        int high = low + 4 + random.nextInt(20);
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
        for (String ingredient : INGREDIENTS) {
            if (ingredient.equals("atrazine") || random.nextInt(3) == 0) {
                scene.active(name, ingredient, 1 + random.nextInt(4), FarmUnit.GAL, maybe(0.7));
                scene.limit(name, ingredient, maybe(1.0 + random.nextInt(4)), any(List.of(Basis.values())));
            }
        }
    }

    private void seeds() {
        Form form = any(List.of(Form.values()));
        double blend = 5 * (1 + random.nextInt(2));
        scene.traits.add(new Trait("P1", "group 1", "corn rootworm", new Law.Fixed(0.9), ""));
        scene.traitSeed(
                "Trait",
                blend,
                Scene.rule(form, maybe(5.0 * (1 + random.nextInt(2))), maybe(300.0 * random.nextInt(3)), maybe(4)));
        scene.savedSeed("Bin", new SeedRights(no(), no(), ask(), Ask.YES, no()));
        double refuge = 5 * random.nextInt(6);
        scene.plant("Trait", 100 - refuge).plant("Bin", refuge);
        scene.refuge = new RefugePlan(maybe(300.0 * random.nextInt(2)), maybe(rare() ? 3 : 4 + random.nextInt(4)));
    }

    private boolean rare() {
        return random.nextInt(25) == 0;
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
