package plumbrow.app.desk;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.book.TypedValue;
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

    /** Puts a season in the place of what the book has for its year. Choices stay. */
    public void put(Season season) {
        book.put(season);
    }

    /** The decisions recorded for a year, oldest first. */
    public List<Choice> choices(int year) {
        return book.choices(year);
    }

    /** Records a decision; nothing recorded is ever altered. */
    public void choose(Choice choice) {
        book.choose(choice);
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

    @Override
    public void close() {
        book.close();
    }
}
