package plumbrow.app.desk.shelf;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.app.papers.LabelWork;
import plumbrow.documents.confirm.LabelValue;
import plumbrow.documents.confirm.RowName;
import plumbrow.documents.paper.Mark;
import plumbrow.documents.paper.PagePicture;
import plumbrow.documents.paper.Quote;

/**
 * A label's values and one page of it.
 *
 * @param at the value that is looked at; empty where none is
 * @param page the page shown, from 1
 * @param drawn its picture's size; null where it can't be drawn
 * @param trouble why it can't; empty where it can
 */
public record ConfirmView(
        LabelWork work,
        Optional<LabelValue> at,
        int page,
        PagePicture.@Nullable Drawn drawn,
        String trouble,
        ConfirmForm form) {

    public String address() {
        return "/shelf/papers/" + work.values().label().paper().number();
    }

    public String product() {
        var paper = work.values().label().paper();
        return work.values().product().orElse(paper.product().isEmpty() ? paper.fileName() : paper.product());
    }

    public List<RowName> rows() {
        return work.values().rows();
    }

    /** The values of a row that stand on the label or in the workbook, or were decided. */
    public List<LabelValue> shown(RowName row) {
        return work.values().row(row).stream()
                .filter(each -> each.standing() != LabelValue.Standing.NOT_FOUND)
                .toList();
    }

    /** Those that the label doesn't seem to speak of. */
    public List<LabelValue> silent(RowName row) {
        return work.values().row(row).stream()
                .filter(each -> each.standing() == LabelValue.Standing.NOT_FOUND)
                .toList();
    }

    /** How many of the looked-at value's row can be confirmed at once. */
    public long together() {
        return at.map(value ->
                        (long) work.values().together(value.value().row()).size())
                .orElse(0L);
    }

    public List<Quote> quotes() {
        return at.map(value -> value.value().quotes()).orElse(List.of());
    }

    /** The boxes to be drawn on the page shown. */
    public List<Mark> marks() {
        return quotes().stream()
                .flatMap(quote -> quote.marks().stream())
                .filter(mark -> mark.page() == page)
                .toList();
    }

    public PagePicture.Drawn picture() {
        return Objects.requireNonNull(drawn);
    }

    /** The title of a row: "Rates and limits: corn". */
    public static String title(RowName row) {
        String words = row.words();
        return row.table().title() + (words.isEmpty() ? "" : ": " + words);
    }

    /** What the picture shows, for whoever can't see it. */
    public String inWords() {
        return "Page " + page + " of " + work.values().label().paper().fileName()
                + (marks().isEmpty() ? "" : "; marked: " + quotes().get(0).words());
    }
}
