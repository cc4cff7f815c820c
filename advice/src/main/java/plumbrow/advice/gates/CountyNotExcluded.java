package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Product;

/**
 * Whether the label keeps a product out of any county the field lies in.
 *
 * <p>Protects wildlife: county exclusions mostly guard listed species and water. A county written without its state
 * bars that county name everywhere. Unknown where nobody has looked; looked and found none is an empty list. Month-bound
 * limits in endangered-species bulletins are not in this gate: they are read again before each use.
 *
 * <p>Source: the label. Needs: the excluded counties of each product.
 */
final class CountyNotExcluded extends Question {
    CountyNotExcluded() {
        super("county", Protects.WILDLIFE, "Does the label keep it out of this county?");
    }

    @Override
    public List<Finding> check(Case at) {
        return at.byProduct().keySet().stream()
                .flatMap(name -> at.index().product(name).stream())
                .flatMap(product -> Stream.concat(
                        at.places().stream()
                                .map(place ->
                                        judge(product.name(), product.excludedCounties(), product.source(), place)),
                        excludedNearby(at, product)))
                .toList();
    }

    /** A county that the label excludes and whose line is nearer than the county map is exact. */
    private Stream<Finding> excludedNearby(Case at, Product product) {
        List<String> excluded = product.excludedCounties();
        return at.perhapsIn().stream()
                .map(county -> new Place(county.state(), county.name()))
                .filter(place -> excluded != null && excluded.stream().anyMatch(place::named))
                .map(place -> unknown(
                                product.name(),
                                "The field may also lie in " + place.words()
                                        + ", which the label excludes: its line is "
                                        + "nearer than the mile to which the county map is exact.",
                                "Look at the deed or the county map whether any part lies in " + place.words()
                                        + "; if so, add the county on the sheet also_in.")
                        .standingIn(product.source()));
    }

    private Finding judge(String product, @Nullable List<String> excluded, String source, Place place) {
        String here = place.words();
        if (excluded == null) {
            return unknown(
                    product,
                    "Nobody has looked whether the label of " + product + " excludes " + here + ".",
                    "Look for county and state restrictions on the current label of " + product + ".");
        }
        Finding finding = excluded.stream().anyMatch(place::named)
                ? barred(
                        product,
                        "The label excludes " + here + ".",
                        "Choose a product whose label allows " + here + ".")
                : clear(product, "The label does not exclude " + here + ".");
        return finding.standingIn(source);
    }
}
