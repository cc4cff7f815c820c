package plumbrow.documents.sheet.section;

import java.util.Optional;
import plumbrow.documents.paper.Passage;

/**
 * A label with what follows it up to the next label.
 *
 * @param label which of the known ones; empty for another or for text without any
 * @param head the label's words as printed; may be empty
 * @param value what follows; tabs between columns; may be empty
 * @param table whether the value stands in a column beside the label's
 */
public record Item(Optional<Label> label, Passage head, Passage value, boolean table) {

    public boolean is(Label other) {
        return label.isPresent() && label.get() == other;
    }

    /** Label and value in one line. */
    public Passage all() {
        return new Passage.Builder().line(head).cell(value).build();
    }
}
