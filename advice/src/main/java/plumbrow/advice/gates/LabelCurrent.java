package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import plumbrow.advice.shelf.LabelDifference;
import plumbrow.advice.shelf.PlantBack;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether a person has held the values of the book against the current label.
 *
 * <p>Protects the law. Unknown where nobody has; conditional where it was more than a year before the day of the advice,
 * since labels change. Exactly a year is within it. A year is our own rule, no source. Unknown too for each value that touches
 * this field and that the label in the book and the workbook say differently, until a person settles it; conditional where what
 * counts forbids more than the label.
 *
 * <p>Needs: the day the label was held against the book; where the label itself is in the book, what differs from it.
 */
final class LabelCurrent extends CareGate {
    LabelCurrent() {
        super("label-current", Protects.LAW, "Has the current label been held against the book?");
    }

    @Override
    public List<Finding> check(Case at) {
        Stream<Finding> differing = at.index().season().shelf().labels().differences().stream()
                .filter(one -> touches(at, one))
                .map(one -> differing(one).standingIn(one.source()));
        return Stream.concat(super.check(at).stream(), differing).toList();
    }

    private Finding differing(LabelDifference one) {
        String says = "The label says " + one.what() + ": " + one.label() + "; the workbook says " + one.workbook()
                + ". Nobody has settled which one holds; until then the checks go by " + one.counts() + ".";
        String settle = "Hold it against the label's page on the shelf and settle it there, or in the workbook.";
        return one.stricter()
                ? unknown(one.product(), says, settle)
                : conditional(one.product(), says + " That forbids more than the label.", settle);
    }

    private static boolean touches(Case at, LabelDifference one) {
        return at.byProduct().containsKey(one.product())
                && (one.crop() == null || one.crop() == at.field().crop())
                && (one.nextCrop().isEmpty()
                        || at.nextCrops().stream().anyMatch(next -> {
                            PlantBack row = new PlantBack(one.product(), one.nextCrop(), null, null, null, "", "");
                            return !PlantBack.speakingFor(next.crop(), List.of(row))
                                    .isEmpty();
                        }));
    }

    @Override
    Stream<Finding> judge(Case at, ProductCare care) {
        LocalDate confirmed = care.confirmed();
        if (confirmed == null) {
            return Stream.of(unknown(
                    care.product(),
                    "Nobody has held the values of " + care.product() + " against its label.",
                    "Get the current label, hold every value against it, and write the day."));
        }
        LocalDate oldest = at.season().asOf().minusYears(1);
        return Stream.of(
                confirmed.isBefore(oldest)
                        ? conditional(
                                care.product(),
                                "The label was last read on " + confirmed + ", more than a year ago.",
                                "Get the current label and read it again before use.")
                        : clear(care.product(), "The label was read on " + confirmed + "."));
    }
}
