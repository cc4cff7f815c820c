package plumbrow.app.desk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.course.Done;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;
import plumbrow.app.book.LogLine;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.book.TypedValue;
import plumbrow.documents.confirm.LabelDecision;
import plumbrow.documents.shelf.FiledPaper;

/** The book as the desk sees it: its latest season, and the log of decisions. Safe for several threads. */
public final class DeskBook implements AutoCloseable {
    private final Book book;
    private final AtomicReference<@Nullable Season> seen = new AtomicReference<>();

    public DeskBook(Book book) {
        this.book = book;
    }

    /**
     * The latest season, read anew each time because another program may import one meanwhile. For as long as nothing
     * has changed it is the same instance. Empty in an empty book.
     */
    public Optional<Season> season() {
        Optional<Season> read = book.latestSeason();
        Season known = seen.get();
        if (known != null && read.isPresent() && known.equals(read.get())) {
            return Optional.of(known);
        }
        seen.set(read.orElse(null));
        return read;
    }

    /** Puts a changed season in the place of the latest one, whole or not at all; one change at a time. */
    public void change(UnaryOperator<Season> change) {
        book.change(change);
    }

    /** The same for a change that looks at more than the season as it was put in. */
    public void changeHeld(Function<Book.Held, Season> change) {
        book.changeHeld(change);
    }

    /** The decisions recorded for a year, oldest first. */
    public List<Choice> choices(int year) {
        return book.choices(year);
    }

    /** Records a decision that rests on a weighing of the season as it is; nothing recorded is ever altered. */
    public void choose(Choice choice, Season weighed) {
        book.choose(choice, weighed);
    }

    /** Every line of the log, those that were struck among them, in the order of writing. */
    public List<LogLine> log() {
        return book.log();
    }

    /** Writes down what was put on; nothing written is ever altered. */
    public LogLine log(Done done, Instant at) {
        return book.log(done, at);
    }

    /** Strikes a line of the log; it stays. */
    public void strike(int number, LogLine.Strike strike) {
        book.strike(number, strike);
    }

    /** Every paper, in the order in which they came. */
    public List<StoredPaper> papers() {
        return book.papers();
    }

    /** The file of a paper. */
    public Optional<byte[]> paperFile(int number) {
        return book.paperFile(number);
    }

    /** Keeps a paper whole; the same file is not kept twice. */
    public Book.Kept keep(FiledPaper paper, byte[] content, Instant at) {
        return book.keep(paper, content, at);
    }

    /** What was typed from a paper. */
    public List<TypedValue> typed(int paper) {
        return book.typed(paper);
    }

    /** Writes down what somebody typed; nothing written is ever altered. */
    public void type(List<TypedValue> values) {
        book.type(values);
    }

    /** The latest season as it was put in, without what was confirmed on labels. */
    public Optional<Season> written() {
        return book.latestWritten();
    }

    /** All that was decided about labels, in order. */
    public List<LabelDecision> decisions() {
        return book.decisions();
    }

    /** Writes down what somebody decided about a label; nothing written is ever altered. */
    public void decide(Function<Book.Labels, List<LabelDecision>> deciding) {
        book.decide(deciding);
    }

    @Override
    public void close() {
        book.close();
    }
}
