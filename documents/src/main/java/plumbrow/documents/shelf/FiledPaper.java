package plumbrow.documents.shelf;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A paper in the book, by what was read on it when it came.
 *
 * @param number under which the book keeps it
 * @param product its name as read; empty where unknown
 * @param registration EPA registration number in one spelling; empty where unknown
 * @param dated day of revision or issue; null where unknown
 * @param needsTyping whether no page has any text
 */
public record FiledPaper(
        int number,
        Kind kind,
        String fileName,
        String product,
        String registration,
        @Nullable LocalDate dated,
        int pages,
        boolean needsTyping) {

    /** What sort of paper it is. */
    public enum Kind {
        SAFETY_SHEET("safety sheet"),
        LABEL("label"),
        /** It has no text, so nobody can tell without looking. */
        UNKNOWN("paper of unknown kind");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
