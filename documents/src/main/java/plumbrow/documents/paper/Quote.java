package plumbrow.documents.paper;

import java.util.List;

/**
 * The very words, and where they stand.
 *
 * @param words as printed, line breaks as blanks
 * @param marks one for each line or cell they stand on, in reading order; at least one
 */
public record Quote(String words, List<Mark> marks) {

    public Quote {
        if (marks.isEmpty()) {
            throw new IllegalArgumentException("words that stand nowhere: " + words);
        }
        marks = List.copyOf(marks);
    }

    /** The page they begin on. */
    public int page() {
        return marks.get(0).page();
    }
}
