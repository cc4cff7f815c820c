package plumbrow.app.command.said;

import java.util.List;
import plumbrow.documents.card.CardLine;
import plumbrow.documents.card.CardSection;
import plumbrow.documents.card.Known;
import plumbrow.documents.card.Origin;
import plumbrow.documents.card.ProductCard;

/** A product card in text. */
public final class CardWords {
    private CardWords() {}

    /** Every part, each value with where it stands; what differs and what is unknown is marked. */
    public static String of(ProductCard card) {
        Paper paper = new Paper()
                .heading(card.product() + ", as of " + card.asOf())
                .gap()
                .prose(card.lead())
                .prose(ProductCard.LABEL_IS_LAW)
                .prose("? unknown   ≠ differs   ● ◐ ○ reference data: verified, with reserve, not verified");
        for (CardSection section : card.sections()) {
            paper.heading(section.part().title());
            section.lines().forEach(line -> line(paper, line));
            section.cautions().forEach(caution -> paper.prose("  ! ", caution));
        }
        return paper.text();
    }

    private static void line(Paper paper, CardLine line) {
        String mark = line.known() == Known.UNKNOWN ? "? " : line.known() == Known.DIFFERS ? "≠ " : "  ";
        List<String> from =
                line.origins().stream().map(Origin::brief).distinct().toList();
        paper.prose(
                "  " + mark,
                line.about() + ": " + line.says() + (from.isEmpty() ? "" : " [" + String.join("; ", from) + "]"));
    }
}
