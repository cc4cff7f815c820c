package plumbrow.advice.gates;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/**
 * Whether the label keeps a product out of the field's county.
 *
 * <p>Protects wildlife: county exclusions mostly guard listed species and water. A county written without its state
 * bars that county name everywhere. Unknown where nobody has looked; looked and found none is an empty list. Month-bound
 * limits in endangered-species bulletins are not in this gate: they are read again before each use.
 *
 * <p>Source: the label. Needs: the excluded counties of each product.
 */
final class CountyNotExcluded implements Gate {

    @Override
    public String id() {
        return "county";
    }

    @Override
    public Protects protects() {
        return Protects.WILDLIFE;
    }

    @Override
    public String question() {
        return "Does the label keep it out of this county?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        return Application.byProduct(season, course).keySet().stream()
                .flatMap(name -> season.shelf().product(name).stream())
                .map(product -> judge(product.name(), product.excludedCounties(), product.source(), field))
                .toList();
    }

    private Finding judge(String product, @Nullable List<String> excluded, String source, Field field) {
        String here = field.county() + " County, " + field.state();
        if (excluded == null) {
            return Finding.of(
                            this,
                            Standing.UNKNOWN,
                            product,
                            "Nobody has looked whether the label of " + product + " excludes " + here + ".")
                    .clearedBy("Look for county and state restrictions on the current label of " + product + ".");
        }
        return excluded.stream().anyMatch(entry -> names(entry, field))
                ? Finding.of(this, Standing.BARRED, product, "The label excludes " + here + ".")
                        .standingIn(source)
                        .clearedBy("Choose a product whose label allows " + here + ".")
                : Finding.of(this, Standing.CLEAR, product, "The label does not exclude " + here + ".")
                        .standingIn(source);
    }

    private static boolean names(String entry, Field field) {
        int colon = entry.indexOf(':');
        boolean sameCounty = plain(entry.substring(colon + 1)).equals(plain(field.county()));
        return sameCounty && (colon < 0 || plain(entry.substring(0, colon)).equals(plain(field.state())));
    }

    private static String plain(String name) {
        return name.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+county$", "")
                .replaceAll("\\s+", " ");
    }
}
