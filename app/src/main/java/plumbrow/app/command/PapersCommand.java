package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.book.Book;
import plumbrow.app.book.StoredPaper;
import plumbrow.app.command.said.PaperWords;
import plumbrow.app.json.Json;
import plumbrow.app.json.PaperSummary;
import plumbrow.app.papers.Intake;
import plumbrow.app.papers.PaperDesk;
import plumbrow.app.papers.ReadPaper;
import plumbrow.documents.sheet.SafetySheet;
import plumbrow.documents.shelf.SheetChanges;
import plumbrow.documents.shelf.ShelfProduct;
import plumbrow.documents.shelf.Shelves;

/** The papers of the shelf: takes them into the book, lists them by product, compares two revisions of a sheet. */
@Command(name = "papers", description = "Takes safety sheets and labels into the book, lists and compares them.")
final class PapersCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";

    private final Screen screen;

    PapersCommand(Screen screen) {
        this.screen = screen;
    }

    private record Added(
            String file,
            @Nullable Integer id,
            boolean already,
            @Nullable String trouble) {}

    private record Listed(List<PaperSummary.OfProduct> products, List<PaperSummary.OfPaper> papers) {}

    @Override
    public void run() {
        throw new BadInputException("Say what to do with papers: add FOLDER, list, confirm LABEL, or compare OLD NEW.");
    }

    @Command(
            name = "add",
            description = "Reads files and folders and keeps each paper whole; the same file is never kept twice.",
            footer = {"", "Exit: 0 where at least one file could be read, 2 where none could."})
    int add(
            @Parameters(arity = "1..*", paramLabel = "FILE", description = "Files, or folders of them.")
                    List<Path> named,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        List<Path> files = Intake.files(named);
        if (files.isEmpty()) {
            throw new BadInputException("There is no PDF, text or web page in " + Said.list(named) + ".");
        }
        List<Intake.Outcome> outcomes;
        try (Book book = Book.open(file);
                PaperDesk desk = new PaperDesk()) {
            Instant now = Instant.now();
            outcomes = FilesBar.show(
                    screen, files.size(), done -> Intake.add(Intake.Into.book(book), desk, files, now, done));
        }
        boolean any = outcomes.stream().anyMatch(each -> each.stored() != null);
        outcomes.forEach(each -> Optional.ofNullable(each.trouble()).ifPresent(screen.err()::println));
        if (json) {
            screen.say(Json.of(outcomes.stream().map(PapersCommand::added).toList()));
        } else if (any) {
            screen.say(PaperWords.added(outcomes));
        }
        return any ? Exit.GOOD : Exit.BAD_INPUT;
    }

    @Command(
            name = "list",
            description = "Lists products by their papers: their age, what is missing, what is there twice.")
    int list(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--as-of", paramLabel = "DATE", description = "The day from which age is counted.")
                    @Nullable
                    LocalDate asOf,
            @Option(names = "--json", description = JSON) boolean json) {
        LocalDate today = asOf == null ? LocalDate.now(ZoneId.systemDefault()) : asOf;
        try (Book book = Book.open(file)) {
            List<StoredPaper> papers = book.papers();
            List<ShelfProduct> shelf =
                    Shelves.of(papers.stream().map(StoredPaper::paper).toList());
            screen.say(
                    json
                            ? Json.of(new Listed(
                                    shelf.stream()
                                            .map(product -> PaperSummary.OfProduct.of(product, today))
                                            .toList(),
                                    papers.stream()
                                            .map(PaperSummary.OfPaper::of)
                                            .toList()))
                            : PaperWords.shelf(shelf, today));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "compare",
            description = "What a new revision of a safety sheet says otherwise, kind by kind.",
            footer = {"", "Each is a file, or the number of a paper in the book.", "Exit: 0 good, 2 bad input."})
    int compare(
            @Parameters(paramLabel = "OLD", description = "The older sheet.") String older,
            @Parameters(paramLabel = "NEW", description = "The newer sheet.") String newer,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (PaperDesk desk = new PaperDesk()) {
            SheetChanges changes = SheetChanges.between(sheet(desk, older, file), sheet(desk, newer, file));
            screen.say(json ? Json.of(PaperSummary.OfChanges.of(changes)) : PaperWords.changes(older, newer, changes));
        }
        return Exit.GOOD;
    }

    private static SafetySheet sheet(PaperDesk desk, String named, Path bookFile) {
        ReadPaper read =
                named.matches("\\d{1,9}") ? stored(desk, Integer.parseInt(named), bookFile) : desk.read(Path.of(named));
        if (read instanceof ReadPaper.Sheet sheet) {
            return sheet.sheet();
        }
        throw new BadInputException(named + " does not read as a safety sheet; only sheets are compared.");
    }

    private static ReadPaper stored(PaperDesk desk, int number, Path bookFile) {
        try (Book book = Book.open(bookFile)) {
            byte[] content = book.paperFile(number)
                    .orElseThrow(() -> new BadInputException("The book " + bookFile + " has no paper " + number + "."));
            return desk.read(content, "paper " + number);
        }
    }

    private static Added added(Intake.Outcome outcome) {
        StoredPaper stored = outcome.stored();
        return new Added(outcome.file(), stored == null ? null : stored.number(), outcome.already(), outcome.trouble());
    }
}
