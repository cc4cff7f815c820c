package plumbrow.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import plumbrow.app.book.Book;

/** Opens the desk in the browser, for this machine only. */
@Command(name = "serve", description = "Opens the desk in the browser, for this machine only; Ctrl-C closes it.")
final class ServeCommand implements Callable<Integer> {
    private final Screen screen;
    private final DeskDoor door;

    @Option(
            names = "--book",
            paramLabel = "FILE",
            defaultValue = FromBook.DEFAULT,
            description = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.")
    private Path book = Path.of("");

    @Option(names = "--port", paramLabel = "N", description = "Where to listen; else 8040. 0 takes a free one.")
    private int port = Serving.PORT;

    @Option(names = "--json", description = "Say the address as JSON.")
    private boolean json;

    ServeCommand(Screen screen, DeskDoor door) {
        this.screen = screen;
        this.door = door;
    }

    @Override
    public Integer call() {
        if (Warming.asked()) {
            Warming.up(book);
        }
        Book.open(book).close();
        return Serving.untilStopped(screen, door, book, port, json);
    }
}
