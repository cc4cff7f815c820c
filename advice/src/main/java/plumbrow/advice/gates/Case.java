package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plumbrow.advice.done.DoneWork;
import plumbrow.advice.done.Fulfilled;
import plumbrow.advice.done.TooFew;
import plumbrow.advice.field.FeatureKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.field.Looked;
import plumbrow.advice.field.NextCrop;
import plumbrow.advice.land.CountyFit;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.ProductCare;
import plumbrow.advice.shelf.UseTerms;
import plumbrow.science.reference.County;

/** One program on one field, with what the season knows of both looked up once: what a gate is asked about. */
public final class Case {
    private final SeasonIndex index;
    private final Field field;
    private final Program program;
    private final List<Pass> passes;
    private final List<Application> planned;
    private final List<Application> logged;
    private final List<Application> before;
    private final List<Place> places;

    Case(SeasonIndex index, Field field, Program program) {
        this.index = index;
        this.field = field;
        this.program = program;
        Set<Integer> tooFew = TooFew.of(index.season(), field, program).keySet();
        this.passes = program.passes().stream()
                .filter(pass -> !tooFew.contains(pass.number()))
                .sorted(Comparator.comparingInt(Pass::number))
                .toList();
        Fulfilled fulfilled = DoneWork.fulfilled(index.season(), program, index.thisSeason(field));
        this.planned = passes.stream()
                .flatMap(
                        pass -> Application.planned(
                                index, program, pass, fulfilled.done().get(pass.number()))
                                .stream())
                .toList();
        this.logged = fulfilled.further().stream()
                .flatMap(line -> Application.logged(index, line).stream())
                .toList();
        this.before = index.before(field).stream()
                .flatMap(line -> Application.logged(index, line).stream())
                .toList();
        this.places = Place.all(field, index.alsoIn(field.name()), index.counties(field));
    }

    Season season() {
        return index.season();
    }

    SeasonIndex index() {
        return index;
    }

    Field field() {
        return field;
    }

    Program program() {
        return program;
    }

    /** The passes by number: the order in which they were entered does not matter. */
    List<Pass> passes() {
        return passes;
    }

    /** Labelled products that the program puts on, by pass number. A pass that the log holds too goes by the log. */
    List<Application> planned() {
        return planned;
    }

    /** What went on this season by the log and is no pass of the program, by day. */
    List<Application> logged() {
        return logged;
    }

    /** What went on in the seasons before, by the log. */
    List<Application> before() {
        return before;
    }

    /** All of the season: what is planned and what the log adds. */
    List<Application> all() {
        return Stream.concat(planned.stream(), logged.stream()).toList();
    }

    /** Planned products in the order they first go on, each with all its applications of the season. */
    Map<String, List<Application>> byProduct() {
        Map<String, List<Application>> found = new LinkedHashMap<>();
        planned.forEach(one -> found.computeIfAbsent(one.product(), product -> new ArrayList<>())
                .add(one));
        logged.forEach(one -> found.computeIfPresent(one.product(), (product, planned) -> with(planned, one)));
        return found;
    }

    private static List<Application> with(List<Application> planned, Application logged) {
        planned.add(logged);
        return planned;
    }

    /** Every county the field lies in, its own first. */
    List<Place> places() {
        return places;
    }

    Optional<LabelUse> use(String product) {
        return index.use(product, field.crop());
    }

    Optional<UseTerms> terms(String product) {
        return index.terms(product, field.crop());
    }

    Optional<ProductCare> care(String product) {
        return index.care(product);
    }

    /** What somebody has looked for around the field. */
    Set<FeatureKind> lookedFor() {
        Set<FeatureKind> found = EnumSet.noneOf(FeatureKind.class);
        for (Looked looked : index.looked(field.name())) {
            FeatureKind kind = looked.kind();
            found.addAll(kind == null ? EnumSet.allOf(FeatureKind.class) : EnumSet.of(kind));
        }
        return found;
    }

    List<Lying> features() {
        return index.features(field);
    }

    /** Counties whose line is nearer to the field than the county map is exact, and that nobody says it lies in. */
    List<County> perhapsIn() {
        return index.counties(field).stream()
                .flatMap(fit -> fit.near().stream())
                .map(CountyFit.Near::county)
                .filter(county -> places.stream().noneMatch(place -> place.is(county)))
                .toList();
    }

    List<NextCrop> nextCrops() {
        return index.nextCrops(field.name());
    }

    /** The earliest harvest; none where there is no harvest pass or any lacks its day. */
    Optional<LocalDate> harvest() {
        List<Pass> harvests =
                passes.stream().filter(pass -> pass.kind() == PassKind.HARVEST).toList();
        return harvests.stream().anyMatch(pass -> pass.date() == null)
                ? Optional.empty()
                : harvests.stream()
                        .flatMap(pass -> Optional.ofNullable(pass.date()).stream())
                        .min(Comparator.naturalOrder());
    }
}
