package plumbrow.documents.label;

import java.util.ArrayList;
import java.util.List;
import plumbrow.documents.paper.Paper;

/**
 * A pesticide label as read.
 *
 * @param readings everything read, in the order of the kinds
 * @param notices what a person should know about the file or the reading, one sentence each
 */
public record LabelPaper(
        Paper.Kind file, int pages, boolean needsTyping, List<LabelReading.OnPaper> readings, List<String> notices) {

    public LabelPaper {
        readings = List.copyOf(readings);
        notices = List.copyOf(notices);
    }

    /** What the label says of one thing: a value, or why there is none. Of several that go together, the first. */
    public LabelReading of(LabelKind kind) {
        List<LabelReading.Stated> stated = all(kind);
        for (LabelReading.Stated one : stated) {
            LabelReading reading = sameMatter(one);
            if (reading instanceof LabelReading.Differing) {
                return reading;
            }
        }
        List<LabelReading.OnPaper> unclear = unclear(kind);
        if (!unclear.isEmpty() && (stated.isEmpty() || kind.holdsOnce())) {
            return unclear.get(0);
        }
        return stated.isEmpty() ? new LabelReading.NotStated(kind) : stated.get(0);
    }

    /** A statement, or its contradiction where the label says otherwise about the same thing. */
    public LabelReading sameMatter(LabelReading.Stated statement) {
        if (!statement.kind().holdsOnce()) {
            return statement;
        }
        List<LabelReading.Stated> same = all(statement.kind()).stream()
                .filter(other ->
                        other.content().about().equals(statement.content().about()))
                .toList();
        return same.size() > 1 ? new LabelReading.Differing(statement.kind(), same) : statement;
    }

    /** All that the label clearly states of a kind, each once. */
    public List<LabelReading.Stated> all(LabelKind kind) {
        List<LabelReading.Stated> stated = new ArrayList<>();
        for (LabelReading.OnPaper reading : readings) {
            if (reading.kind() == kind && reading instanceof LabelReading.Stated one) {
                stated.add(one);
            }
        }
        return stated;
    }

    /** What stands there of a kind and can't be read in one way. */
    public List<LabelReading.OnPaper> unclear(LabelKind kind) {
        return readings.stream()
                .filter(reading -> reading.kind() == kind && reading instanceof LabelReading.Unclear)
                .toList();
    }
}
