package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.book.Book;
import plumbrow.app.book.RecordHead;
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

    private record Checked(
            String book, List<Integer> seasons, String head, List<String> problems, List<String> unknownNames) {}

    private record Copied(String book, String backup, String head) {}

    @Override
    public void run() {
        throw new BadInputException(
                "Say what to do with the book: new, import, export, begin-season, check or backup.");
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

    @Command(
            name = "check",
            description =
                    "Looks at every row of the book and at the chain of its record; exit 1 where something is wrong.")
    int check(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(
                            names = "--head",
                            paramLabel = "HEAD",
                            description =
                                    "A head of the record as a binder or backup prints it, such as 42:3f9c…; the record must"
                                            + " have gone through it.")
                    @Nullable
                    List<String> heads,
            @Option(
                            names = "--backup",
                            paramLabel = "FILE",
                            description = "An earlier copy of the book; the record must have gone through its head.")
                    @Nullable
                    List<Path> copies,
            @Option(names = "--json", description = JSON) boolean json) {
        List<RecordHead> anchors = new ArrayList<>();
        for (String head : heads == null ? List.<String>of() : heads) {
            anchors.add(
                    RecordHead.read(head)
                            .orElseThrow(
                                    () -> new BadInputException(
                                            "--head is '" + head
                                                    + "'; expected a number, a colon and 16 or more of the digits 0-9 and a-f, as it is printed.")));
        }
        for (Path copy : copies == null ? List.<Path>of() : copies) {
            try (Book earlier = Book.open(copy)) {
                anchors.add(earlier.head());
            }
        }
        try (Book book = Book.open(file)) {
            List<String> problems = book.check(anchors);
            List<Integer> seasons = book.seasons();
            String head = problems.isEmpty() ? book.head().text() : "";
            List<String> unknown = problems.isEmpty() ? book.unknownNames() : List.of();
            if (json) {
                screen.say(Json.of(new Checked(file.toString(), seasons, head, problems, unknown)));
            } else if (problems.isEmpty()) {
                screen.say("The book " + file + " is whole. Seasons: " + Said.list(seasons) + ".\nHead of its record: "
                        + head
                        + (anchors.isEmpty()
                                ? ""
                                : "; it went through " + Said.count(anchors.size(), "head") + " given")
                        + ".");
            } else {
                screen.say("The book " + file + " has " + Said.count(problems.size(), "fault")
                        + "; take the latest backup.");
                problems.forEach(screen::say);
            }
            if (!json && !unknown.isEmpty()) {
                screen.say("Rows that count as nothing until their names are put right:");
                unknown.forEach(screen::say);
            }
            return problems.isEmpty() && unknown.isEmpty() ? Exit.GOOD : Exit.NOT_ADVISED;
        }
    }

    @Command(name = "backup", description = "Copies the whole book into a new file, while others go on using it.")
    int backup(
            @Parameters(paramLabel = "FILE", description = "The copy; a file of that name must not exist.") Path copy,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        String head;
        try (Book book = Book.open(file)) {
            book.backup(copy);
        }
        try (Book book = Book.open(copy)) {
            head = book.head().text();
        }
        screen.say(
                json
                        ? Json.of(new Copied(file.toString(), copy.toString(), head))
                        : file + " is copied to " + copy + ".\nHead of its record: " + head + ".");
        return Exit.GOOD;
    }
}
