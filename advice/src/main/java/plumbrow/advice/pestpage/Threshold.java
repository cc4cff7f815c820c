package plumbrow.advice.pestpage;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.science.figure.Step;

/**
 * The pressure from which on a treatment pays on one field, at today's prices of the book.
 *
 * @param treatment product and rate it is reckoned for
 * @param density threshold in {@code unit}; null where no pressure pays or it is unknown
 * @param figure the figure that answers
 * @param asked what it was asked, by its keys, so that its page shows the same
 * @param steps its arithmetic with the prices before it
 * @param source of the loss and the control
 * @param cautions to stand beside it
 * @param lookUp where it is unknown, what is missing; else null
 */
public record Threshold(
        String field,
        String treatment,
        @Nullable Double density,
        String unit,
        String figure,
        Map<String, String> asked,
        List<Step> steps,
        String source,
        List<String> cautions,
        @Nullable String lookUp) {
    public Threshold {
        asked = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(asked));
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    static Threshold unknown(String field, String figure, String lookUp) {
        return new Threshold(field, "", null, "", figure, Map.of(), List.of(), "", List.of(), lookUp);
    }
}
