package plumbrow.science.figure;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The answers of a model, in the order they are shown: a number, a text or a list of numbers under each key. */
public final class Outputs {
    private final Map<String, Object> values = new LinkedHashMap<>();

    public Outputs put(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new FigureInputException(
                    "", key + " has no finite answer for these inputs; check that they are plausible together");
        }
        values.put(key, value == 0 ? 0.0 : value);
        return this;
    }

    public Outputs put(String key, String value) {
        values.put(key, value);
        return this;
    }

    public Outputs put(String key, double[] list) {
        for (double value : list) {
            if (!Double.isFinite(value)) {
                throw new FigureInputException(
                        "", key + " has no finite answer for these inputs; check that they are plausible together");
            }
        }
        values.put(key, List.copyOf(Arrays.stream(list).boxed().toList()));
        return this;
    }

    public Outputs put(String key, List<String> words) {
        values.put(key, List.copyOf(words));
        return this;
    }

    public Map<String, Object> values() {
        return Collections.unmodifiableMap(values);
    }
}
