package plumbrow.science.checks;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import plumbrow.science.Printed;
import plumbrow.science.figure.Example;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Status;
import plumbrow.science.figure.Subject;
import plumbrow.science.reference.Sources;

/**
 * One value from outside held against this code.
 *
 * @param what the figure with its inputs, or what is reckoned, in words
 * @param source where the value comes from; printed sources by their key in brackets
 * @param status how well it is backed
 * @param expected the answers as the source prints them, by key; the key is empty where there is one only
 * @param got the answers of this code, by the same keys
 * @param slack how far they may lie apart; 0 for one in the last printed digit
 * @param differs why the value printed there is not met, where it is known to be another; empty otherwise
 */
public record Check(
        Subject subject,
        String what,
        String source,
        Status status,
        Map<String, String> expected,
        Supplier<Map<String, Object>> got,
        double slack,
        String differs) {

    /** A worked example of a figure as a check. */
    public static Check of(Figure figure, Example example) {
        return new Check(
                figure.subject(),
                call(figure, example.inputs()),
                cited(figure, example.cited()),
                example.status(),
                example.expected(),
                () -> figure.answer(example.inputs()).outputs(),
                0,
                "");
    }

    /** Whether every answer is the one printed; for a value that is known to differ, whether it still does. */
    public boolean holds() {
        return agrees() == differs.isEmpty();
    }

    /** The answers of this code to the keys expected, with one digit more than the source prints. */
    public Map<String, String> found() {
        Map<String, Object> answers = got.get();
        Map<String, String> found = new LinkedHashMap<>();
        expected.forEach((key, printed) -> found.put(key, Printed.beside(answers.get(key), printed)));
        return found;
    }

    private boolean agrees() {
        Map<String, Object> answers = got.get();
        return expected.entrySet().stream()
                .allMatch(value -> Printed.agrees(answers.get(value.getKey()), value.getValue(), slack));
    }

    /** An answer that cites no source of its own comes by the formula of the figure's. */
    private static String cited(Figure figure, String citation) {
        return Sources.in(citation).isEmpty() ? citation + "; " + figure.cited() : citation;
    }

    private static String call(Figure figure, Map<String, String> inputs) {
        StringBuilder call = new StringBuilder(figure.id());
        inputs.forEach((key, value) -> call.append(' ').append(key).append('=').append(value));
        return call.toString();
    }
}
