package plumbrow.documents.confirm;

import java.util.List;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.paper.Quote;

/**
 * A clear value as it was read on a label, kept beside the label so that nobody must read the file again to know what it
 * proposes. It enters nothing: what was confirmed does.
 *
 * @param sha256 checksum of the label's file
 * @param property of the row, such as "high_rate"
 * @param value as text
 * @param page of the label, from 1; 0 where it stands nowhere
 */
public record ReadOnLabel(String sha256, RowName row, String property, String value, int page) {
    /** Names the value among all of the label. */
    public String id() {
        return ProposedValue.id(row, property);
    }

    /** All clear values of a label. */
    public static List<ReadOnLabel> of(String sha256, LabelPaper label) {
        return ProposedValues.of(label).stream()
                .filter(ProposedValue::clear)
                .map(value -> new ReadOnLabel(
                        sha256,
                        value.row(),
                        value.property(),
                        value.proposed(),
                        value.quote().map(Quote::page).orElse(0)))
                .toList();
    }
}
