package plumbrow.documents.confirm;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.LabelDifference;
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
     * @param read what stands clearly on labels, as far as they were read
     */
    public static Season over(
            Season written, List<LabelFile> papers, List<LabelDecision> decisions, List<ReadOnLabel> read) {
        Map<String, Map<String, LabelDecision>> byLabel = last(decisions);
        Shelf shelf = written.shelf();
        List<LabelDifference> differences = new ArrayList<>();
        for (ShelfProduct filed :
                Shelves.of(papers.stream().map(LabelFile::paper).toList())) {
            Optional<LabelFile> label = filed.label().flatMap(paper -> file(papers, paper));
            Optional<Product> product = onShelf(written.shelf(), filed);
            if (label.isPresent() && product.isPresent()) {
                String sha256 = label.get().sha256();
                Map<String, LabelDecision> about = byLabel.getOrDefault(sha256, Map.of());
                String name = product.get().name();
                if (!about.isEmpty()) {
                    shelf = ConfirmedShelf.over(
                            shelf, name, about.values(), label.get().words());
                }
                differences.addAll(Differences.of(
                        written.shelf(),
                        shelf,
                        name,
                        label.get(),
                        about,
                        read.stream().filter(one -> one.sha256().equals(sha256)).toList()));
            }
        }
        if (!differences.isEmpty()) {
            shelf = Differences.with(shelf, differences);
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

    /**
     * The last word on each value, by label and by value. A word about a row that names several crops is one about each of
     * them.
     */
    static Map<String, Map<String, LabelDecision>> last(List<LabelDecision> decisions) {
        Map<String, Map<String, LabelDecision>> last = new LinkedHashMap<>();
        for (LabelDecision decision : decisions) {
            for (RowName row : decision.row().byCrop()) {
                LabelDecision own = decision.about(row);
                last.computeIfAbsent(decision.sha256(), label -> new LinkedHashMap<>())
                        .put(own.id(), own);
            }
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
