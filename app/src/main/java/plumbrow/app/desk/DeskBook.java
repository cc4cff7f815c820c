package plumbrow.app.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;

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

    /** The decisions recorded for a year, oldest first. */
    public List<Choice> choices(int year) {
        return book.choices(year);
    }

    /** Records a decision; nothing recorded is ever altered. */
    public void choose(Choice choice) {
        book.choose(choice);
    }

    @Override
    public void close() {
        book.close();
    }
}
