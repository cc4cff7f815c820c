package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.book.LogLine;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.json.Json;
import plumbrow.app.json.SeasonSummary;
import plumbrow.app.rows.ChangeWords;
import plumbrow.app.rows.IncomingSummary;
import plumbrow.documents.workbook.WorkbookReader;

/** Brings a workbook's season into a book. The workbook is read to its end before the book is opened. */
@Command(
        name = "import",
        description = "Puts a workbook's season in the place of whatever the book holds for that year.",
        footer = {
            "",
            "Where anything is wrong with the workbook, the book stays as it was. Choices stay in any case.",
            "What was changed in the book since a workbook was last brought in, on the desk or by a command, is not",
            "written over by a workbook that lacks it, unless --replace says so.",
            "Exit: 0 good, 2 bad input."
        })
final class BookImport implements Callable<Integer> {
    private final Screen screen;

    @Parameters(paramLabel = "WORKBOOK", description = "An .xlsx file, or a folder of .csv files.")
    private Path workbook = Path.of("");

    @Option(
            names = "--book",
            paramLabel = "FILE",
            defaultValue = FromBook.DEFAULT,
            description = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.")
    private Path file = Path.of("");

    @Option(
            names = "--replace",
            description = "Also let go of what was changed in the book since a workbook was last brought in.")
    private boolean over;

    @Option(names = "--dry-run", description = "Only say row by row what would change; the book stays as it is.")
    private boolean dry;

    @Option(names = "--who", paramLabel = "NAME", description = "Who brings it in; else the workbook's adviser.")
    private @Nullable String who;

    @Option(names = "--why", paramLabel = "TEXT", description = "Why.")
    private String why = "";

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    BookImport(Screen screen) {
        this.screen = screen;
    }

    private record Imported(
            String book, boolean replaced, LogLine.Merged log, List<String> gone, SeasonSummary season) {}

    @Override
    public Integer call() {
        List<String> told = new ArrayList<>();
        Season season = WorkbookReader.read(workbook, told::add);
        try (Book book = Book.open(file)) {
            if (dry) {
                Book.Incoming coming = book.incoming(season);
                screen.say(
                        json
                                ? Json.of(IncomingSummary.of(season.year(), coming))
                                : dry(season.year(), coming) + Said.after(told));
                return Exit.GOOD;
            }
            Book.Brought brought = brought(book, season);
            SeasonSummary summary = SeasonSummary.of(season);
            screen.say(
                    json
                            ? Json.of(new Imported(
                                    file.toString(), brought.replaced(), brought.log(), brought.gone(), summary))
                            : "Season " + season.year() + (brought.replaced() ? " was replaced" : " is now") + " in "
                                    + file + ": " + Said.holds(summary) + "." + said(brought) + Said.after(told));
        }
        return Exit.GOOD;
    }

    private Book.Brought brought(Book book, Season season) {
        try {
            return book.bring(new By(who, why, By.Way.WORKBOOK, Instant.now()), season, over);
        } catch (MeanwhileException lacking) {
            throw new BadInputException(lacking.getMessage()
                    + " Write the season out with plumbrow book export and work on in that, or let the changes go with"
                    + " --replace.");
        }
    }

    private static String dry(int year, Book.Incoming coming) {
        if (!coming.replaces()) {
            return "The book holds no season " + year + " yet: all of the workbook would come in. Nothing was changed.";
        }
        if (coming.rows().isEmpty()) {
            return "The workbook says what the book holds: nothing would change.";
        }
        String gone = coming.gone().isEmpty()
                ? ""
                : "\nChanged in the book since a workbook was last brought in, and otherwise in this one: "
                        + String.join("; ", coming.gone()) + ".";
        return Said.count(coming.rows().size(), "row") + " of season " + year
                + " would change; nothing was changed:\n  "
                + ChangeWords.lines(coming.rows()).stream()
                        .map(ChangeWords.Line::text)
                        .collect(Collectors.joining("\n  "))
                + gone;
    }

    private static String said(Book.Brought brought) {
        LogLine.Merged log = brought.log();
        String added = log.added() == 0 ? "" : " " + Said.count(log.added(), "new line") + " came to the log.";
        String kept = log.bookOnly() == 0
                ? ""
                : " " + Said.count(log.bookOnly(), "line") + " of the log not in the workbook "
                        + (log.bookOnly() == 1 ? "stays" : "stay") + ": the log is only added to.";
        String gone = brought.gone().isEmpty()
                ? ""
                : " No longer as it was changed in the book: " + String.join("; ", brought.gone()) + ".";
        return added + kept + gone;
    }
}
