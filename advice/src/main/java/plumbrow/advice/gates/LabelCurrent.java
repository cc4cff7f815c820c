package plumbrow.advice.gates;

import java.time.LocalDate;
import java.util.stream.Stream;
import plumbrow.advice.shelf.ProductCare;

/**
 * Whether a person has held the values of the book against the current label.
 *
 * <p>Protects the law. Unknown where nobody has; conditional where it was more than a year before the day of the advice,
 * since labels change. Exactly a year is within it. A year is our own rule, no source.
 *
 * <p>Needs: the day the label was held against the book.
 */
final class LabelCurrent extends CareGate {
    LabelCurrent() {
        super("label-current", Protects.LAW, "Has the current label been held against the book?");
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
