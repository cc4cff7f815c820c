package plumbrow.app.papers;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.advice.shelf.Product;
import plumbrow.app.book.Book;
import plumbrow.app.book.StoredPaper;
import plumbrow.documents.confirm.ConfirmedSeason;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.confirm.LabelFile;
import plumbrow.documents.confirm.LabelValue;
import plumbrow.documents.confirm.LabelValues;
import plumbrow.documents.confirm.NotSoException;
import plumbrow.documents.confirm.RowName;
import plumbrow.documents.confirm.Verdict;
import plumbrow.documents.label.LabelPaper;
import plumbrow.documents.shelf.FiledPaper;
import plumbrow.documents.shelf.ShelfProduct;
import plumbrow.documents.shelf.Shelves;

/**
 * A label of the book with its values, and what a person may do with them. The desk, the command and the programs' door all
 * go through here.
 *
 * @param newer a later label of the same product, which counts instead of this one
 */
public record LabelWork(LabelValues values, Optional<FiledPaper> newer) {

    /** What a person does with a value, or with all of a row. */
    public enum Deed {
        CONFIRM("confirm", Verdict.CONFIRMED),
        CORRECT("correct", Verdict.CORRECTED),
        REJECT("reject", Verdict.REJECTED),
        WORKBOOK("workbook", Verdict.WORKBOOK),
        TAKE_BACK("take-back", Verdict.TAKEN_BACK),
        ROW("row", Verdict.CONFIRMED);

        private final String word;
        private final Verdict verdict;

        Deed(String word, Verdict verdict) {
            this.word = word;
            this.verdict = verdict;
        }

        public String word() {
            return word;
        }

        public static Optional<Deed> of(String word) {
            return Arrays.stream(values())
                    .filter(deed -> deed.word.equals(word))
                    .findFirst();
        }

        public static String words() {
            return Arrays.stream(values()).map(Deed::word).collect(Collectors.joining(", "));
        }
    }

    /**
     * The label of that number among the papers, as it was read.
     *
     * @param byOcr numbers of the pages that were made out by OCR
     */
    public static LabelWork of(StoredPaper stored, LabelPaper read, List<Integer> byOcr, Book.Labels held) {
        List<StoredPaper> papers = held.papers();
        Optional<Season> written = held.written();
        List<FiledPaper> filed = papers.stream().map(StoredPaper::paper).toList();
        Optional<ShelfProduct> product = Shelves.holding(filed, stored.number());
        List<FiledPaper> labels = product.map(ShelfProduct::labels).orElse(List.of());
        int at = labels.indexOf(stored.paper());
        List<Integer> older =
                labels.stream().skip(at + 1L).map(FiledPaper::number).toList();
        Optional<String> name = written.flatMap(
                        season -> product.flatMap(papersOf -> ConfirmedSeason.onShelf(season.shelf(), papersOf)))
                .map(Product::name);
        List<LabelFile> files = papers.stream()
                .map(paper -> new LabelFile(paper.paper(), paper.sha256()))
                .toList();
        LabelValues values = LabelValues.of(
                new LabelFile(stored.paper(), stored.sha256()),
                read,
                byOcr,
                written.map(Season::shelf).orElse(null),
                written.map(season -> ConfirmedSeason.over(season, files, held.decisions(), List.of()))
                        .map(Season::shelf)
                        .orElse(null),
                name,
                papers.stream()
                        .filter(paper -> older.contains(paper.number()))
                        .map(StoredPaper::sha256)
                        .toList(),
                held.decisions());
        return new LabelWork(values, at > 0 ? Optional.of(labels.get(0)) : Optional.empty());
    }

    /** The row of that name. */
    public Optional<RowName> row(String id) {
        return values.rows().stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /**
     * What a person decides.
     *
     * @param id of a value; where he confirms all of a row, of the row or of one of its values
     * @param saw what the page showed him; null where he doesn't say
     * @throws NotSoException if it can't be so; nothing is decided then
     */
    public List<LabelDecision> decide(
            String id, Deed deed, @Nullable String typed, String who, @Nullable String saw, Instant when) {
        newer.ifPresent(later -> {
            throw new NotSoException("A newer label of this product is in the book (number " + later.number()
                    + "); only its values count, so decide there.");
        });
        Optional<LabelValue> value = values.value(id);
        if (deed == Deed.ROW) {
            RowName row = row(id).or(() -> value.map(each -> each.value().row()))
                    .orElseThrow(() -> new NotSoException("This label has no row '" + id + "'."));
            return values.confirmRow(row, who, when);
        }
        LabelValue one =
                value.orElseThrow(() -> new NotSoException("This label has no value '" + id + "'; list them first."));
        if (saw != null && !saw.equals(seen(one))) {
            throw new NotSoException(
                    one.value().title() + " has changed since the page was shown: look at it again before you decide.");
        }
        return values.decide(one, deed.verdict, typed, who, when);
    }

    /** What a person sees of a value when he decides; it must still be so when his word arrives. */
    public static String seen(LabelValue value) {
        return value.value().proposed() + "|" + value.workbook() + "|"
                + value.decision().map(LabelDecision::when).map(String::valueOf).orElse("");
    }

    /** The values in the workbook's place and on their way, in one sentence. */
    public String sentence() {
        int waiting = values.count(LabelValue::waits);
        int entered = values.count(
                each -> each.decision().filter(last -> last.verdict().enters()).isPresent());
        if (newer.isPresent()) {
            return "A newer label counts; nothing of this one enters the shelf.";
        }
        if (values.values().isEmpty()) {
            return "This label proposes nothing for the shelf.";
        }
        String open = waiting == 0
                ? "No value waits for a look at its page"
                : waiting == 1
                        ? "1 value waits for a look at its page"
                        : waiting + " values wait for a look at their page";
        return open + "; " + entered + " confirmed.";
    }
}
