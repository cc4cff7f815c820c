package plumbrow.advice.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Range;

/**
 * One box of a question. Left empty, a typical value stands in its place.
 *
 * @param id under which it is typed: a word in small letters
 * @param label what a person reads
 * @param unit the unit of what is typed; empty for a choice
 * @param hint where to find it, or an example
 * @param range what can be typed; null for a choice or a day
 * @param options what can be chosen; empty for a number or a day
 * @param findingOutUsd what finding it out costs for a field [$], common practice
 */
public record Box(
        String id,
        String label,
        String unit,
        String hint,
        @Nullable Range range,
        List<Option> options,
        double findingOutUsd) {
    /** One answer of a choice. */
    public record Option(String word, String words) {}

    public Box {
        options = List.copyOf(options);
    }

    static Box number(String id, String label, String unit, String hint, double low, double high) {
        return new Box(id, label, unit, hint, Range.closed(low, high), List.of(), 0);
    }

    static Box day(String id, String label, String hint) {
        return new Box(id, label, "", hint, null, List.of(), 0);
    }

    static Box choice(String id, String label, String hint, String... wordsByWord) {
        List<Option> options = new ArrayList<>();
        for (int i = 0; i + 1 < wordsByWord.length; i += 2) {
            options.add(new Option(wordsByWord[i], wordsByWord[i + 1]));
        }
        return new Box(id, label, "", hint, null, options, 0);
    }

    /** The same, which costs so much to find out for a field [$]. */
    Box costing(double usd) {
        return new Box(id, label, unit, hint, range, options, usd);
    }

    /** Whether a day is typed in it. */
    public boolean day() {
        return range == null && options.isEmpty();
    }

    Optional<Option> option(String word) {
        return options.stream()
                .filter(option ->
                        option.word().equalsIgnoreCase(word) || option.words().equalsIgnoreCase(word))
                .findFirst();
    }
}
