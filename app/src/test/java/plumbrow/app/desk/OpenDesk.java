package plumbrow.app.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.springframework.context.ConfigurableApplicationContext;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.serving.Desk;

/** A desk over a book of its own, on a free port. */
final class OpenDesk implements AutoCloseable {
    private static final String FILE = "season.book";

    private final ConfigurableApplicationContext context;
    private final Path folder;

    private OpenDesk(ConfigurableApplicationContext context, Path folder) {
        this.context = context;
        this.folder = folder;
    }

    /** Opens as the command does: by the file of the book. */
    static OpenDesk over(Season... seasons) {
        Path folder = folder();
        Path file = book(folder, seasons);
        return new OpenDesk(Desk.open(file, 0), folder);
    }

    /** Opens with another weigher, such as one that takes its time. */
    static OpenDesk weighedBy(Weigher weigher, Season... seasons) {
        Path folder = folder();
        Path file = book(folder, seasons);
        return new OpenDesk(Desk.open(new DeskBook(Book.open(file)), weigher, 0), folder);
    }

    ConfigurableApplicationContext context() {
        return context;
    }

    Path file() {
        return folder.resolve(FILE);
    }

    DeskBook book() {
        return context.getBean(DeskBook.class);
    }

    /** Puts a season into the book as another process would, while the desk is open. */
    void put(Season season) {
        try (Book other = Book.open(folder.resolve(FILE))) {
            other.put(season);
        }
    }

    /** Waits until the season is weighed, so that its page has an answer. */
    OpenDesk weighed() {
        context.getBean(Weighings.class).whole(book().season().orElseThrow()).answers();
        return this;
    }

    String address() {
        return "http://127.0.0.1:"
                + Objects.requireNonNull(context.getEnvironment().getProperty("local.server.port"));
    }

    @Override
    public void close() {
        context.close();
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
            Files.delete(folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static Path book(Path folder, Season... seasons) {
        Path file = folder.resolve(FILE);
        try (Book book = Book.create(file)) {
            for (Season season : seasons) {
                book.put(season);
            }
        }
        return file;
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("desk");
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
