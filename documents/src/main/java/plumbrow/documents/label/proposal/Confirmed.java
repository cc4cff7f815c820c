package plumbrow.documents.label.proposal;

import java.time.LocalDate;

/**
 * A row that a person has held against the page of the label.
 *
 * @param by who did
 */
public record Confirmed<R extends Record>(R row, String by, LocalDate on) {
    public Confirmed {
        if (by.isBlank()) {
            throw new IllegalArgumentException("a confirmation needs the name of who confirms");
        }
    }
}
