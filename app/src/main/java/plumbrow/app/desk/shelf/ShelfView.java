package plumbrow.app.desk.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.ProductKind;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.desk.shown.Shown;
import plumbrow.app.papers.Intake;
import plumbrow.documents.confirm.ConfirmedSeason;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.shelf.ShelfProduct;
import plumbrow.documents.shelf.Shelves;

/**
 * The shelf: products by their papers with what the season knows of them, and products of the season that have no papers.
 *
 * @param outcomes what became of the file that was just sent
 * @param incoming files being read, or those that were read last
 */
public record ShelfView(
        List<Line> lines,
        List<Product> withoutPapers,
        List<Intake.Outcome> outcomes,
        Optional<Incoming.State> incoming,
        LocalDate today) {

    /**
     * A product.
     *
     * @param product as the season has it; empty where it doesn't
     * @param confirmed how many values of the label that counts were decided
     * @param stale how many values of earlier labels were decided and now no longer count
     */
    public record Line(ShelfProduct papers, Optional<Product> product, int confirmed, int stale) {
        /** "$19.00/gal, 12 gal on hand". */
        public String stock() {
            return product.map(one -> Shown.cents(one.priceUsd()) + "/"
                            + one.pricedPer().symbol() + ", "
                            + (one.onHand() == null
                                    ? "quantity on hand unknown"
                                    : one.onHand().text() + " on hand"))
                    .orElse("not on the season’s shelf: price and quantity unknown");
        }
    }

    static ShelfView of(
            List<StoredPaper> stored,
            @Nullable Season season,
            List<LabelDecision> decisions,
            List<Intake.Outcome> outcomes,
            Optional<Incoming.State> incoming,
            LocalDate today) {
        List<Line> lines = new ArrayList<>();
        Set<String> filed = new HashSet<>();
        for (ShelfProduct papers :
                Shelves.of(stored.stream().map(StoredPaper::paper).toList())) {
            Optional<Product> product =
                    season == null ? Optional.empty() : ConfirmedSeason.onShelf(season.shelf(), papers);
            product.ifPresent(one -> filed.add(one.name()));
            int counts = papers.label()
                    .map(label -> decided(stored, decisions, label))
                    .orElse(0);
            int before = papers.labels().stream()
                    .skip(1)
                    .mapToInt(label -> decided(stored, decisions, label))
                    .sum();
            lines.add(new Line(papers, product, counts, counts == 0 ? before : 0));
        }
        List<Product> without = season == null
                ? List.of()
                : season.shelf().products().stream()
                        .filter(product -> product.kind() != ProductKind.SEED && !filed.contains(product.name()))
                        .toList();
        return new ShelfView(lines, without, outcomes, incoming, today);
    }

    private static int decided(List<StoredPaper> stored, List<LabelDecision> decisions, FiledPaper label) {
        String sha256 = stored.stream()
                .filter(paper -> paper.number() == label.number())
                .map(StoredPaper::sha256)
                .findFirst()
                .orElse("");
        return ConfirmedSeason.decided(decisions, sha256);
    }
}
