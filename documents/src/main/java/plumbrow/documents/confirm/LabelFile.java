package plumbrow.documents.confirm;

import plumbrow.documents.shelf.FiledPaper;

/**
 * A label in the book.
 *
 * @param sha256 checksum of its file
 */
public record LabelFile(FiledPaper paper, String sha256) {
    /** What a source calls it: "label of 2026-03-01". */
    String words() {
        return paper.dated() == null ? "label " + paper.fileName() : "label of " + paper.dated();
    }
}
