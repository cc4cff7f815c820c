package plumbrow.app.command;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.book.SeasonChange;
import plumbrow.app.command.said.RowWords;
import plumbrow.app.json.Json;
import plumbrow.app.rows.ChangeSummary;
import plumbrow.app.rows.Changes;
import plumbrow.documents.workbook.edit.EditFaults;

/** Every change of the season, and the way to take one back. */
@Command(name = "history", description = "What was changed in the season, by whom and why; takes a change back.")
final class HistoryCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";
    private static final String WHO = "Who takes it back; else the season's adviser.";
    private static final String WHY = "Why.";

    private final Screen screen;

    HistoryCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do with the history: list [--since DAY], undo [NUMBER], or redo.");
    }

    @Command(name = "list", description = "Every change in the order of making, with what its cells were and are.")
    int list(
            @Option(names = "--since", paramLabel = "DAY", description = "Only since this day, as 2026-03-02.")
                    @Nullable
                    String since,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            List<SeasonChange> changes =
                    Changes.since(book.changes(written(book, file).year()), day(since));
            screen.say(json ? Json.of(changes.stream().map(ChangeSummary::of).toList()) : RowWords.changes(changes));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "undo",
            description = "Takes a change back, the latest where none is named; what others changed since stays.")
    int undo(
            @Parameters(paramLabel = "NUMBER", arity = "0..1", description = "The change, by its number in the list.")
                    @Nullable
                    Integer number,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = WHO) @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = WHY) @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        return takeBack(file, number, false, who, why, json);
    }

    @Command(name = "redo", description = "Takes the latest undo back.")
    int redo(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = WHO) @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = WHY) @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        return takeBack(file, null, true, who, why, json);
    }

    private int takeBack(
            Path file,
            @Nullable Integer number,
            boolean redo,
            @Nullable String who,
            @Nullable String why,
            boolean json) {
        try (Book book = Book.open(file)) {
            int year = written(book, file).year();
            int target = number != null
                    ? number
                    : (redo ? Changes.toRedo(book.changes(year)) : Changes.toUndo(book.changes(year)))
                            .orElseThrow(() -> new BadInputException(
                                    redo ? "There is no undo to take back." : "There is no change to take back."));
            int made = book.undo(target, new By(who, Objects.requireNonNullElse(why, ""), By.Way.UNDO, Instant.now()));
            ChangeSummary change = book.changes(year).stream()
                    .filter(one -> one.number() == made)
                    .findFirst()
                    .map(ChangeSummary::of)
                    .orElseThrow();
            screen.say(json ? Json.of(change) : RowWords.takenBack(change));
        } catch (EditFaults faults) {
            throw new BadInputException("Nothing was taken back. " + faults.getMessage());
        }
        return Exit.GOOD;
    }

    private static @Nullable LocalDate day(@Nullable String since) {
        try {
            return since == null ? null : LocalDate.parse(since);
        } catch (DateTimeException noDay) {
            throw new BadInputException("--since: found '" + since + "', expected a day as 2026-03-02.");
        }
    }

    private static Season written(Book book, Path file) {
        return book.latestWritten()
                .orElseThrow(() -> new BadInputException("The book " + file + " holds no season yet."));
    }
}
