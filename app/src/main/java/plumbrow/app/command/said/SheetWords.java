package plumbrow.app.command.said;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.app.json.SheetRead;
import plumbrow.documents.sheet.SheetSection;

/** A safety sheet said in text: each value with its page, what is not stated, and what the sheet leaves out. */
public final class SheetWords {
    private static final int LONGEST = 110;

    private SheetWords() {}

    public static String read(List<SheetRead> sheets) {
        Paper paper = new Paper();
        for (SheetRead sheet : sheets) {
            paper.heading(sheet.file() + ": " + sheet.pages() + (sheet.pages() == 1 ? " page, " : " pages, ")
                    + sheet.sections().size() + " of " + SheetSection.values().length + " sections");
            sheet.notices().forEach(notice -> paper.prose("  note: ", notice));
            TextTable table =
                    TextTable.empty().words("").words("what the sheet says").words("page");
            for (SheetRead.Value value : sheet.values()) {
                Integer page = value.page();
                if (!value.state().equals("not stated")) {
                    table.row(value.kind().title(), cut(value.says()), page == null ? "" : String.valueOf(page));
                }
            }
            if (table.hasRows()) {
                paper.gap().table(table);
            }
            absent(paper, sheet);
        }
        return paper.gap()
                .prose(
                        "Read by a machine: compare each value with its page before it counts. A value that is not stated is"
                                + " unknown, not harmless. The current label is the law.")
                .text();
    }

    private static void absent(Paper paper, SheetRead sheet) {
        String none = sheet.values().stream()
                .filter(value -> value.state().equals("not stated"))
                .map(value -> value.kind().title())
                .collect(Collectors.joining(", "));
        paper.gap();
        if (!none.isEmpty()) {
            paper.prose("  not stated: ", none);
        }
        if (!sheet.missingSections().isEmpty()) {
            paper.prose("  sections left out: ", String.join("; ", sheet.missingSections()));
        }
    }

    private static String cut(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…";
    }
}
