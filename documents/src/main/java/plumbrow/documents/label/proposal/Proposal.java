package plumbrow.documents.label.proposal;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import plumbrow.documents.label.LabelReading;

/**
 * A row for the shelf as a label has it. It is no part of any shelf: until a person has confirmed it, the gates know nothing
 * of it.
 *
 * @param row what would enter the shelf; a value that isn't clear on the label is null or unknown in it
 * @param grounds for each property of the row, by its name, what the label has to say: a statement to hold against the page,
 *     or why the property is empty; in the order of the row
 */
public record Proposal<R extends Record>(R row, Map<String, LabelReading> grounds) {

    public Proposal {
        grounds = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(grounds));
    }

    /** Whether every property that the label was asked for is clearly stated. */
    public boolean clear() {
        return grounds.values().stream().allMatch(reading -> reading instanceof LabelReading.Stated);
    }

    /**
     * The row as a person has found it right, or put it right, against the page.
     *
     * @param seen the row he saw, with his corrections
     */
    public Confirmed<R> confirmed(R seen, String by, LocalDate on) {
        return new Confirmed<>(seen, by, on);
    }
}
