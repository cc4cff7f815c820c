package plumbrow.app;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import plumbrow.advice.crew.Crew;
import plumbrow.advice.crew.Licence;
import plumbrow.advice.crew.LicenceKind;
import plumbrow.advice.crew.Person;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Boundary;
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
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
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

/** What labels ask, what lies around the fields and who sprays, drawn from a seed: any values that may be held. */
final class RandomTerms {
    private final Chances chance;
    private final List<String> fields;
    private final List<String> products;

    RandomTerms(Chances chance, List<String> fields, List<String> products) {
        this.chance = chance;
        this.fields = fields;
        this.products = products;
    }

    /** What the season of weeds is reckoned from. */
    WeedBook weedBook() {
        return new WeedBook(
                chance.some(
                        3,
                        i -> new MonthClimate(
                                chance.text(),
                                i + 1,
                                chance.number(),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.number(),
                                chance.number(),
                                chance.text())),
                chance.some(
                        3,
                        i -> new WeatherDay(
                                chance.text(),
                                chance.date(),
                                chance.number(),
                                chance.number(),
                                chance.number(),
                                chance.text())),
                some(
                        fields,
                        field -> new CropTiming(
                                field,
                                chance.maybe(chance::date),
                                chance.maybe(chance::date),
                                chance.distribution(),
                                chance.text())),
                chance.some(3, i -> new LikeWeed(chance.text(), chance.text(), chance.text())),
                some(
                        products,
                        product -> new WeedRating(
                                product,
                                chance.text(),
                                chance.of(Timing.class),
                                chance.amount(),
                                chance.maybe(chance::number),
                                chance.maybe(() -> chance.below(99)),
                                chance.distribution(),
                                chance.of(Basis.class),
                                chance.maybe(chance::text),
                                chance.text())),
                some(
                        fields,
                        field -> new TillageWork(
                                field,
                                chance.text(),
                                chance.below(99),
                                chance.of(Tool.class),
                                chance.number(),
                                chance.text())),
                some(
                        fields,
                        field -> new FloorDepth(
                                field, chance.of(Tool.class), chance.text(), chance.number(), chance.text())));
    }

    LabelBook labels() {
        return new LabelBook(
                some(products, this::terms),
                some(products, this::soilRate),
                some(
                        products,
                        product -> new Setback(
                                product,
                                chance.of(FeatureKind.class),
                                chance.maybe(chance::number),
                                chance.yes(),
                                chance.text())),
                some(
                        products,
                        product -> new PlantBack(
                                product,
                                chance.text(),
                                chance.maybe(() -> chance.below(999)),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.text(),
                                chance.text())),
                some(
                        products,
                        product -> new MixRule(
                                product,
                                chance.yes() ? "adjuvant" : "adjuvant; fungicide",
                                chance.of(MixRule.Word.class),
                                chance.text())),
                some(
                        products,
                        product -> new SpecialLabel(
                                product,
                                chance.of(Crop.class),
                                chance.text(),
                                chance.maybe(() -> chance.some(3, i -> chance.text())),
                                chance.maybe(chance::date),
                                chance.maybe(chance::date),
                                chance.yes(),
                                chance.text())),
                some(
                        products,
                        product -> new ProductCare(
                                product,
                                chance.maybe(chance::date),
                                ask(),
                                ask(),
                                ask(),
                                ask(),
                                ask(),
                                chance.maybe(() -> chance.below(99)),
                                chance.maybe(this::texts),
                                chance.text())),
                some(
                        products,
                        product -> new ToleranceRule(
                                product,
                                chance.of(Crop.class),
                                chance.maybe(chance::text),
                                chance.maybe(chance::text),
                                chance.maybe(chance::text),
                                chance.text())),
                some(
                        products,
                        product -> new LabelLimit(
                                product,
                                chance.maybe(() -> chance.of(Crop.class)),
                                chance.of(LabelLimit.Kind.class),
                                chance.text(),
                                chance.text())),
                some(
                        products,
                        product -> new BulletinLook(
                                product,
                                chance.text(),
                                chance.text(),
                                YearMonth.from(chance.date()),
                                chance.date(),
                                chance.text(),
                                chance.text())),
                List.of());
    }

    private UseTerms terms(String product) {
        return new UseTerms(
                product,
                chance.of(Crop.class),
                chance.maybe(() -> chance.below(99)),
                chance.maybe(() -> chance.below(99)),
                chance.maybe(() -> chance.below(99)),
                ask(),
                chance.maybe(chance::text),
                chance.maybe(chance::text),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(() -> set(Method.class)),
                chance.maybe(chance::number),
                chance.maybe(() -> chance.of(Droplets.class)),
                chance.maybe(() -> chance.of(Droplets.class)),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.text());
    }

    private SoilRate soilRate(String product) {
        return new SoilRate(
                product,
                chance.of(Crop.class),
                set(Texture.class),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                ask(),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::text),
                chance.maybe(chance::text),
                chance.yes(),
                chance.maybe(chance::amount),
                chance.maybe(chance::amount),
                chance.text());
    }

    Ground ground(Supplier<Boundary> outline) {
        return new Ground(
                some(fields, field -> new Looked(field, chance.maybe(() -> chance.of(FeatureKind.class)))),
                some(
                        fields,
                        field -> new Feature(
                                field,
                                chance.of(FeatureKind.class),
                                chance.text(),
                                chance.maybe(() -> shape(outline)),
                                chance.maybe(chance::number),
                                chance.text())),
                some(fields, field -> new AlsoIn(field, chance.text(), chance.text())),
                some(
                        fields,
                        field -> new NextCrop(
                                field,
                                chance.text(),
                                chance.maybe(chance::date),
                                chance.of(NextCrop.Use.class),
                                chance.maybe(chance::yes))),
                some(
                        fields,
                        field -> new FieldLand(
                                field,
                                ask(),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.text())));
    }

    private Feature.Shape shape(Supplier<Boundary> outline) {
        return switch (chance.below(3)) {
            case 0 -> new Feature.Spot(point());
            case 1 -> new Feature.Line(chance.some(5, i -> point()));
            default -> new Feature.Area(outline.get());
        };
    }

    private Point point() {
        return new Point(chance.number(), chance.number());
    }

    Work work(List<Program> programs, int year, List<String> farms) {
        List<Person> people = chance.some(
                3,
                i -> new Person(
                        chance.text() + i,
                        chance.maybe(chance::text),
                        chance.maybe(chance::text),
                        chance.maybe(chance::date),
                        chance.maybe(() -> chance.of(LicenceKind.class)),
                        chance.maybe(() -> set(Licence.Cover.class)),
                        ask()));
        List<SprayPlan> plans = new ArrayList<>();
        for (Program program : programs) {
            program.passes().stream()
                    .filter(pass -> chance.yes())
                    .forEach(pass -> plans.add(plan(program, pass.number(), people)));
        }
        return new Work(
                plans,
                new Crew(
                        people,
                        chance.maybe(this::texts),
                        ask(),
                        some(
                                people.stream().map(Person::name).toList(),
                                person -> new Licence(
                                        person,
                                        chance.text(),
                                        chance.text(),
                                        chance.maybe(chance::date),
                                        chance.maybe(() -> chance.of(LicenceKind.class)),
                                        chance.maybe(() -> set(Licence.Cover.class))))),
                products.isEmpty()
                        ? List.of()
                        : some(
                                fields,
                                field -> new Done(
                                        field,
                                        LocalDate.of(
                                                year - chance.below(6), 1 + chance.below(12), 1 + chance.below(28)),
                                        chance.of(products),
                                        chance.amount(),
                                        chance.number(),
                                        chance.maybe(chance::text),
                                        chance.text())),
                means(farms),
                fields.stream().filter(field -> chance.yes()).map(this::count).toList());
    }

    private StandCount count(String field) {
        LocalDate planted = chance.date();
        return new StandCount(
                field,
                planted,
                planted.plusDays(chance.below(40)),
                chance.distribution(),
                chance.maybe(chance::distribution),
                chance.maybe(chance::number),
                chance.text());
    }

    /** One row of each kind for each farm, since their names must not come twice. */
    private Means means(List<String> farms) {
        List<Machine> machines = farms.stream()
                .map(farm -> new Machine(
                        farm,
                        chance.text(),
                        chance.of(MachineKind.class),
                        chance.number(),
                        chance.number(),
                        chance.number(),
                        chance.text()))
                .toList();
        return new Means(
                machines,
                farms.stream()
                        .map(farm -> new WorkWindow(
                                farm,
                                chance.text(),
                                chance.of(MachineKind.class),
                                chance.date(),
                                chance.date(),
                                chance.number(),
                                chance.number(),
                                chance.text()))
                        .toList(),
                farms.stream()
                        .map(farm -> new FarmLimit(
                                farm,
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.number(),
                                chance.text()))
                        .toList(),
                products.isEmpty()
                        ? List.of()
                        : some(
                                farms,
                                farm -> new PriceBreak(
                                        farm, chance.of(products), chance.number(), chance.number(), chance.text())),
                products.isEmpty()
                        ? List.of()
                        : some(farms, farm -> new Supply(farm, chance.of(products), chance.number(), chance.text())),
                tank(farms, machines));
    }

    private TankBook tank(List<String> farms, List<Machine> machines) {
        return new TankBook(
                machines.stream()
                        .map(machine -> new Sprayer(
                                machine.farm(),
                                machine.name(),
                                chance.number(),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.text()))
                        .toList(),
                some(
                        farms,
                        farm -> new Nozzle(
                                farm,
                                chance.text(),
                                chance.text(),
                                chance.number(),
                                chance.number(),
                                chance.of(Droplets.class),
                                chance.text())),
                products.stream()
                        .distinct()
                        .filter(product -> chance.yes())
                        .map(product -> new MixCare(
                                product,
                                chance.maybe(chance::text),
                                chance.maybe(chance::amount),
                                chance.maybe(chance::amount),
                                chance.maybe(chance::text),
                                chance.maybe(chance::text),
                                chance.maybe(() -> chance.of(MixCare.Conditioner.class)),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.text()))
                        .toList(),
                some(
                        farms,
                        farm -> new WaterTest(
                                farm,
                                chance.date(),
                                chance.number(),
                                chance.number(),
                                chance.number(),
                                chance.number(),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.text())),
                some(
                        products,
                        product -> new Addition(
                                product,
                                fields.isEmpty() ? null : chance.maybe(() -> chance.of(fields)),
                                chance.of(products),
                                chance.number(),
                                chance.of(Addition.Basis.class),
                                chance.text())),
                some(
                        products,
                        product -> new HourLimit(
                                chance.maybe(chance::text),
                                product,
                                chance.of(HourLimit.Measure.class),
                                chance.maybe(chance::number),
                                chance.maybe(chance::number),
                                chance.text())));
    }

    private SprayPlan plan(Program program, int pass, List<Person> people) {
        return new SprayPlan(
                program.field(),
                program.name(),
                pass,
                chance.maybe(chance::text),
                chance.maybe(() -> chance.of(Method.class)),
                chance.maybe(chance::number),
                chance.maybe(() -> chance.of(Droplets.class)),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                chance.maybe(chance::text),
                chance.maybe(chance::number),
                chance.maybe(chance::number),
                ask(),
                people.isEmpty() ? null : chance.maybe(() -> chance.of(people).name()));
    }

    private Set<String> texts() {
        return new TreeSet<>(chance.some(3, i -> chance.text()));
    }

    private <E extends Enum<E>> Set<E> set(Class<E> list) {
        Set<E> set = EnumSet.noneOf(list);
        set.addAll(chance.some(4, i -> chance.of(list)));
        return set;
    }

    private Ask ask() {
        return chance.of(Ask.class);
    }

    private <T> List<T> some(List<String> names, Function<String, T> value) {
        return names.isEmpty() ? List.of() : chance.some(4, i -> value.apply(chance.of(names)));
    }
}
