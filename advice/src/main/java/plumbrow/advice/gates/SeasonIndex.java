package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.field.AlsoIn;
import plumbrow.advice.field.Crop;
import plumbrow.advice.field.CropYear;
import plumbrow.advice.field.Feature;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.land.FieldLand;
import plumbrow.advice.pests.InsectPressure;
import plumbrow.advice.pests.KnownResistance;
import plumbrow.advice.pests.WeedPressure;
import plumbrow.advice.program.Done;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.Program;
import plumbrow.advice.program.SprayPlan;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.ActiveContent;
import plumbrow.advice.shelf.ActiveLimit;
import plumbrow.advice.shelf.BulletinLook;
import plumbrow.advice.shelf.LabelBook;
import plumbrow.advice.shelf.LabelLimit;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.MixRule;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.Setback;
import plumbrow.advice.shelf.SoilRate;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.advice.shelf.ToleranceRule;
import plumbrow.advice.shelf.UseTerms;

/** The rows of a season by what they are asked for, so that a thousand fields cost a thousand times one field. */
final class SeasonIndex {
    private final Season season;
    private final Map<String, Product> products;
    private final Map<String, List<LabelUse>> uses;
    private final Map<String, List<ActiveContent>> actives;
    private final Map<String, List<ActiveLimit>> activeLimits;
    private final Map<On, List<Kill>> kills;
    private final Map<Use, UseTerms> terms;
    private final Map<Use, List<SoilRate>> soilRates;
    private final Map<Use, List<SpecialLabel>> specialLabels;
    private final Map<String, List<Setback>> setbacks;
    private final Map<String, List<PlantBack>> plantBacks;
    private final Map<String, List<MixRule>> mixRules;
    private final Map<String, ProductCare> cares;
    private final Map<Use, List<ToleranceRule>> tolerances;
    private final Map<String, List<LabelLimit>> labelLimits;
    private final Map<String, List<BulletinLook>> bulletins;
    private final Map<String, FieldLand> lands;
    private final Map<String, List<CropYear>> history;
    private final Map<String, List<Looked>> looked;
    private final Map<String, List<Feature>> features;
    private final Map<String, List<AlsoIn>> alsoIn;
    private final Map<String, List<NextCrop>> nextCrops;
    private final Map<PassOf, SprayPlan> sprayPlans;
    private final Map<String, List<Done>> log;
    private final Map<String, List<WeedPressure>> weeds;
    private final Map<String, List<InsectPressure>> insects;
    private final Map<String, List<KnownResistance>> resistance;

    private final Map<Field, List<Lying>> lying = new ConcurrentHashMap<>();
    private final Map<Field, Optional<CountyFit>> counties = new ConcurrentHashMap<>();

    private record Use(String product, Crop crop) {}

    private record On(String product, String pest) {}

    private record PassOf(String field, String program, int number) {}

    SeasonIndex(Season season) {
        this.season = season;
        LabelBook labels = season.shelf().labels();
        products = first(season.shelf().products(), Product::name);
        uses = by(season.shelf().labelUses(), LabelUse::product);
        actives = by(season.shelf().actives().stream().map(ActiveContent::plain).toList(), ActiveContent::product);
        activeLimits = by(
                season.shelf().activeLimits().stream().map(ActiveLimit::plain).toList(), ActiveLimit::product);
        kills = by(
                season.shelf().controls().stream().map(Kill::of).toList(), kill -> new On(kill.product(), kill.pest()));
        insects = by(season.pests().insects(), InsectPressure::field);
        terms = first(labels.terms(), one -> new Use(one.product(), one.crop()));
        soilRates = by(labels.soilRates(), one -> new Use(one.product(), one.crop()));
        specialLabels = by(labels.specialLabels(), one -> new Use(one.product(), one.crop()));
        setbacks = by(labels.setbacks(), Setback::product);
        plantBacks = by(labels.plantBacks(), PlantBack::product);
        mixRules = by(labels.mixRules(), MixRule::product);
        tolerances = by(labels.tolerances(), one -> new Use(one.product(), one.crop()));
        labelLimits = by(labels.limits(), LabelLimit::product);
        bulletins = by(labels.bulletins(), BulletinLook::product);
        lands = first(season.ground().lands(), FieldLand::field);
        history = by(season.history(), CropYear::field);
        cares = first(labels.cares(), ProductCare::product);
        looked = by(season.ground().looked(), Looked::field);
        features = by(season.ground().features(), Feature::field);
        alsoIn = by(season.ground().alsoIn(), AlsoIn::field);
        nextCrops = by(season.ground().nextCrops(), NextCrop::field);
        sprayPlans = first(season.work().sprayPlans(), one -> new PassOf(one.field(), one.program(), one.pass()));
        log = by(season.work().log().stream().filter(Done::made).toList(), Done::field);
        weeds = by(season.pests().weeds(), WeedPressure::field);
        resistance = by(season.pests().resistance(), KnownResistance::field);
    }

    Season season() {
        return season;
    }

    Optional<Product> product(String name) {
        return Optional.ofNullable(products.get(name));
    }

    List<LabelUse> uses(String product) {
        return uses.getOrDefault(product, List.of());
    }

    Optional<LabelUse> use(String product, Crop crop) {
        return uses(product).stream().filter(use -> use.crop() == crop).findFirst();
    }

    List<ActiveContent> actives(String product) {
        return actives.getOrDefault(product, List.of());
    }

    List<ActiveLimit> activeLimits(String product) {
        return activeLimits.getOrDefault(product, List.of());
    }

    List<Kill> kills(String product, String pest) {
        return kills.getOrDefault(new On(product, pest), List.of());
    }

    List<InsectPressure> insects(String field) {
        return insects.getOrDefault(field, List.of());
    }

    Optional<UseTerms> terms(String product, Crop crop) {
        return Optional.ofNullable(terms.get(new Use(product, crop)));
    }

    List<SoilRate> soilRates(String product, Crop crop) {
        return soilRates.getOrDefault(new Use(product, crop), List.of());
    }

    List<SpecialLabel> specialLabels(String product, Crop crop) {
        return specialLabels.getOrDefault(new Use(product, crop), List.of());
    }

    /**
     * What the label of a product says of its distance from a kind of thing; every row holds, none where it was not
     * read. The owner's house is a dwelling too.
     */
    List<Setback> setbacks(String product, FeatureKind kind) {
        return setbacks.getOrDefault(product, List.of()).stream()
                .filter(setback -> setback.kind() == kind
                        || (kind == FeatureKind.OWN_HOUSE && setback.kind() == FeatureKind.DWELLING))
                .toList();
    }

    /** In which crop, when and with which tolerance a label allows a herbicide; empty where that was not read. */
    List<ToleranceRule> tolerances(String product, Crop crop) {
        return tolerances.getOrDefault(new Use(product, crop), List.of());
    }

    /** What else the label of a product asks on a crop. */
    List<LabelLimit> limits(String product, Crop crop) {
        return labelLimits.getOrDefault(product, List.of()).stream()
                .filter(limit -> limit.crop() == null || limit.crop() == crop)
                .toList();
    }

    /** The rows of one kind of what else a label says of a product on a crop. */
    List<LabelLimit> limits(String product, Crop crop, LabelLimit.Kind kind) {
        return limits(product, crop).stream().filter(row -> row.kind() == kind).toList();
    }

    /** Where the label of a product says that it prints no maximum of something: its source. */
    Optional<String> noMaximum(String product, Crop crop, Predicate<String> what) {
        return limits(product, crop, LabelLimit.Kind.NO_MAXIMUM).stream()
                .filter(row -> row.names().stream().anyMatch(what))
                .map(LabelLimit::source)
                .findFirst();
    }

    /** What bulletins said of a product. */
    List<BulletinLook> bulletins(String product) {
        return bulletins.getOrDefault(product, List.of());
    }

    /** What is known of a field's land beside its soil. */
    Optional<FieldLand> land(String field) {
        return Optional.ofNullable(lands.get(field));
    }

    /** What a field carried in earlier years. */
    List<CropYear> history(String field) {
        return history.getOrDefault(field, List.of());
    }

    List<PlantBack> plantBacks(String product) {
        return plantBacks.getOrDefault(product, List.of());
    }

    List<MixRule> mixRules(String product) {
        return mixRules.getOrDefault(product, List.of());
    }

    Optional<ProductCare> care(String product) {
        return Optional.ofNullable(cares.get(product));
    }

    List<Looked> looked(String field) {
        return looked.getOrDefault(field, List.of());
    }

    List<Lying> features(Field field) {
        return lying.computeIfAbsent(
                field,
                one -> features.getOrDefault(one.name(), List.of()).stream()
                        .map(feature -> Lying.of(one, feature))
                        .toList());
    }

    /** The counties that a field's outline lies in and near to; empty where it has none. */
    Optional<CountyFit> counties(Field field) {
        return counties.computeIfAbsent(
                field, one -> Optional.ofNullable(one.boundary()).map(CountyFit::of));
    }

    List<AlsoIn> alsoIn(String field) {
        return alsoIn.getOrDefault(field, List.of());
    }

    List<NextCrop> nextCrops(String field) {
        return nextCrops.getOrDefault(field, List.of());
    }

    Optional<SprayPlan> sprayPlan(Program program, Pass pass) {
        return Optional.ofNullable(sprayPlans.get(new PassOf(program.field(), program.name(), pass.number())));
    }

    List<WeedPressure> weeds(String field) {
        return weeds.getOrDefault(field, List.of());
    }

    List<KnownResistance> resistance(String field) {
        return resistance.getOrDefault(field, List.of());
    }

    /** Lines of the log that count for this season's crop. */
    List<Done> thisSeason(Field field) {
        LocalDate from = seasonStart(field.crop());
        return log.getOrDefault(field.name(), List.of()).stream()
                .filter(line -> !line.date().isBefore(from))
                .toList();
    }

    /** Lines of the log from the seasons before. */
    List<Done> before(Field field) {
        LocalDate from = seasonStart(field.crop());
        return log.getOrDefault(field.name(), List.of()).stream()
                .filter(line -> line.date().isBefore(from))
                .toList();
    }

    /** From when on an application counts for this season's crop. */
    LocalDate seasonStart(Crop crop) {
        return DoneWork.seasonStart(season.year(), crop);
    }

    private static <K, T> Map<K, List<T>> by(List<T> rows, Function<T, K> key) {
        return rows.stream().collect(Collectors.groupingBy(key));
    }

    /** The first row of each key, as a reader of the list would find it. */
    private static <K, T> Map<K, T> first(List<T> rows, Function<T, K> key) {
        Map<K, T> found = new HashMap<>();
        rows.forEach(row -> found.putIfAbsent(key.apply(row), row));
        return found;
    }
}
