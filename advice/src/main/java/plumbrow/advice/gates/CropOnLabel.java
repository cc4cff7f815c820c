package plumbrow.advice.gates;

import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.program.Pass;
import plumbrow.advice.program.PassKind;
import plumbrow.advice.shelf.LabelUse;
import plumbrow.advice.shelf.SpecialLabel;

/**
 * Whether a label lists the crop, in every county the field lies in and on the day.
 *
 * <p>Protects the law: use on a crop the label does not list is use inconsistent with the labelling, whatever the rate.
 * Barred where the label was read and lists other crops only; unknown where no use of the label was read, or the
 * product is not on the shelf or not named. Where the book holds special labels for the use (special local need,
 * emergency), the use stands on them alone: barred in other states and counties and outside their days, unknown where
 * the day is not planned. Where one of them stands beside a main label that lists the crop too, the use stands on the main
 * label.
 *
 * <p>Source: 7 U.S.C. 136j(a)(2)(G), 136(ee); 136v(c) and 136p for special labels. Needs: the label uses and special
 * labels of each product, and the day of a pass that goes by a special label.
 */
final class CropOnLabel extends Question {
    CropOnLabel() {
        super("crop-on-label", Protects.LAW, "Does the label list this crop?");
    }

    @Override
    public List<Finding> check(Case at) {
        Stream<Finding> listed = at.byProduct().keySet().stream()
                .filter(product -> specials(at, product).isEmpty() || besideMain(at, product))
                .map(product -> listed(at, product));
        Stream<Finding> special = at.planned().stream()
                .filter(application ->
                        !specials(at, application.product()).isEmpty() && !besideMain(at, application.product()))
                .flatMap(application -> special(at, application));
        return Stream.of(at.passes().stream().flatMap(pass -> unnamed(at, pass)), listed, special)
                .flatMap(findings -> findings)
                .toList();
    }

    private static List<SpecialLabel> specials(Case at, String product) {
        return at.index().specialLabels(product, at.field().crop());
    }

    /** Whether the main label lists the crop too: then a special label only adds to it, and the use stands on the main one. */
    private static boolean besideMain(Case at, String product) {
        return specials(at, product).stream().anyMatch(SpecialLabel::beside);
    }

    private Finding listed(Case at, String product) {
        String crop = at.field().crop().word();
        List<LabelUse> uses = at.index().uses(product);
        if (uses.isEmpty()) {
            return unread(product, crop);
        }
        return at.use(product)
                .map(use -> clear(product, "The label lists " + crop + ".").standingIn(use.source()))
                .orElseGet(() -> barred(
                                product,
                                "The label as read lists " + crops(uses) + ", not " + crop + ".",
                                "Choose a product labelled for " + crop + ".")
                        .standingIn(uses.get(0).source()));
    }

    private Finding unread(String subject, String crop) {
        return unknown(
                subject,
                "No use of the " + subject + " label has been read, so nobody knows whether it lists " + crop + ".",
                "Look up the directions for " + crop + " on the current label of " + subject + ".");
    }

    /** A use by special label: every county of the field must be covered on the day, and its rates be in the book. */
    private Stream<Finding> special(Case at, Application application) {
        List<SpecialLabel> labels = specials(at, application.product());
        String crop = at.field().crop().word();
        Stream<Finding> places = at.places().stream().map(place -> special(application, labels, place, crop));
        return at.use(application.product()).isPresent()
                ? places
                : Stream.concat(Stream.of(unread(application.product(), crop)), places);
    }

    private Finding special(Application application, List<SpecialLabel> labels, Place place, String crop) {
        SpecialUse use = SpecialUse.of(labels, place, application.date());
        SpecialLabel label = use.label().orElse(labels.get(0));
        String stands = crop + " stands on a special label for " + label.state() + ", " + SpecialUse.days(label);
        Finding finding = switch (use.answer()) {
            case VALID ->
                clear(application.subject(), "In " + place.words() + ", " + stands + "; it is valid on that day.");
            case UNDATED ->
                unknown(
                        application.subject(),
                        "In " + place.words() + ", " + stands + "; whether it is valid on the day is not known.",
                        "Plan a day for the pass, and read both days of the special label.");
            case OUT_OF_DATE ->
                barred(
                        application.subject(),
                        "In " + place.words() + ", " + stands + "; it is not valid on " + application.date() + ".",
                        "Go within its days, or choose a product labelled for " + crop + ".");
            case ELSEWHERE ->
                barred(
                        application.subject(),
                        "No special label covers " + place.words() + ": " + stands + ".",
                        "Choose a product labelled for " + crop + " in " + place.words() + ".");
        };
        return finding.standingIn(label.source());
    }

    private Stream<Finding> unnamed(Case at, Pass pass) {
        String product = pass.product();
        String where = "pass " + pass.number();
        if (product != null) {
            return at.index().product(product).isPresent()
                    ? Stream.of()
                    : Stream.of(unknown(
                            where,
                            product + " is not on the shelf.",
                            "Enter " + product + " on the shelf, with its label."));
        }
        return pass.kind() == PassKind.SPRAY || pass.kind() == PassKind.GRANULE
                ? Stream.of(unknown(
                        where,
                        "This " + pass.kind().word() + " pass names no product.",
                        "Name the product that goes on in " + where + "."))
                : Stream.of();
    }

    private static String crops(List<LabelUse> uses) {
        return String.join(
                " and ",
                uses.stream().map(use -> use.crop().word()).distinct().sorted().toList());
    }
}
