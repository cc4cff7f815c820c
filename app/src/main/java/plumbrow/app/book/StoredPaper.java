package plumbrow.app.book;

import java.time.Instant;
import plumbrow.documents.shelf.FiledPaper;

/**
 * A paper that the book keeps.
 *
 * @param bytes size of the file [bytes]
 */
public record StoredPaper(FiledPaper paper, String sha256, Instant addedAt, long bytes) {
    public int number() {
        return paper.number();
    }
}
