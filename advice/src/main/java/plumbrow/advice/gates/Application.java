package plumbrow.advice.gates;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.quantity.Amount;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;

/** A pass that puts a labelled product on the field. */
record Application(Pass pass, String product) {

    /** Those of a course, by pass number: the order in which the passes were entered does not matter. */
    static List<Application> of(Season season, Course course) {
        return course.passes().stream()
                .sorted(Comparator.comparingInt(Pass::number))
                .flatMap(pass -> underLabel(season, pass))
                .toList();
    }

    /** Those of a course, gathered by product. */
    static Map<String, List<Application>> byProduct(Season season, Course course) {
        return of(season, course).stream()
                .collect(Collectors.groupingBy(Application::product, LinkedHashMap::new, Collectors.toList()));
    }

    /** The rate per treated acre; null where none is planned. */
    @Nullable
    Amount rate() {
        return pass.rate();
    }

    /** What a finding on this one pass is headed with. */
    String subject() {
        return "pass " + pass.number() + ", " + product;
    }

    private static Stream<Application> underLabel(Season season, Pass pass) {
        String name = pass.product();
        if (name == null) {
            return Stream.of();
        }
        boolean labelled = season.shelf()
                .product(name)
                .map(Product::kind)
                .filter(ProductKind::underLabel)
                .isPresent();
        return labelled ? Stream.of(new Application(pass, name)) : Stream.of();
    }
}
