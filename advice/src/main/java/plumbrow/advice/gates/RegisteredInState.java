package plumbrow.advice.gates;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.SpecialLabel;
import plumbrow.science.reference.County;

/**
 * Whether each product is registered in every state the field lies in.
 *
 * <p>Protects the law: a product registered with the federal agency may be used only where the state has registered it
 * too. A special label on which alone the use stands is the registration in its state; its days are judged with the
 * crop. One beside the main label registers nothing. Unknown
 * where nobody has looked.
 *
 * <p>Source: 7 U.S.C. 136v(a) and (c) and the state's own list. Needs: the states of each product.
 */
final class RegisteredInState extends Question {
    RegisteredInState() {
        super("registered-in-state", Protects.LAW, "Is it registered in this state?");
    }

    @Override
    public List<Finding> check(Case at) {
        List<String> states = at.places().stream().map(Place::state).distinct().toList();
        return at.byProduct().keySet().stream()
                .flatMap(name -> at.index().product(name).stream())
                .flatMap(product -> Stream.concat(
                        states.stream().map(state -> judge(at, product, state)),
                        perhaps(at, states)
                                .map(state -> nearby(at, product, state))
                                .flatMap(Optional::stream)))
                .toList();
    }

    /** States whose line is nearer to the field than the county map is exact. */
    private static Stream<String> perhaps(Case at, List<String> states) {
        return at.perhapsIn().stream()
                .map(County::state)
                .filter(state -> !states.contains(state))
                .distinct();
    }

    private Optional<Finding> nearby(Case at, Product product, String state) {
        return judge(at, product, state).standing() != Standing.BARRED
                ? Optional.empty()
                : Optional.of(unknown(
                                product.name(),
                                "The field may also lie in " + state
                                        + ", where it is not registered: the state line is "
                                        + "nearer than the mile to which the county map is exact.",
                                "Look at the deed or the county map whether any part lies in " + state
                                        + "; if so, add the county on the sheet also_in.")
                        .standingIn(product.source()));
    }

    private Finding judge(Case at, Product product, String state) {
        Stream<SpecialLabel> special =
                at.index().specialLabels(product.name(), at.field().crop()).stream();
        return special.filter(label -> !label.beside() && same(label.state(), state))
                .findFirst()
                .map(label -> clear(product.name(), "A special label covers " + state + ".")
                        .standingIn(label.source()))
                .orElseGet(() -> listed(product.name(), product.states(), product.source(), state));
    }

    private Finding listed(String product, @Nullable List<String> states, String source, String state) {
        if (states == null) {
            return unknown(
                    product,
                    "Nobody has looked up whether " + product + " is registered in " + state + ".",
                    "Look it up on the " + state + " state list of registered pesticides.");
        }
        if (states.stream().anyMatch(listed -> same(listed, state))) {
            return clear(product, "Registered in " + state + ".").standingIn(source);
        }
        return barred(
                        product,
                        states.isEmpty()
                                ? product + " is registered in no state."
                                : product + " is registered in " + String.join(", ", states) + ", not in " + state
                                        + ".",
                        "Choose a product registered in " + state + ".")
                .standingIn(source);
    }

    private static boolean same(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }
}
