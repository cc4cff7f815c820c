package plumbrow.documents.paper;

import java.util.List;

/**
 * What stands on a file's pages.
 *
 * @param kind what kind of file it was
 * @param pages all of them, at least one
 * @param heads running heads and feet, each once, as on the first page that has it
 * @param notices what a person should know about the file itself, one sentence each
 * @param optical what of it was made out by OCR
 */
public record Paper(Kind kind, List<Page> pages, List<Row> heads, List<String> notices, Optical optical) {

    /** Only a PDF has pages of which a picture can be made; elsewhere boxes say no more than the order. */
    public enum Kind {
        PDF,
        TEXT,
        HTML
    }

    public Paper {
        pages = List.copyOf(pages);
        heads = List.copyOf(heads);
        notices = List.copyOf(notices);
    }

    /** All rows in reading order over all pages. */
    public List<Row> rows() {
        return pages.stream().flatMap(page -> page.rows().stream()).toList();
    }

    /** Whether no page has any text, as when it was scanned: someone has to type it. */
    public boolean needsTyping() {
        return heads.isEmpty() && pages.stream().allMatch(page -> page.rows().isEmpty());
    }

    /** Numbers of the pages without any text of their own. */
    public List<Integer> blankPages() {
        return pages.stream()
                .filter(page -> page.rows().isEmpty())
                .map(Page::number)
                .toList();
    }
}
