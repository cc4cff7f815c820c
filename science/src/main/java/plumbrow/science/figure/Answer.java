package plumbrow.science.figure;

import java.util.List;
import java.util.Map;

/** The answer of a figure with its working, ready for any of its faces. */
public record Answer(Figure figure, Map<String, Object> outputs, List<Step> working, List<String> cautions) {
    public Answer {
        working = List.copyOf(working);
        cautions = List.copyOf(cautions);
    }

    /** An answer that is a number, by key. */
    public double number(String key) {
        Object value = outputs.get(key);
        if (value instanceof Double number) {
            return number;
        }
        throw new IllegalArgumentException(figure.id() + " gives no number " + key);
    }

    /** An answer that is a word, by key. */
    public String word(String key) {
        if (outputs.get(key) instanceof String word) {
            return word;
        }
        throw new IllegalArgumentException(figure.id() + " gives no word " + key);
    }

    /** An answer that is a list of numbers, by key. */
    public double[] list(String key) {
        if (outputs.get(key) instanceof List<?> list) {
            return list.stream().mapToDouble(value -> (Double) value).toArray();
        }
        throw new IllegalArgumentException(figure.id() + " gives no list " + key);
    }
}
