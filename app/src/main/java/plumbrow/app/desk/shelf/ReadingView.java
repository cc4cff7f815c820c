package plumbrow.app.desk.shelf;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.book.TypedSheet;
import plumbrow.app.book.TypedValue;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.Quote;

/**
 * A paper with all that was read on it, and one page of it with the words of one value marked.
 *
 * @param at the value that is looked at; empty where none is
 * @param page the page that is shown, from 1
 * @param drawn its picture's size; null where the file has no pages to draw or the page can't be drawn
 * @param trouble why it can't be drawn; empty where it can
 */
public record ReadingView(
        StoredPaper stored,
        List<PlaceLine> places,
        Optional<PlaceLine> at,
        int page,
        PagePicture.@Nullable Drawn drawn,
        String trouble,
        List<String> notices,
        List<TypedValue> typed,
        List<String> toType,
        TypingForm form) {

    /** A value as a page shows it. */
    public record PlaceLine(
            int at,
            String title,
            String says,
            boolean sure,
            @Nullable Quote quote) {
        static PlaceLine of(Place place) {
            return new PlaceLine(place.at(), place.title(), place.says(), place.sure(), place.quote());
        }

        public String words() {
            return quote == null ? "" : quote.words();
        }

        /** The page that it begins on; 0 where it stands nowhere. */
        public int page() {
            return quote == null ? 0 : quote.page();
        }
    }

    /** The boxes to be drawn on the page shown. */
    public List<Mark> marks() {
        return at.map(PlaceLine::quote).map(Quote::marks).orElse(List.of()).stream()
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
                        .map(place -> "; marked: " + place.words())
                        .orElse("");
    }
}
