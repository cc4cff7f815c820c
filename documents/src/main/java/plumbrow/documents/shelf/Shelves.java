package plumbrow.documents.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Puts papers together by product: those with the same registration number, then those without one whose name is the same as
 * that of exactly one product. Papers with different numbers are never put together, however alike their names.
 */
public final class Shelves {
    private Shelves() {}

    /** Every product, by name. */
    public static List<ShelfProduct> of(List<FiledPaper> papers) {
        Map<String, List<FiledPaper>> heaps = new LinkedHashMap<>();
        for (FiledPaper paper : papers) {
            if (!paper.registration().isEmpty()) {
                heaps.computeIfAbsent("#" + paper.registration(), key -> new ArrayList<>())
                        .add(paper);
            }
        }
        for (FiledPaper paper : papers) {
            if (paper.registration().isEmpty()) {
                heaps.computeIfAbsent(heap(paper, heaps), key -> new ArrayList<>())
                        .add(paper);
            }
        }
        return heaps.values().stream()
                .map(Shelves::product)
                .sorted(Comparator.comparing(
                        (ShelfProduct product) -> product.name().toLowerCase(Locale.ROOT)))
                .toList();
    }

    /** The product that a paper belongs to, where it is on the shelf. */
    public static Optional<ShelfProduct> holding(List<FiledPaper> papers, int number) {
        return of(papers).stream()
                .filter(product -> all(product).stream().anyMatch(paper -> paper.number() == number))
                .findFirst();
    }

    private static String heap(FiledPaper paper, Map<String, List<FiledPaper>> heaps) {
        String name = plain(paper.product());
        if (name.isEmpty()) {
            return "file " + paper.number();
        }
        List<String> alike = heaps.entrySet().stream()
                .filter(heap -> heap.getKey().startsWith("#")
                        && heap.getValue().stream()
                                .anyMatch(other -> plain(other.product()).equals(name)))
                .map(Map.Entry::getKey)
                .toList();
        return alike.size() == 1 ? alike.get(0) : "name " + name;
    }

    private static ShelfProduct product(List<FiledPaper> heap) {
        List<FiledPaper> sheets = newestFirst(heap, FiledPaper.Kind.SAFETY_SHEET);
        List<FiledPaper> labels = newestFirst(heap, FiledPaper.Kind.LABEL);
        List<FiledPaper> others = newestFirst(heap, FiledPaper.Kind.UNKNOWN);
        List<FiledPaper> inOrder = new ArrayList<>(sheets);
        inOrder.addAll(labels);
        inOrder.addAll(others);
        String name = inOrder.stream()
                .map(FiledPaper::product)
                .filter(read -> !read.isEmpty())
                .findFirst()
                .orElse(inOrder.get(0).fileName());
        String registration = inOrder.stream()
                .map(FiledPaper::registration)
                .filter(read -> !read.isEmpty())
                .findFirst()
                .orElse("");
        return new ShelfProduct(name, registration, sheets, labels, others);
    }

    private static List<FiledPaper> newestFirst(List<FiledPaper> heap, FiledPaper.Kind kind) {
        return heap.stream()
                .filter(paper -> paper.kind() == kind)
                .sorted(Comparator.comparing(
                                FiledPaper::dated, Comparator.<LocalDate>nullsFirst(Comparator.naturalOrder()))
                        .thenComparing(FiledPaper::number)
                        .reversed())
                .toList();
    }

    private static List<FiledPaper> all(ShelfProduct product) {
        List<FiledPaper> all = new ArrayList<>(product.sheets());
        all.addAll(product.labels());
        all.addAll(product.others());
        return all;
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\d]+", "");
    }
}
