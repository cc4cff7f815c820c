package plumbrow.app.desk.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ConfigurableApplicationContext;
import plumbrow.app.book.Book;
import plumbrow.app.demo.DemoBook;

/** A second desk over a book of invented farms, opened when somebody asks for it and gone with the first. */
public final class DemoDesk implements AutoCloseable {
    private final Function<Path, ConfigurableApplicationContext> opener;
    private @Nullable ConfigurableApplicationContext desk;
    private @Nullable Path folder;

    /** @param opener opens a desk over a book at a free port */
    public DemoDesk(Function<Path, ConfigurableApplicationContext> opener) {
        this.opener = opener;
    }

    /** Where it is; opened at the first question. */
    public synchronized String address() {
        ConfigurableApplicationContext open = desk;
        if (open == null || !open.isActive()) {
            open = open();
            desk = open;
        }
        return "http://127.0.0.1:" + open.getEnvironment().getProperty("local.server.port", "");
    }

    private ConfigurableApplicationContext open() {
        try {
            Path own = Files.createTempDirectory("plumbrow-demo-desk");
            folder = own;
            Path file = own.resolve("demo.book");
            try (Book book = Book.create(file)) {
                book.put(DemoBook.season());
            }
            return opener.apply(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    @Override
    public synchronized void close() {
        if (desk != null) {
            desk.close();
            desk = null;
        }
        Path own = folder;
        if (own != null) {
            folder = null;
            try (Stream<Path> files = Files.walk(own)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(file);
                }
            } catch (IOException left) {
                // a folder of the system's temporary files, which the system clears
            }
        }
    }
}
