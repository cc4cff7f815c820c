package plumbrow.app.command.said;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.papers.Intake;
import plumbrow.documents.ocr.Tesseract;
import plumbrow.documents.sheet.Reading;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.shelf.SheetChange;
import plumbrow.documents.shelf.SheetChanges;
import plumbrow.documents.shelf.ShelfProduct;

/** Papers in text: what came in, what is on the shelf, what a revision changed. */
public final class PaperWords {
    private PaperWords() {}

    /** What became of each file; troubles are said elsewhere. */
    public static String added(List<Intake.Outcome> outcomes) {
        long fresh = outcomes.stream()
                .filter(each -> each.stored() != null && !each.already())
                .count();
        long already = outcomes.stream().filter(Intake.Outcome::already).count();
        long failed = outcomes.stream().filter(each -> each.trouble() != null).count();
        Paper paper = new Paper()
                .heading(count(fresh, "paper") + " taken in, " + already + " there already, " + failed
                        + " could not be read.")
                .gap();
        TextTable table = TextTable.empty()
                .numbers("no.", "")
                .words("kind")
                .words("product")
                .words("reg. no.")
                .words("dated")
                .words("file");
        outcomes.stream().filter(each -> each.stored() != null).forEach(each -> {
            StoredPaper stored = Objects.requireNonNull(each.stored());
            FiledPaper filed = stored.paper();
            table.row(
                    filed.number() + (each.already() ? " =" : ""),
                    filed.kind().word(),
                    or(filed.product()),
                    or(filed.registration()),
                    filed.dated() == null ? "unknown" : filed.dated().toString(),
                    filed.fileName());
        });
        paper.table(table);
        boolean typing = outcomes.stream()
                .flatMap(each -> Optional.ofNullable(each.stored()).stream())
                .anyMatch(stored -> stored.paper().needsTyping());
        String lacking = new Tesseract().lacking();
        return (typing && !lacking.isEmpty() ? paper.gap().prose(lacking) : paper).text();
    }

    /** Every product with its papers and what is missing. */
    public static String shelf(List<ShelfProduct> shelf, LocalDate today) {
        Paper paper = new Paper();
        if (shelf.isEmpty()) {
            return paper.prose("The book holds no papers yet; bring some in with: plumbrow papers add FOLDER")
                    .text();
        }
        paper.heading(count(shelf.size(), "product") + " by papers, as of " + today)
                .gap();
        TextTable table = TextTable.empty()
                .words("product")
                .words("reg. no.")
                .words("sheet")
                .words("dated")
                .words("label")
                .words("to do");
        for (ShelfProduct product : shelf) {
            table.row(
                    product.name(),
                    or(product.registration()),
                    number(product.sheet().orElse(null)),
                    product.sheet()
                            .map(sheet -> sheet.dated() == null
                                    ? "unknown"
                                    : sheet.dated().toString())
                            .orElse("–"),
                    number(product.label().orElse(null)),
                    String.join("; ", product.remarks(today)));
        }
        return paper.table(table).text();
    }

    /** Kind by kind, what stood there and what stands there now. */
    public static String changes(String before, String after, SheetChanges changes) {
        Paper paper = new Paper().heading("What changed from " + before + " to " + after);
        if (changes.none()) {
            return paper.gap()
                    .prose("Nothing that is read from a sheet differs.")
                    .text();
        }
        changes.sectionsGone().forEach(section -> paper.prose("  − ", "section left out: " + section.title()));
        changes.sectionsNew().forEach(section -> paper.prose("  + ", "section added: " + section.title()));
        for (SheetChange change : changes.changes()) {
            paper.heading(change.kind().title());
            change.before().forEach(reading -> line(paper, "  − ", reading));
            change.after().forEach(reading -> line(paper, "  + ", reading));
        }
        return paper.text();
    }

    private static void line(Paper paper, String mark, Reading.OnPaper reading) {
        paper.prose(mark, reading.words() + " [page " + reading.quote().page() + "]");
    }

    private static String number(@Nullable FiledPaper paper) {
        return paper == null ? "–" : "no. " + paper.number();
    }

    private static String or(String text) {
        return text.isEmpty() ? "unknown" : text;
    }

    private static String count(long number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
