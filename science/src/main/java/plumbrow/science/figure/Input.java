package plumbrow.science.figure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One input of a figure.
 *
 * @param key the name outside checks call, with its unit, such as {@code price_usd_bu}
 * @param label what a person reads beside the box
 * @param unit the unit shown beside the box, empty for a bare number or a word
 * @param kind what may be typed
 * @param range the numbers that are allowed; ignored for words
 * @param required whether the figure needs it
 * @param fallback the value taken when an optional input is left out, or null where the model decides
 * @param choices the words allowed, for {@link Kind#WORD}
 * @param example a value that makes sense, as it would be typed
 */
public record Input(
        String key,
        String label,
        String unit,
        Kind kind,
        Range range,
        boolean required,
        @Nullable String fallback,
        List<String> choices,
        String example) {

    /** What may be typed for an input. */
    public enum Kind {
        NUMBER,
        LIST,
        TABLE,
        WORD,
        TEXT
    }

    public Input {
        choices = List.copyOf(choices);
    }

    public static Input number(String key, String label, String unit, Range range, String example) {
        return new Input(key, label, unit, Kind.NUMBER, range, true, null, List.of(), example);
    }

    public static Input list(String key, String label, String unit, Range range, String example) {
        return new Input(key, label, unit, Kind.LIST, range, true, null, List.of(), example);
    }

    public static Input table(String key, String label, String unit, Range range, String example) {
        return new Input(key, label, unit, Kind.TABLE, range, true, null, List.of(), example);
    }

    public static Input word(String key, String label, List<String> choices, String example) {
        return new Input(key, label, "", Kind.WORD, Range.ANY, true, null, choices, example);
    }

    public static Input text(String key, String label, String example) {
        return new Input(key, label, "", Kind.TEXT, Range.ANY, true, null, List.of(), example);
    }

    /** The same input, optional; the model sees it as absent when it is left out. */
    public Input optional() {
        return new Input(key, label, unit, kind, range, false, null, choices, example);
    }

    /** The same input, optional, with the value taken when it is left out. */
    public Input orElse(String value) {
        return new Input(key, label, unit, kind, range, false, value, choices, example);
    }
}
