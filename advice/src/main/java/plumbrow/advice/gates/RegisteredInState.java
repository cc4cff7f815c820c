package plumbrow.advice.gates;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;

/**
 * Whether each product is registered in the field's state.
 *
 * <p>Protects the law: a product registered with the federal agency may be used only where the state has registered it
 * too. Unknown where nobody has looked.
 *
 * <p>Source: 7 U.S.C. 136v(a) and the state's own list. Needs: the states of each product.
 */
final class RegisteredInState implements Gate {

    @Override
    public String id() {
        return "registered-in-state";
    }

    @Override
    public Protects protects() {
        return Protects.LAW;
    }

    @Override
    public String question() {
        return "Is it registered in this state?";
    }

    @Override
    public List<Finding> check(Season season, Field field, Course course) {
        return Application.byProduct(season, course).keySet().stream()
                .flatMap(name -> season.shelf().product(name).stream())
                .map(product -> judge(product.name(), product.states(), product.source(), field.state()))
                .toList();
    }

    private Finding judge(String product, @Nullable List<String> states, String source, String state) {
        if (states == null) {
            return Finding.of(
                            this,
                            Standing.UNKNOWN,
                            product,
                            "Nobody has looked up whether " + product + " is registered in " + state + ".")
                    .clearedBy("Look it up on the " + state + " state list of registered pesticides.");
        }
        return states.stream().anyMatch(listed -> listed.strip().equalsIgnoreCase(state.strip()))
                ? Finding.of(this, Standing.CLEAR, product, "Registered in " + state + ".")
                        .standingIn(source)
                : Finding.of(
                                this,
                                Standing.BARRED,
                                product,
                                states.isEmpty()
                                        ? product + " is registered in no state."
                                        : product + " is registered in " + String.join(", ", states) + ", not in "
                                                + state + ".")
                        .standingIn(source)
                        .clearedBy("Choose a product registered in " + state + ".");
    }
}
