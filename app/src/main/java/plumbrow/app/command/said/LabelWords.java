package plumbrow.app.command.said;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.app.json.LabelRead;

/** A label said in text: each value with its page, and what is not stated. */
public final class LabelWords {
    private static final int LONGEST = 110;

    private LabelWords() {}

    public static String read(List<LabelRead> labels) {
        Paper paper = new Paper();
        for (LabelRead label : labels) {
            paper.heading(label.file() + ": label, " + label.pages() + (label.pages() == 1 ? " page" : " pages"));
            label.notices().forEach(notice -> paper.prose("  note: ", notice));
            TextTable table =
                    TextTable.empty().words("").words("what the label says").words("page");
            for (LabelRead.Value value : label.values()) {
                Integer page = value.page();
                if (!value.state().equals("not stated")) {
                    String doubt = value.state().equals("differing") ? "(contradicted) " : "";
                    table.row(
                            value.kind().title(), cut(doubt + value.says()), page == null ? "" : String.valueOf(page));
                }
            }
            if (table.hasRows()) {
                paper.gap().table(table);
            }
            String none = label.values().stream()
                    .filter(value -> value.state().equals("not stated"))
                    .map(value -> value.kind().title())
                    .collect(Collectors.joining(", "));
            if (!none.isEmpty()) {
                paper.gap().prose("  not stated: ", none);
            }
        }
        return paper.gap()
                .prose(
                        "Read by a machine: rates and limits are proposals until a person has held each against its page. What is"
                                + " not stated is unknown, not allowed. The current label is the law.")
                .text();
    }

    private static String cut(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…";
    }
}
