package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the directions for the use were read whole, beyond rates.
 *
 * <p>Protects the law. One finding for each product of which nothing else was read, in place of one from every gate that
 * needs it. A row of terms says that the directions for the crop were read: rates by soil and words on tank mixes too,
 * where the label has any. What single value is missing in that row, its own gate asks for. The log is asked the same:
 * a product of it that is not labelled for the crop in the book leaves intervals unknown.
 *
 * <p>Source: the label. Needs: a row of terms for each product and crop.
 */
final class TermsRead extends Question {
    private static final String LIST =
            "restricted-entry interval, days between applications, grazing and feeding, growth stage, "
                    + "heights, methods, carrier volume, droplets, boom, wind, heat, rain-free hours, rates by soil, tank mixes";

    TermsRead() {
        super("terms-read", Protects.LAW, "Have the directions been read beyond rates?");
    }

    @Override
    public List<Finding> check(Case at) {
        Stream<Finding> planned = at.byProduct().keySet().stream().flatMap(product -> unread(at, product).stream());
        Stream<Finding> logged = at.logged().stream()
                .map(Application::product)
                .distinct()
                .filter(product -> !at.byProduct().containsKey(product))
                .flatMap(product -> unreadInLog(at, product).stream());
        return Stream.concat(planned, logged).toList();
    }

    private Optional<Finding> unread(Case at, String product) {
        return at.terms(product).isPresent()
                ? Optional.empty()
                : Optional.of(unknown(
                        product,
                        "The label's other terms on " + at.field().crop().word() + " have not been read.",
                        "Look up on the " + product + " label, for "
                                + at.field().crop().word() + ": " + LIST + "."));
    }

    private Optional<Finding> unreadInLog(Case at, String product) {
        boolean read = at.terms(product).isPresent() && at.use(product).isPresent();
        return read
                ? Optional.empty()
                : Optional.of(unknown(
                        product,
                        "The log has " + product + " on this field this season, and its label on "
                                + at.field().crop().word() + " is not in the book.",
                        "Enter " + product + " on the shelf, with its rates, intervals and terms."));
    }
}
