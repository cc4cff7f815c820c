package plumbrow.science.figure;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A worked example with an answer from outside this code; every example runs as a test.
 *
 * @param inputs what is typed, by key
 * @param expected the answers, by key: a number, a text, or a list of numbers
 * @param tolerance how far a number may be off, in the unit of the answer: one in the source's last printed digit
 * @param source where the answer comes from
 * @param status how well it is backed
 */
public record Example(
        Map<String, String> inputs, Map<String, Object> expected, double tolerance, String source, Status status) {
    public Example {
        inputs = new LinkedHashMap<>(inputs);
        expected = new LinkedHashMap<>(expected);
    }
}
