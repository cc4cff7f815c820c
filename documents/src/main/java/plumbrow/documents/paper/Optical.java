package plumbrow.documents.paper;

import java.util.List;

/**
 * What of a paper was made out by OCR.
 *
 * @param pages the numbers of these pages
 * @param doubts words on them that are not sure: those that hold a number, and all where letters are guessed
 */
public record Optical(List<Integer> pages, List<Doubt> doubts) {
    /** Nothing was: all pages have text of their own. */
    public static final Optical NONE = new Optical(List.of(), List.of());

    /**
     * A word that may be another.
     *
     * @param why as the end of a sentence
     */
    public record Doubt(int page, Box box, String text, String why) {}

    public Optical {
        pages = List.copyOf(pages);
        doubts = List.copyOf(doubts);
    }

    /** Whether words stand on a page that was made out by OCR. */
    public boolean holds(Quote quote) {
        return quote.marks().stream().anyMatch(mark -> pages.contains(mark.page()));
    }

    /** The doubts about the words of a quote. */
    public List<Doubt> about(Quote quote) {
        return doubts.stream()
                .filter(doubt -> quote.marks().stream()
                        .anyMatch(mark -> mark.page() == doubt.page && meet(mark.box(), doubt.box)))
                .toList();
    }

    private static boolean meet(Box one, Box word) {
        double across = (word.left() + word.right()) / 2;
        return one.left() <= across
                && across <= one.right()
                && one.top() <= word.middle()
                && word.middle() <= one.bottom();
    }
}
