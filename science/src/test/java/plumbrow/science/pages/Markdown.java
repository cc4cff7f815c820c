package plumbrow.science.pages;

import java.util.List;
import java.util.stream.Collectors;

/** The few signs of Markdown that the pages need. */
final class Markdown {
    private Markdown() {}

    /** Words as they stand, whatever signs are in them. */
    static String words(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("|", "\\|")
                .replace("*", "\\*")
                .replace("_", "\\_");
    }

    /** Something to be typed or computed. */
    static String code(String text) {
        return text.isEmpty() ? "" : "`" + text.replace("|", "\\|") + "`";
    }

    static String row(List<String> cells) {
        return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n")).replaceAll(" +", " ");
    }

    static String head(String... cells) {
        return row(List.of(cells)) + "|" + "---|".repeat(cells.length) + "\n";
    }

    /** A list item. */
    static String item(String text) {
        return "- " + text + "\n";
    }
}
