package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.course.Course;
import plumbrow.advice.course.Pass;
import plumbrow.advice.course.PassKind;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelUse;

/**
 * Whether the label lists the crop.
 *
 * <p>Protects the law: use on a crop the label does not list is use inconsistent with the labelling, whatever the rate.
 * Barred where the label was read and lists other crops only; unknown where no use of the label was read, or the
 * product is not on the shelf or not named.
 *
 * <p>Source: 7 U.S.C. 136j(a)(2)(G), 136(ee). Needs: the label uses of each product.
 */
final class CropOnLabel implements Gate {

    @Override
    public String id() {
        return "crop-on-label";
    }

    @Override
    public Protects protects() {
        return Protects.LAW;
    }

    @Override
    public String question() {
        return "Does the label list this crop?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        Stream<Finding> listed =
                Application.byProduct(season, course).keySet().stream().map(product -> listed(season, field, product));
        return Stream.concat(course.passes().stream().flatMap(pass -> unnamed(season, pass)), listed)
                .toList();
    }

    private Finding listed(Season season, Field field, String product) {
        String crop = field.crop().word();
        List<LabelUse> uses = season.shelf().labelUses().stream()
                .filter(use -> use.product().equals(product))
                .toList();
        if (uses.isEmpty()) {
            return Finding.of(
                            this,
                            Standing.UNKNOWN,
                            product,
                            "No use of the " + product + " label has been read, so nobody knows whether it lists "
                                    + crop + ".")
                    .clearedBy("Look up the directions for " + crop + " on the current label of " + product + ".");
        }
        return season.shelf()
                .labelUse(product, field.crop())
                .map(use -> Finding.of(this, Standing.CLEAR, product, "The label lists " + crop + ".")
                        .standingIn(use.source()))
                .orElseGet(() -> Finding.of(
                                this,
                                Standing.BARRED,
                                product,
                                "The label as read lists " + crops(uses) + ", not " + crop + ".")
                        .standingIn(uses.get(0).source())
                        .clearedBy("Choose a product labelled for " + crop + "."));
    }

    private Stream<Finding> unnamed(Season season, Pass pass) {
        String product = pass.product();
        String where = "pass " + pass.number();
        if (product != null) {
            return season.shelf().product(product).isPresent()
                    ? Stream.of()
                    : Stream.of(Finding.of(this, Standing.UNKNOWN, where, product + " is not on the shelf.")
                            .clearedBy("Enter " + product + " on the shelf, with its label."));
        }
        return pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE
                ? Stream.of(Finding.of(
                                this,
                                Standing.UNKNOWN,
                                where,
                                "This " + pass.kind().word() + " pass names no product.")
                        .clearedBy("Name the product that goes on in " + where + "."))
                : Stream.of();
    }

    private static String crops(List<LabelUse> uses) {
        return String.join(
                " and ",
                uses.stream().map(use -> use.crop().word()).distinct().sorted().toList());
    }
}
