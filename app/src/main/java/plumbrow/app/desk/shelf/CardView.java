package plumbrow.app.desk.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plumbrow.advice.quantity.Amount;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.card.ContainerText;
import plumbrow.documents.card.Origin;
import plumbrow.documents.card.ProductCard;
import plumbrow.documents.shelf.FiledPaper;

/**
 * A card with links to where each value stands.
 *
 * @param typed the container as typed
 * @param fault what is wrong with it; empty where nothing is
 */
public record CardView(
        int number,
        ProductCard card,
        ReadPaper sheet,
        Optional<ReadPaper> label,
        Optional<FiledPaper> labelPaper,
        String typed,
        String fault) {

    static CardView of(ShelfPapers papers, int number, Optional<Amount> size, String typed, LocalDate today) {
        Optional<FiledPaper> label = papers.labelOf(number);
        return new CardView(
                number,
                papers.card(number, size.orElse(null), today),
                papers.read(number),
                label.map(filed -> papers.read(filed.number())),
                label,
                typed,
                typed.isBlank() || size.isPresent()
                        ? ""
                        : "The container is “" + typed + "”; expected " + ContainerText.EXPECTED + ".");
    }

    /** Where an origin can be seen; empty where it stands on no page. */
    public String link(Origin origin) {
        if (origin instanceof Origin.Typed byHand) {
            return "/shelf/papers/" + number + "?page=" + byHand.page() + "#picture";
        }
        if (origin instanceof Origin.Mended mended) {
            return link(mended.paper());
        }
        if (!(origin instanceof Origin.OnPaper paper)) {
            return "";
        }
        boolean own = paper.paper() == Origin.PaperKind.SAFETY_SHEET;
        Optional<ReadPaper> read = own ? Optional.of(sheet) : label;
        int of = own ? number : labelPaper.map(FiledPaper::number).orElse(number);
        return read.flatMap(found -> Place.of(found, paper.quote()))
                .map(place -> "/shelf/papers/" + of + "?at=" + place.at() + "#picture")
                .orElse("/shelf/papers/" + of);
    }

    /** Origins, each once. */
    public static List<Origin> once(List<Origin> origins) {
        return origins.stream().distinct().toList();
    }
}
