package plumbrow.science.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A worked example with an answer from outside this code; every example runs as a test.
 *
 * @param inputs what is typed, by key
 * @param expected the answers as the source prints them, by key; a number is met within one in its last printed digit
 * @param cited where the answer comes from; printed sources by their key in brackets
 * @param status how well it is backed
 */
public record Example(Map<String, String> inputs, Map<String, String> expected, String cited, Status status) {
    public Example {
        inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        expected = Collections.unmodifiableMap(new LinkedHashMap<>(expected));
    }

    /** An example as a person types it on one line: {@code price_usd_bu=4.40 extra_cost_usd_ac=22}. */
    public static Example of(String typed, String expected, String cited, Status status) {
        return new Example(pairs(typed), pairs(expected), cited, status);
    }

    /** One in the last printed digit of a number: 0.01 for 5.43, 1 for 152941. */
    public static double lastDigit(String printed) {
        String digits = printed.strip();
        int point = digits.indexOf('.');
        return point < 0 ? 1 : Math.pow(10, -(digits.length() - point - 1.0));
    }

    private static Map<String, String> pairs(String line) {
        Map<String, String> pairs = new LinkedHashMap<>();
        // A blank starts a new pair only before "key=", so that a text may hold blanks.
        for (String pair : line.strip().split("\\s+(?=[a-z][a-z0-9_]*=)", -1)) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException("expected key=value, found " + pair);
            }
            pairs.put(pair.substring(0, equals), pair.substring(equals + 1));
        }
        return pairs;
    }
}
