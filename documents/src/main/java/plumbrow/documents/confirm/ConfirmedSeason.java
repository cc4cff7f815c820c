package plumbrow.documents.confirm;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.advice.shelf.Shelf;
import plumbrow.documents.card.RegistrationNumber;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.shelf.ShelfProduct;
import plumbrow.documents.shelf.Shelves;

/**
 * A season with what was confirmed on labels. Of each product only the label that counts speaks, which is the newest: what
 * was confirmed on an earlier one is stale and enters nothing.
 */
public final class ConfirmedSeason {
    private ConfirmedSeason() {}

    /**
     * The season with the confirmed values.
     *
     * @param written the season as the workbook has it
     * @param papers every paper of the book
     * @param decisions in the order in which they were made
     */
    public static Season over(Season written, List<LabelFile> papers, List<LabelDecision> decisions) {
        Map<String, Map<String, LabelDecision>> byLabel = last(decisions);
        Shelf shelf = written.shelf();
        for (ShelfProduct filed :
                Shelves.of(papers.stream().map(LabelFile::paper).toList())) {
            Optional<LabelFile> label = filed.label().flatMap(paper -> file(papers, paper));
            Optional<Product> product = onShelf(written.shelf(), filed);
            if (label.isPresent()
                    && product.isPresent()
                    && byLabel.containsKey(label.get().sha256())) {
                Collection<LabelDecision> about =
                        byLabel.get(label.get().sha256()).values();
                shelf = ConfirmedShelf.over(
                        shelf, product.get().name(), about, label.get().words());
            }
        }
        return shelf.equals(written.shelf()) ? written : written.withShelf(shelf);
    }

    /** The product of the season's shelf to which papers belong: by registration number, else by the very name. */
    public static Optional<Product> onShelf(Shelf shelf, ShelfProduct papers) {
        return shelf.products().stream()
                .filter(product -> product.registration() != null
                        && !papers.registration().isEmpty()
                        && RegistrationNumber.same(product.registration(), papers.registration()))
                .findFirst()
                .or(() -> shelf.product(papers.name()));
    }

    /** The last word on each value, by label and by value. */
    static Map<String, Map<String, LabelDecision>> last(List<LabelDecision> decisions) {
        Map<String, Map<String, LabelDecision>> last = new LinkedHashMap<>();
        for (LabelDecision decision : decisions) {
            last.computeIfAbsent(decision.sha256(), label -> new LinkedHashMap<>())
                    .put(decision.id(), decision);
        }
        return last;
    }

    /** How many values of a label are decided, not counting words taken back. */
    public static int decided(List<LabelDecision> decisions, String sha256) {
        return (int) last(decisions).getOrDefault(sha256, Map.of()).values().stream()
                .filter(decision -> decision.verdict() != Verdict.TAKEN_BACK && !LabelValues.wholeLabel(decision))
                .count();
    }

    private static Optional<LabelFile> file(List<LabelFile> papers, FiledPaper paper) {
        return papers.stream()
                .filter(each -> each.paper().number() == paper.number())
                .findFirst();
    }
}
