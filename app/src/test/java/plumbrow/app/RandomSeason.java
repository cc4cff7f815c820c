package plumbrow.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.assumptions.Distribution;
import plumbrow.advice.field.Boundary;
import plumbrow.advice.field.Boundary.Point;
import plumbrow.advice.field.Boundary.Polygon;
import plumbrow.advice.field.CostShares;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Texture;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.Pests;
import plumbrow.advice.pests.ScoutingSample;
import plumbrow.advice.pests.TraitDoubt;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.RefugePlan;
import plumbrow.advice.program.ScoutingTrigger;
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

/** A season drawn from a seed: any values a season may hold, likely or not; names refer to what is there. */
public final class RandomSeason {
    private final Chances chance;
    private final List<Farm> farms;
    private final List<Field> fields;
    private final List<Product> products;

    private RandomSeason(long seed) {
        chance = new Chances(seed);
        farms = named(
                3,
                name -> new Farm(
                        name,
                        chance.text(),
                        chance.number(),
                        chance.number(),
                        new CostShares(
                                chance.maybe(chance::number),
                                null,
                                chance.maybe(chance::number),
                                null,
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number))));
        fields = farms.isEmpty() ? List.of() : named(5, this::field);
        products = named(6, this::product);
    }

    public static Season of(int year, long seed) {
        return new RandomSeason(seed).season(year);
    }

    private Season season(int year) {
        RandomTerms terms = new RandomTerms(
                chance,
                fields.stream().map(Field::name).toList(),
                products.stream().map(Product::name).toList());
        List<Program> programs = programs();
        return new Season(
                year,
                chance.date(),
                chance.text(),
                farms,
                fields,
                perField(
                        6,
                        field -> new CropYear(
                                field,
                                1990 + chance.below(60),
                                chance.text(),
                                chance.maybe(chance::number),
                                chance.maybe(this::names))),
                shelf(terms),
                new Pests(
                        perField(5, this::insect),
                        perField(3, this::doubt),
                        perField(5, this::weed),
                        perField(
                                3,
                                field -> new KnownResistance(
                                        field,
                                        chance.text(),
                                        chance.text(),
                                        chance.maybe(chance::number),
                                        chance.text())),
                        terms.weedBook()),
                programs,
                assumptions(),
                terms.ground(this::boundary),
                terms.work(programs, year, farms.stream().map(Farm::name).toList()));
    }

    private Field field(String name) {
        return new Field(
                name,
                chance.of(farms).name(),
                chance.number(),
                chance.maybe(this::boundary),
                chance.text(),
                chance.text(),
                chance.of(Crop.class),
                chance.maybe(() -> chance.of(Texture.class)),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::number));
    }

    private Boundary boundary() {
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i <= chance.below(3); i++) {
            polygons.add(new Polygon(ring(), chance.some(2, hole -> ring())));
        }
        return new Boundary(polygons);
    }

    private List<Point> ring() {
        List<Point> ring = new ArrayList<>(List.of(new Point(chance.number(), chance.number())));
        ring.addAll(chance.some(6, i -> new Point(chance.number(), chance.number())));
        return ring;
    }

    private Product product(String name) {
        return new Product(
                name,
                chance.of(ProductKind.class),
                chance.number(),
                chance.of(FarmUnit.class),
                chance.maybe(chance::amount),
                chance.maybe(chance::text),
                chance.maybe(() -> chance.some(3, i -> chance.text())),
                chance.maybe(() -> chance.some(3, i -> chance.text())),
                chance.maybe(chance::date),
                chance.text());
    }

    private Shelf shelf(RandomTerms terms) {
        List<Seed> seeds = products.stream()
                .filter(product -> chance.yes())
                .map(this::seed)
                .toList();
        return new Shelf(
                products,
                seeds,
                chance.some(
                        4,
                        i -> new Trait(
                                chance.text(), chance.text(), chance.text(), chance.distribution(), chance.text())),
                perProduct(
                        4,
                        product -> new ActiveContent(
                                product,
                                chance.text(),
                                chance.number(),
                                chance.of(FarmUnit.class),
                                chance.maybe(chance::number))),
                perProduct(4, this::labelUse),
                perProduct(
                        3,
                        product -> new ActiveLimit(
                                product,
                                chance.of(Crop.class),
                                chance.text(),
                                chance.maybe(chance::number),
                                chance.of(ActiveLimit.Basis.class),
                                chance.text())),
                perProduct(
                        5,
                        product -> new Control(
                                product, chance.text(), chance.amount(), chance.distribution(), chance.text())),
                terms.labels());
    }

    private Seed seed(Product product) {
        return new Seed(
                product.name(),
                chance.of(Crop.class),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.number(),
                chance.maybe(chance::distribution),
                chance.some(3, i -> chance.text()),
                chance.number(),
                new RefugeRule(
                        chance.of(RefugeRule.Form.class),
                        chance.maybe(chance::number),
                        chance.maybe(chance::number),
                        chance.maybe(() -> chance.below(100)),
                        chance.text()),
                chance.distribution(),
                chance.distribution(),
                chance.maybe(() -> new SavedSeed(
                        chance.number(),
                        chance.number(),
                        chance.number(),
                        chance.number(),
                        chance.number(),
                        chance.number(),
                        chance.number())),
                new SeedRights(ask(), ask(), ask(), ask(), ask()),
                new SeedTag(chance.maybe(this::names), chance.maybe(this::names), chance.maybe(chance::text)));
    }

    private LabelUse labelUse(String product) {
        return new LabelUse(
                product,
                chance.of(Crop.class),
                chance.maybe(chance::amount),
                chance.maybe(chance::amount),
                ask(),
                chance.maybe(chance::amount),
                chance.maybe(() -> chance.below(9)),
                chance.maybe(() -> chance.below(99)),
                chance.text());
    }

    private InsectPressure insect(String field) {
        return new InsectPressure(
                field,
                chance.text(),
                chance.of(InsectPressure.Measure.class),
                chance.distribution(),
                chance.distribution(),
                chance.number(),
                chance.maybe(() -> new ScoutingSample(chance.below(50), chance.number(), chance.number())),
                chance.maybe(chance::date),
                chance.text());
    }

    private TraitDoubt doubt(String field) {
        return new TraitDoubt(field, chance.text(), chance.text(), chance.number(), chance.number(), chance.text());
    }

    private WeedPressure weed(String field) {
        double loss = chance.number();
        return new WeedPressure(
                field,
                chance.text(),
                chance.distribution(),
                chance.yes() ? new Distribution.Fixed(loss) : new Distribution.Pert(loss - 1, loss, loss + 2),
                chance.number(),
                chance.text());
    }

    private List<Program> programs() {
        List<Program> programs = new ArrayList<>();
        for (Field field : fields) {
            programs.addAll(named(
                    4,
                    name -> new Program(
                            field.name(),
                            name,
                            chance.yes(),
                            new RefugePlan(chance.maybe(chance::number), chance.maybe(() -> chance.below(30))),
                            chance.text(),
                            chance.some(5, number -> pass(number + 1)))));
        }
        return programs;
    }

    private Pass pass(int number) {
        return new Pass(
                number,
                chance.of(PassKind.class),
                chance.maybe(chance::date),
                products.isEmpty()
                        ? null
                        : chance.maybe(() -> chance.of(products).name()),
                chance.maybe(chance::amount),
                chance.number(),
                chance.number(),
                chance.distribution(),
                chance.number(),
                chance.maybe(() -> new ScoutingTrigger(
                        chance.text(),
                        chance.number(),
                        chance.maybe(chance::text),
                        chance.number(),
                        chance.number(),
                        chance.maybe(chance::number))));
    }

    private List<AssumptionLine> assumptions() {
        return chance.some(8, i -> {
            boolean ofField = !fields.isEmpty() && chance.yes();
            return new AssumptionLine(
                    ofField ? null : chance.of(Crop.class),
                    ofField ? chance.of(fields).name() : null,
                    chance.of(AssumptionQuantity.class),
                    chance.distribution(),
                    chance.text());
        });
    }

    private List<String> names() {
        return chance.some(3, i -> "name " + chance.below(1000));
    }

    private Ask ask() {
        return chance.of(Ask.class);
    }

    /** Values with names that differ from each other. */
    private <T> List<T> named(int most, Function<String, T> value) {
        return chance.some(most, i -> value.apply(chance.text() + i));
    }

    private <T> List<T> perField(int most, Function<String, T> value) {
        return fields.isEmpty()
                ? List.of()
                : chance.some(most, i -> value.apply(chance.of(fields).name()));
    }

    private <T> List<T> perProduct(int most, Function<String, T> value) {
        return products.isEmpty()
                ? List.of()
                : chance.some(most, i -> value.apply(chance.of(products).name()));
    }
}
