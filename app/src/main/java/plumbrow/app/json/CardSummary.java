package plumbrow.app.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.card.CardLine;
import plumbrow.documents.card.EverydayScale;
import plumbrow.documents.card.Known;
import plumbrow.documents.card.Origin;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.paper.Mark;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Step;

/** A product card for programs. */
public record CardSummary(
        String product,
        LocalDate asOf,
        String lead,
        String caution,
        int unknown,
        int differing,
        List<Section> sections,
        List<EverydayScale.Entry> everyday) {

    /** A part of the card. */
    public record Section(String part, String title, List<Line> lines, List<String> cautions) {}

    /**
     * One thing it says.
     *
     * @param figure the figure that worked it out; null where nothing was worked
     * @param outputs its answers; empty as above
     */
    public record Line(
            String about,
            String says,
            Known known,
            List<From> origins,
            @Nullable String figure,
            Map<String, Object> outputs,
            List<String> working) {}

    /**
     * Where it comes from.
     *
     * @param page on the paper; null where it stands on none
     * @param words the very words; null as above
     */
    public record From(
            String from, @Nullable Integer page, @Nullable String words, List<Mark> marks) {}

    public static CardSummary of(ProductCard card) {
        return new CardSummary(
                card.product(),
                card.asOf(),
                card.lead(),
                ProductCard.LABEL_IS_LAW,
                card.unknown(),
                card.differing().size(),
                card.sections().stream()
                        .map(section -> new Section(
                                section.part().id(),
                                section.part().title(),
                                section.lines().stream().map(CardSummary::line).toList(),
                                section.cautions()))
                        .toList(),
                card.everyday().entries());
    }

    private static Line line(CardLine line) {
        Answer answer = line.working();
        return new Line(
                line.about(),
                line.says(),
                line.known(),
                line.origins().stream().map(CardSummary::from).toList(),
                answer == null ? null : answer.figure().id(),
                answer == null ? Map.of() : answer.outputs(),
                answer == null
                        ? List.of()
                        : answer.working().stream().map(Step::text).toList());
    }

    private static From from(Origin origin) {
        return origin instanceof Origin.OnPaper paper
                ? new From(
                        paper.paper().word(),
                        paper.quote().page(),
                        paper.quote().words(),
                        paper.quote().marks())
                : new From(origin.words(), null, null, List.of());
    }
}
