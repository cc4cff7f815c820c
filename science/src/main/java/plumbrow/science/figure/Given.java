package plumbrow.science.figure;

import java.util.Map;
import java.util.OptionalDouble;

/** The checked inputs of one call. Asking for a key that is absent is a fault of the model, not of the person. */
public final class Given {
    private final Map<String, Object> values;
    private final Map<String, String> texts;

    Given(Map<String, Object> values, Map<String, String> texts) {
        this.values = Map.copyOf(values);
        this.texts = Map.copyOf(texts);
    }

    /**
     * The refusal of an input that is wrong only beside the others.
     *
     * @param expected what would be right: "a number between low (90) and high (200)"
     */
    public FigureInputException refuse(String key, String expected) {
        return new FigureInputException(
                key, key + " is '" + InputReader.shown(texts.get(key)) + "'; expected " + expected);
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    public double number(String key) {
        return take(key, Double.class);
    }

    /** An optional number; empty where it was left out. */
    public OptionalDouble maybe(String key) {
        return has(key) ? OptionalDouble.of(number(key)) : OptionalDouble.empty();
    }

    /** An optional number, or what stands in for it. */
    public double numberOr(String key, double otherwise) {
        return has(key) ? number(key) : otherwise;
    }

    public double[] list(String key) {
        return take(key, double[].class).clone();
    }

    /** Rows of a table; rows may differ in length, the model says what it needs. */
    public double[][] table(String key) {
        double[][] rows = take(key, double[][].class).clone();
        for (int i = 0; i < rows.length; i++) {
            rows[i] = rows[i].clone();
        }
        return rows;
    }

    public String word(String key) {
        return take(key, String.class);
    }

    private <T> T take(String key, Class<T> type) {
        Object value = values.get(key);
        if (value == null) {
            throw new IllegalStateException("the model asks for " + key + ", which was not given");
        }
        return type.cast(value);
    }
}
