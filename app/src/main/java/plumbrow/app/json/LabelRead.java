package plumbrow.app.json;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.label.LabelReading;
import plumbrow.documents.paper.Mark;

/**
 * One label as read.
 *
 * @param paper always "label"
 * @param values all values found, contradictions, and each kind of which the label says nothing
 */
public record LabelRead(
        String file, String paper, int pages, boolean needsTyping, List<Value> values, List<String> notices) {

    /**
     * One thing the label says or fails to say.
     *
     * @param state stated, unclear, differing, not stated
     * @param says in a person's words
     * @param content its parts; null where nothing is clearly stated
     * @param page where it begins; null where it stands nowhere
     * @param words the very words; null as above
     * @param marks boxes on pages in points from the upper left corner
     */
    public record Value(
            LabelKind kind,
            String state,
            String says,
            @Nullable LabelContent content,
            @Nullable Integer page,
            @Nullable String words,
            List<Mark> marks) {

        static Value of(LabelReading reading, boolean contradicted) {
            LabelContent content = reading instanceof LabelReading.Stated stated ? stated.content() : null;
            String state = contradicted ? "differing" : state(reading);
            return reading instanceof LabelReading.OnPaper paper
                    ? new Value(
                            reading.kind(),
                            state,
                            reading.words(),
                            content,
                            paper.quote().page(),
                            paper.quote().words(),
                            paper.quote().marks())
                    : new Value(reading.kind(), state, reading.words(), null, null, null, List.of());
        }

        private static String state(LabelReading reading) {
            if (reading instanceof LabelReading.Stated) {
                return "stated";
            }
            if (reading instanceof LabelReading.Unclear) {
                return "unclear";
            }
            return reading instanceof LabelReading.Differing ? "differing" : "not stated";
        }
    }

    public static LabelRead of(String file, LabelPaper label) {
        List<Value> values = new ArrayList<>();
        for (LabelKind kind : LabelKind.values()) {
            label.readings().stream()
                    .filter(reading -> reading.kind() == kind)
                    .map(reading -> Value.of(
                            reading,
                            reading instanceof LabelReading.Stated stated
                                    && label.sameMatter(stated) instanceof LabelReading.Differing))
                    .forEach(values::add);
            if (label.readings().stream().noneMatch(reading -> reading.kind() == kind)) {
                values.add(Value.of(new LabelReading.NotStated(kind), false));
            }
        }
        return new LabelRead(file, "label", label.pages(), label.needsTyping(), values, label.notices());
    }
}
