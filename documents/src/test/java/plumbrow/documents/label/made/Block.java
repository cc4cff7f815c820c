package plumbrow.documents.label.made;

import java.util.List;

/** What stands on a made label, before it is laid out. */
sealed interface Block {
    record Name(String text) implements Block {}

    record Heading(String text) implements Block {}

    record Subheading(String text) implements Block {}

    record Paragraph(String text) implements Block {}

    record Bullets(List<String> items) implements Block {}

    /** A line with dots between its two ends. */
    record Dotted(String label, String value) implements Block {}

    /** Words set far apart in one line, as in the box of the group. */
    record Boxed(List<String> words) implements Block {}

    /**
     * Rows under heads; without heads a plain grid.
     *
     * @param columns shares of the width [%]
     */
    record Table(List<Integer> columns, List<String> heads, List<List<String>> rows) implements Block {}
}
