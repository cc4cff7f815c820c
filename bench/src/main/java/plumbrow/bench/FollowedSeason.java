package plumbrow.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
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
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.advice.shelf.RefugeRule;
import plumbrow.advice.shelf.Seed;
import plumbrow.advice.shelf.SeedRights;
import plumbrow.advice.shelf.Shelf;
import plumbrow.advice.weeds.Basis;
import plumbrow.advice.weeds.MonthClimate;
import plumbrow.advice.weeds.Timing;
import plumbrow.advice.weeds.WeedBook;
import plumbrow.advice.weeds.WeedRating;

/** A farm whose weeds are followed day by day: corn fields of six programs and some weeds each, every input drawn. */
final class FollowedSeason {
    private static final double[] MEAN_F = {19, 25, 37, 50, 61, 72, 75, 72, 64, 52, 37, 25};
    private static final List<String> WEEDS =
            List.of("waterhemp", "burcucumber", "giant foxtail", "common lambsquarters");

    private FollowedSeason() {}

    static Season of(int fields, int weeds) {
        List<String> names = WEEDS.subList(0, weeds);
        List<Field> land = new ArrayList<>();
        List<WeedPressure> pressures = new ArrayList<>();
        List<Program> programs = new ArrayList<>();
        for (int i = 0; i < fields; i++) {
            String field = "field " + i;
            land.add(new Field(field, "Home", 100, null, "IA", "Adams", Crop.CORN, Texture.LOAM, 3.0, 6.5, 1.0));
            names.forEach(weed ->
                    pressures.add(new WeedPressure(field, weed, new Distribution.Pert(5, 25, 80), 1, 45, "invented")));
            programs.addAll(programs(field));
        }
        return new Season(
                2026,
                LocalDate.of(2026, 3, 1),
                "A. Adviser",
                List.of(new Farm("Home", "A grower", 1, 1)),
                land,
                List.of(),
                shelf(),
                new Pests(List.of(), List.of(), pressures, List.of(), weedBook(names)),
                programs,
                List.of(
                        new AssumptionLine(
                                Crop.CORN,
                                null,
                                AssumptionQuantity.PRICE,
                                new Distribution.Lognormal(4, .2, .6),
                                "invented"),
                        new AssumptionLine(
                                Crop.CORN,
                                null,
                                AssumptionQuantity.YIELD,
                                new Distribution.Weibull(200, .2),
                                "invented")));
    }

    private static List<Program> programs(String field) {
        return List.of(
                program(field, "nothing"),
                program(field, "pre", spray(5, 2, "soil")),
                program(field, "post", spray(5, 25, "leaf")),
                program(field, "both", spray(5, 2, "soil"), spray(6, 1, "leaf")),
                program(field, "two posts", spray(5, 2, "soil"), spray(5, 28, "leaf"), spray(6, 15, "other")),
                program(field, "layered", spray(5, 2, "soil"), spray(6, 1, "leaf"), spray(6, 1, "other")));
    }

    private static Program program(String field, String name, Pass... sprays) {
        List<Pass> passes = new ArrayList<>(List.of(sprays));
        passes.add(pass(PassKind.SEED, 5, 1, "seed", new Amount(1, FarmUnit.UNIT)));
        List<Pass> numbered = new ArrayList<>();
        for (Pass pass : passes) {
            numbered.add(new Pass(
                    numbered.size() + 1,
                    pass.kind(),
                    pass.date(),
                    pass.product(),
                    pass.rate(),
                    100,
                    8.5,
                    new Distribution.Fixed(0),
                    0));
        }
        return new Program(field, name, name.equals("nothing"), new RefugePlan(null, null), "", numbered);
    }

    private static Pass spray(int month, int day, String product) {
        return pass(PassKind.SPRAY, month, day, product, new Amount(30, FarmUnit.FL_OZ));
    }

    private static Pass pass(PassKind kind, int month, int day, String product, Amount rate) {
        return new Pass(1, kind, LocalDate.of(2026, month, day), product, rate, 100, 8.5, new Distribution.Fixed(0), 0);
    }

    private static Shelf shelf() {
        List<Product> products = new ArrayList<>();
        products.add(product("seed", ProductKind.SEED, FarmUnit.UNIT));
        List<ActiveContent> actives = new ArrayList<>();
        for (String[] one : new String[][] {{"soil", "atrazine"}, {"leaf", "glyphosate"}, {"other", "mesotrione"}}) {
            products.add(product(one[0], ProductKind.HERBICIDE, FarmUnit.FL_OZ));
            actives.add(new ActiveContent(one[0], one[1], 4, FarmUnit.GAL, null));
        }
        Seed seed = new Seed(
                "seed",
                Crop.CORN,
                32_000.0,
                null,
                95,
                List.of(),
                0,
                new RefugeRule(RefugeRule.Form.NONE, null, null, null, "none"),
                new Distribution.Fixed(0),
                new Distribution.Fixed(100),
                null,
                new SeedRights(Ask.NO, Ask.NO, Ask.NO, Ask.NO, Ask.NO));
        return new Shelf(products, List.of(seed), List.of(), actives, List.of(), List.of(), List.of());
    }

    private static Product product(String name, ProductKind kind, FarmUnit per) {
        return new Product(name, kind, .5, per, null, null, null, null, null, "invented");
    }

    private static WeedBook weedBook(List<String> weeds) {
        List<MonthClimate> months = new ArrayList<>();
        for (int month = 1; month <= MEAN_F.length; month++) {
            double mean = MEAN_F[month - 1];
            months.add(new MonthClimate("IA: Adams", month, mean, mean - 11, mean + 11, 4, 11, "value from memory"));
        }
        List<WeedRating> ratings = new ArrayList<>();
        for (String weed : weeds) {
            for (String product : List.of("soil", "leaf", "other")) {
                ratings.add(new WeedRating(
                        product,
                        weed,
                        product.equals("soil") ? Timing.SOIL : Timing.LEAF,
                        new Amount(30, FarmUnit.FL_OZ),
                        null,
                        null,
                        new Distribution.Pert(.5, .7, .9),
                        Basis.TRIAL,
                        null,
                        "invented"));
            }
        }
        return new WeedBook(months, List.of(), List.of(), List.of(), ratings, List.of(), List.of());
    }
}
