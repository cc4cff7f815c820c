package plumbrow.documents.workbook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.assumptions.Distribution;
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
import plumbrow.advice.field.Field;
import plumbrow.advice.field.GrowthStage;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.field.Texture;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
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

/** The rest of a random season: labels, surroundings and work within the rules, with gaps wherever one may be. */
final class RandomTerms {
    private static final LocalDate AS_OF = LocalDate.of(2026, 3, 1);
    private static final List<String> PRODUCTS = List.of("spray 0", "spray 1", "spray 2");

    private final Random random;

    RandomTerms(Random random) {
        this.random = random;
    }

    LabelBook labels() {
        return new LabelBook(
                forEachUse(this::terms),
                forEachUse(this::soilRate),
                make(
                        3,
                        i -> new Setback(
                                PRODUCTS.get(i), pick(FeatureKind.values()), maybe(this::feet), flip(), text())),
                make(
                        3,
                        i -> new PlantBack(
                                PRODUCTS.get(i),
                                pick("alfalfa", "oats", PlantBack.ANY_OTHER),
                                maybe(() -> random.nextInt(700)),
                                maybe(() -> 7 * share()),
                                maybe(() -> 7 + 7 * part()),
                                pick("", text()),
                                text())),
                make(
                        3,
                        i -> new MixRule(
                                PRODUCTS.get(i),
                                pick("active 0", "adjuvant", "fungicide", "adjuvant; active 0"),
                                pick(MixRule.Word.values()),
                                text())),
                make(
                        3,
                        i -> new SpecialLabel(
                                PRODUCTS.get(i),
                                pick(Crop.values()),
                                pick("IA", "MN"),
                                maybe(() -> pick(List.of(), List.of("Polk"), List.of("Polk", "Cass"))),
                                maybe(() -> AS_OF.plusDays(random.nextInt(90))),
                                maybe(() ->
                                        flip() ? SpecialLabel.NO_LAST_DAY : AS_OF.plusDays(90 + random.nextInt(90))),
                                flip(),
                                text())),
                make(
                        3,
                        i -> new ProductCare(
                                PRODUCTS.get(i),
                                maybe(() -> AS_OF.minusDays(random.nextInt(300))),
                                ask(),
                                ask(),
                                ask(),
                                ask(),
                                ask(),
                                maybe(() -> random.nextInt(72)),
                                maybe(this::gear),
                                text())),
                make(
                        3,
                        i -> new ToleranceRule(
                                PRODUCTS.get(i),
                                Crop.CORN,
                                maybe(() -> pick("glyphosate", "glufosinate")),
                                maybe(() -> pick("PRE", "VE")),
                                maybe(() -> pick("V8", "R1")),
                                text())),
                make(
                        3,
                        i -> new LabelLimit(
                                PRODUCTS.get(i),
                                maybe(() -> Crop.CORN),
                                pick(LabelLimit.Kind.NOT_AFTER, LabelLimit.Kind.NOT_BEFORE),
                                pick("06-12", "07-30"),
                                text())),
                make(
                        3,
                        i -> new BulletinLook(
                                PRODUCTS.get(i),
                                pick("IA", "MN"),
                                "Polk",
                                YearMonth.of(2026, 6 + random.nextInt(6)),
                                AS_OF.plusDays(random.nextInt(60)),
                                text(),
                                pick("", text()))),
                List.of());
    }

    private <T> List<T> forEachUse(BiFunction<String, Crop, T> one) {
        List<T> all = new ArrayList<>();
        for (String product : PRODUCTS) {
            for (Crop crop : Crop.values()) {
                if (flip()) {
                    all.add(one.apply(product, crop));
                }
            }
        }
        return all;
    }

    private UseTerms terms(String product, Crop crop) {
        List<String> stages = GrowthStage.of(crop);
        int half = stages.size() / 2;
        return new UseTerms(
                product,
                crop,
                maybe(() -> random.nextInt(100)),
                maybe(() -> random.nextInt(100)),
                maybe(() -> random.nextInt(100)),
                ask(),
                maybe(() -> pick("", stages.get(random.nextInt(half)))),
                maybe(() -> pick("", stages.get(half + random.nextInt(stages.size() - half)))),
                maybe(this::ceiling),
                maybe(this::ceiling),
                maybe(() -> some(Method.class, true)),
                maybe(this::feet),
                maybe(() -> pick(Droplets.VERY_FINE, Droplets.FINE, Droplets.MEDIUM)),
                maybe(() -> pick(Droplets.MEDIUM, Droplets.COARSE, Droplets.ULTRA_COARSE)),
                maybe(this::ceiling),
                maybe(this::share),
                maybe(() -> 1 + share()),
                maybe(this::ceiling),
                maybe(this::feet),
                text());
    }

    private SoilRate soilRate(String product, Crop crop) {
        boolean forbidden = flip();
        Amount low = forbidden ? null : maybe(() -> new Amount(part(), FarmUnit.QT));
        return new SoilRate(
                product,
                crop,
                some(Texture.class, false),
                maybe(() -> 3 * share()),
                maybe(() -> 3 + part()),
                maybe(() -> 6 * share()),
                maybe(() -> 6 + part()),
                ask(),
                maybe(() -> 30 * share()),
                maybe(() -> 30 + part()),
                maybe(() -> "VE"),
                maybe(() -> "V8"),
                forbidden,
                low,
                forbidden ? null : new Amount(1 + part(), low == null ? FarmUnit.PT : low.unit()),
                text());
    }

    List<KnownResistance> resistance(List<Field> land) {
        return make(
                land.size(),
                i -> new KnownResistance(
                        land.get(i).name(),
                        RandomSeason.WEEDS[i % 3],
                        pick("2", "9", "14"),
                        maybe(() -> 100 * share()),
                        text()));
    }

    Ground ground(List<Field> land) {
        List<Looked> looked = land.stream()
                .map(Field::name)
                .flatMap(field -> flip()
                        ? Stream.of(new Looked(field, null))
                        : Arrays.stream(FeatureKind.values())
                                .filter(kind -> flip())
                                .map(kind -> new Looked(field, kind)))
                .toList();
        List<Feature> features = land.stream()
                .map(Field::name)
                .flatMap(field -> make(random.nextInt(4), i -> feature(field, i)).stream())
                .toList();
        return new Ground(
                looked,
                features,
                land.stream()
                        .filter(field -> flip())
                        .map(field -> new AlsoIn(field.name(), pick("IA", "MN"), "Wright"))
                        .toList(),
                land.stream()
                        .flatMap(field -> Stream.of(NextCrop.Use.COVER, NextCrop.Use.NEXT)
                                .map(use -> nextCrop(field.name(), use)))
                        .toList(),
                land.stream()
                        .filter(field -> flip())
                        .map(field -> new FieldLand(
                                field.name(), ask(), maybe(() -> 100 * share()), maybe(this::feet), text()))
                        .toList());
    }

    private NextCrop nextCrop(String field, NextCrop.Use use) {
        return new NextCrop(
                field,
                pick("alfalfa", "cereal rye"),
                maybe(() -> LocalDate.of(2026, 5, 1).plusDays(random.nextInt(500))),
                use,
                maybe(this::flip));
    }

    private Feature feature(String field, int number) {
        Feature.Shape shape = maybe(() -> pick(
                new Feature.Spot(place()),
                new Feature.Line(List.of(place(), place(), place())),
                new Feature.Area(triangle())));
        return new Feature(
                field,
                pick(FeatureKind.values()),
                text() + " " + number,
                shape,
                shape == null ? (Double) feet() : maybe(this::feet),
                text());
    }

    private Point place() {
        return new Point(-93 + share(), 42 + share());
    }

    private static Boundary triangle() {
        Point corner = new Point(-93.123456789, 41.99);
        return new Boundary(List.of(new Boundary.Polygon(
                List.of(corner, new Point(-93.1, 41.98), new Point(-93.11, 42.0000001), corner), List.of())));
    }

    Work work(List<Field> land, List<Program> programs) {
        List<Person> people = make(
                random.nextInt(3),
                i -> new Person(
                        "person " + i,
                        maybe(this::text),
                        maybe(() -> pick("IA", "MN")),
                        maybe(() -> AS_OF.plusDays(random.nextInt(900))),
                        maybe(() -> pick(LicenceKind.values())),
                        maybe(() -> some(Licence.Cover.class, false)),
                        ask()));
        List<SprayPlan> plans = programs.stream()
                .flatMap(program -> program.passes().stream()
                        .filter(pass -> pass.product() != null && flip())
                        .map(pass -> plan(land, program, pass, people)))
                .toList();
        return new Work(
                        plans,
                        new Crew(
                                people,
                                maybe(this::gear),
                                ask(),
                                people.stream()
                                        .filter(person -> flip())
                                        .map(person -> new Licence(
                                                person.name(),
                                                text(),
                                                pick("IA", "MN"),
                                                maybe(() -> AS_OF.plusDays(random.nextInt(900))),
                                                maybe(() -> pick(LicenceKind.values())),
                                                maybe(() -> some(Licence.Cover.class, false))))
                                        .toList()),
                        make(
                                land.size(),
                                i -> new Done(
                                        land.get(i).name(),
                                        AS_OF.minusDays(random.nextInt(200)),
                                        pick("spray 0", "spray 1"),
                                        new Amount(part(), pick(FarmUnit.FL_OZ, FarmUnit.ML)),
                                        100 * part(),
                                        maybe(this::text),
                                        text())))
                .withStands(make(land.size(), i -> count(land.get(i).name())));
    }

    private StandCount count(String field) {
        double plants = 300_000 * part();
        return new StandCount(
                field,
                AS_OF.plusDays(random.nextInt(40)),
                AS_OF.plusDays(40 + random.nextInt(40)),
                flip() ? new Distribution.Fixed(plants) : new Distribution.Pert(plants / 2, plants, plants * 1.5),
                maybe(() -> new Distribution.Fixed(10 * share())),
                maybe(() -> 60 * share()),
                text());
    }

    private SprayPlan plan(List<Field> land, Program program, Pass pass, List<Person> people) {
        Crop crop = land.stream()
                .filter(field -> field.name().equals(program.field()))
                .findFirst()
                .orElseThrow()
                .crop();
        return new SprayPlan(
                program.field(),
                program.name(),
                pass.number(),
                maybe(() -> "tank " + pass.number()),
                maybe(() -> pick(Method.values())),
                maybe(this::part),
                maybe(() -> pick(Droplets.values())),
                maybe(this::feet),
                maybe(() -> 99 * share()),
                maybe(() -> pick(GrowthStage.of(crop).toArray(new String[0]))),
                maybe(this::feet),
                maybe(this::feet),
                ask(),
                people.isEmpty()
                        ? null
                        : maybe(() -> people.get(random.nextInt(people.size())).name()));
    }

    private Set<String> gear() {
        return new TreeSet<>(
                Arrays.asList("gloves " + random.nextInt(3), text(), text()).subList(0, random.nextInt(3)));
    }

    private <E extends Enum<E>> Set<E> some(Class<E> type, boolean atLeastOne) {
        EnumSet<E> some = EnumSet.noneOf(type);
        for (E each : type.getEnumConstants()) {
            if (random.nextInt(3) == 0) {
                some.add(each);
            }
        }
        if (atLeastOne && some.isEmpty()) {
            some.add(type.getEnumConstants()[0]);
        }
        return some;
    }

    private double ceiling() {
        return flip() ? 999 : feet();
    }

    private double feet() {
        return 100 * share();
    }

    private Ask ask() {
        return pick(Ask.values());
    }

    private boolean flip() {
        return random.nextBoolean();
    }

    private double share() {
        return random.nextDouble();
    }

    private double part() {
        return 1 - random.nextDouble();
    }

    private String text() {
        return pick("Éast", "80", "#7", "\"low\"", "3,5", "TRUE") + " " + pick("hill", "o'clock", "日本", "12");
    }

    private static <T> List<T> make(int count, IntFunction<T> one) {
        return IntStream.range(0, count).mapToObj(one).toList();
    }

    private <T> @Nullable T maybe(Supplier<T> value) {
        return flip() ? value.get() : null;
    }

    @SafeVarargs
    private <T> T pick(T... values) {
        return values[random.nextInt(values.length)];
    }
}
