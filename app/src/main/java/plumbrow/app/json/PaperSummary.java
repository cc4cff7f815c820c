package plumbrow.app.json;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.StoredPaper;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.shelf.SheetChanges;
import plumbrow.documents.shelf.ShelfProduct;

/** Papers for programs. */
public final class PaperSummary {
    private PaperSummary() {}

    /**
     * A paper of the book.
     *
     * @param id by which it is asked for
     */
    public record OfPaper(
            int id,
            FiledPaper.Kind kind,
            String fileName,
            @Nullable String product,
            @Nullable String registration,
            @Nullable LocalDate dated,
            int pages,
            boolean needsTyping,
            String sha256,
            String addedAt,
            long bytes) {
        public static OfPaper of(StoredPaper stored) {
            FiledPaper paper = stored.paper();
            return new OfPaper(
                    paper.number(),
                    paper.kind(),
                    paper.fileName(),
                    paper.product().isEmpty() ? null : paper.product(),
                    paper.registration().isEmpty() ? null : paper.registration(),
                    paper.dated(),
                    paper.pages(),
                    paper.needsTyping(),
                    stored.sha256(),
                    stored.addedAt().toString(),
                    stored.bytes());
        }
    }

    /** A product by its papers. */
    public record OfProduct(
            String name,
            @Nullable String registration,
            List<Integer> sheets,
            List<Integer> labels,
            List<Integer> others,
            List<String> remarks) {
        public static OfProduct of(ShelfProduct product, LocalDate today) {
            return new OfProduct(
                    product.name(),
                    product.registration().isEmpty() ? null : product.registration(),
                    numbers(product.sheets()),
                    numbers(product.labels()),
                    numbers(product.others()),
                    product.remarks(today));
        }

        private static List<Integer> numbers(List<FiledPaper> papers) {
            return papers.stream().map(FiledPaper::number).toList();
        }
    }

    /** What a revision changed. */
    public record OfChanges(List<Change> changes, List<String> sectionsGone, List<String> sectionsNew) {
        public static OfChanges of(SheetChanges changes) {
            return new OfChanges(
                    changes.changes().stream()
                            .map(change -> new Change(
                                    change.kind().title(),
                                    change.before().stream().map(Reading::words).toList(),
                                    change.after().stream().map(Reading::words).toList()))
                            .toList(),
                    changes.sectionsGone().stream()
                            .map(section -> section.title())
                            .toList(),
                    changes.sectionsNew().stream()
                            .map(section -> section.title())
                            .toList());
        }
    }

    /** One kind of value, before and after. */
    public record Change(String kind, List<String> before, List<String> after) {}
}
