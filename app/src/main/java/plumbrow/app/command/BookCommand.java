package plumbrow.app.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.book.Book;
import plumbrow.app.json.Json;

/** Makes, checks and copies a book; brings seasons in and out of it. */
@Command(name = "book", description = "Makes a book, brings seasons in and out, checks it, copies it.")
final class BookCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";

    private final Screen screen;

    BookCommand(Screen screen) {
        this.screen = screen;
    }

    private record NewBook(String book) {}

    private record Checked(String book, List<Integer> seasons, List<String> problems) {}

    private record Copied(String book, String backup) {}

    @Override
    public void run() {
        throw new BadInputException("Say what to do with the book: new, import, export, check or backup.");
    }

    @Command(name = "new", description = "Makes an empty book; a file of that name must not exist.")
    int make(
            @Parameters(arity = "0..1", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        Book.create(file).close();
        screen.say(
                json
                        ? Json.of(new NewBook(file.toString()))
                        : "The book " + file + " is made. Bring a season in with: plumbrow book import WORKBOOK --book "
                                + file);
        return Exit.GOOD;
    }

    @Command(name = "check", description = "Looks at every row of the book; exit 1 where something is wrong.")
    int check(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            List<String> problems = book.check();
            List<Integer> seasons = book.seasons();
            if (json) {
                screen.say(Json.of(new Checked(file.toString(), seasons, problems)));
            } else if (problems.isEmpty()) {
                screen.say("The book " + file + " is whole. Seasons: " + Said.list(seasons) + ".");
            } else {
                screen.say("The book " + file + " has " + Said.count(problems.size(), "fault")
                        + "; take the latest backup.");
                problems.forEach(screen::say);
            }
            return problems.isEmpty() ? Exit.GOOD : Exit.NOT_ADVISED;
        }
    }

    @Command(name = "backup", description = "Copies the whole book into a new file, while others go on using it.")
    int backup(
            @Parameters(paramLabel = "FILE", description = "The copy; a file of that name must not exist.") Path copy,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            book.backup(copy);
        }
        screen.say(json ? Json.of(new Copied(file.toString(), copy.toString())) : file + " is copied to " + copy + ".");
        return Exit.GOOD;
    }
}
