package plumbrow.app.desk.shelf;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.book.TypedSheet;
import plumbrow.app.book.TypedValue;
import plumbrow.app.papers.PaperMends;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.mend.Mend;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.shelf.FiledPaper;

/**
 * A paper with all that was read on it, and one page of it with the words of one value marked.
 *
 * @param silent what a sheet states once and this one doesn't
 * @param at the value that is looked at; empty where none is
 * @param page the page that is shown, from 1
 * @param drawn its picture's size; null where the file has no pages to draw or the page can't be drawn
 * @param trouble why it can't be drawn; empty where it can
 * @param products of the season's shelf, by name
 */
public record ReadingView(
        StoredPaper stored,
        PaperMends mends,
        List<Silent> silent,
        Optional<PaperMends.Line> at,
        int page,
        PagePicture.@Nullable Drawn drawn,
        String trouble,
        List<String> notices,
        List<TypedValue> typed,
        List<String> toType,
        TypingForm form,
        MendForm mendForm,
        List<String> products) {

    /** A value that a sheet has its place for and this one doesn't state. */
    public record Silent(String title, String says) {}

    /** Whether nothing could be made out, so that somebody has to type what the page says. */
    public boolean toBeTyped() {
        return mends.read() instanceof ReadPaper.Scan;
    }

    /** Whether a card can be made of it. */
    public boolean cards() {
        return mends.read() instanceof ReadPaper.Sheet || stored.paper().kind() == FiledPaper.Kind.SAFETY_SHEET;
    }

    /** Whether it has values for the shelf. */
    public boolean proposes() {
        return mends.read() instanceof ReadPaper.Label;
    }

    /** Everything that was read or put right, in order. */
    public List<PaperMends.Line> places() {
        return mends.lines();
    }

    /** The page on which a value begins; 0 where it stands nowhere. */
    public static int page(PaperMends.Line line) {
        Quote quote = line.quote();
        return quote == null ? 0 : quote.page();
    }

    /** The paper's very words; empty where it stands nowhere. */
    public static String words(PaperMends.Line line) {
        Quote quote = line.quote();
        return quote == null ? "" : quote.words();
    }

    /** What counts of a value now, in words. */
    public static String counts(PaperMends.Line line) {
        return line.mend()
                .map(mend -> switch (mend.verdict()) {
                    case TYPED_OVER, ADDED -> mend.value();
                    case STRUCK -> "the page doesn’t say it";
                    default -> line.says();
                })
                .orElse(line.says());
    }

    /** Whether a value counts as it stands. */
    public static boolean sure(PaperMends.Line line) {
        return line.mend().map(mend -> mend.verdict() != Mend.Verdict.STRUCK).orElse(line.sure() && !line.byOcr());
    }

    /** The boxes to be drawn on the page shown. */
    public List<Mark> marks() {
        return at.map(PaperMends.Line::quote).map(Quote::marks).orElse(List.of()).stream()
                .filter(mark -> mark.page() == page)
                .toList();
    }

    public PagePicture.Drawn picture() {
        return Objects.requireNonNull(drawn);
    }

    /** What the reader made of something typed; empty where it could make nothing of it. */
    public List<String> understood(TypedValue value) {
        return value.about().equals(TypedSheet.KIND)
                ? List.of(value.value())
                : TypedSheet.of(typed).understood(value.about());
    }

    /** Whether a later word on the same thing counts instead. */
    public boolean superseded(TypedValue value) {
        return typed.stream()
                .filter(other -> other.about().equals(value.about()))
                .reduce((first, second) -> second)
                .filter(last -> last.equals(value))
                .isEmpty();
    }

    /** What the picture shows, for whoever cannot see it. */
    public String inWords() {
        return "Page " + page + " of " + stored.paper().fileName()
                + at.filter(place -> !marks().isEmpty())
                        .map(place -> "; marked: " + words(place))
                        .orElse("");
    }
}
