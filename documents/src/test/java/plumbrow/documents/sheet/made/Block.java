package plumbrow.documents.sheet.made;

import java.util.List;

/** What stands on a made sheet, before it is laid out. {@code ^{-7}} is printed raised. */
sealed interface Block {
    /** The heading of a section. */
    record Heading(String text) implements Block {}

    /** A heading inside a section. */
    record Subheading(String text) implements Block {}

    /** A label with its value. */
    record Pair(String label, String value) implements Block {}

    record Paragraph(String text) implements Block {}

    /**
     * Rows under heads.
     *
     * @param columns shares of the width [%]
     */
    record Table(List<Integer> columns, List<String> heads, List<List<String>> rows) implements Block {}

    /** A page break. */
    record NewPage() implements Block {}
}
