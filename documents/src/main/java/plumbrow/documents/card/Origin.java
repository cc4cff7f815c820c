package plumbrow.documents.card;

import java.time.LocalDate;
import plumbrow.documents.paper.Quote;
import plumbrow.science.reference.Backing;

/** Where a value comes from. */
public sealed interface Origin {
    /** In one line: "safety sheet, page 3". */
    String words();

    /** The same in as few letters as a page of paper has room for: "sheet p. 3". */
    default String brief() {
        return words();
    }

    /** Which of a product's two papers; they are never taken for one another. */
    enum PaperKind {
        SAFETY_SHEET("safety sheet"),
        LABEL("label");

        private final String word;

        PaperKind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The very words on one of the product's papers. */
    record OnPaper(PaperKind paper, Quote quote) implements Origin {
        @Override
        public String words() {
            return paper.word() + ", page " + quote.page();
        }

        @Override
        public String brief() {
            return (paper == PaperKind.LABEL ? "label p. " : "sheet p. ") + quote.page();
        }
    }

    /**
     * The reference data that come with Plumbrow.
     *
     * @param of the ingredient they are of
     */
    record Reference(String of, plumbrow.science.reference.Origin origin, Backing backing) implements Origin {
        @Override
        public String words() {
            return backing.mark() + " " + of + ", " + origin.source() + " (" + backing.words() + ")";
        }

        @Override
        public String brief() {
            return backing.mark() + " kept for " + of + ", " + backing.status().words();
        }
    }

    /** The shelf of the book: what a person entered there. */
    record Shelf(String source) implements Origin {
        @Override
        public String words() {
            return "shelf" + (source.isBlank() ? "" : ": " + source);
        }
    }

    /**
     * A page without text, from which a person typed.
     *
     * @param page from 1
     */
    record Typed(String who, LocalDate day, int page) implements Origin {
        @Override
        public String words() {
            return "typed by " + who + " on " + day + " from page " + page;
        }

        @Override
        public String brief() {
            return "typed by " + who + ", p. " + page;
        }
    }

    /**
     * The words on a paper as a person held them against its page.
     *
     * @param verdict what he did: "confirmed", "typed over"
     */
    record Mended(OnPaper paper, String verdict, String who, LocalDate day) implements Origin {
        @Override
        public String words() {
            return paper.words() + ", " + verdict + " by " + who + " on " + day;
        }

        @Override
        public String brief() {
            return paper.brief() + ", " + verdict + " by " + who;
        }
    }

    /** A law, a handbook, or common practice. */
    record Source(String words) implements Origin {}
}
