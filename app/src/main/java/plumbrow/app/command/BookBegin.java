package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.nextseason.BeginAsked;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.book.MeanwhileException;
import plumbrow.app.json.Json;
import plumbrow.app.rows.BeginWords;
import plumbrow.app.rows.NextSeasonSummary;

/** Begins the season after the latest one of a book. */
@Command(
        name = "begin-season",
        description =
                "Begins the next season: fields and shelf come along, crops turn, history grows, prices are marked old.",
        footer = {
            "",
            "All of it or nothing. The season before stays as it is, with its log, choices and changes. Taken back with:",
            "plumbrow history undo, as long as nothing was done in the new season.",
            "Exit: 0 good, 2 bad input."
        })
final class BookBegin implements Callable<Integer> {
    private final Screen screen;

    @Parameters(paramLabel = "YEAR", description = "Harvest year, such as 2027.")
    private String year = "";

    @Option(
            names = "--book",
            paramLabel = "FILE",
            defaultValue = FromBook.DEFAULT,
            description = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.")
    private Path file = Path.of("");

    @Option(names = "--as-of", paramLabel = "DAY", description = "The day of the assumptions; else today.")
    private String asOf = "";

    @Option(
            names = "--crop",
            paramLabel = "FIELD=CROP",
            description =
                    "The crop of a field; else what is planned to follow, what followed before, or soybeans after corn and"
                            + " wheat and corn after soybeans.")
    private List<String> crops = List.of();

    @Option(names = "--dry-run", description = "Only say what would come along; the book stays as it is.")
    private boolean dry;

    @Option(names = "--who", paramLabel = "NAME", description = "Who begins it; else the season's adviser.")
    private @Nullable String who;

    @Option(names = "--why", paramLabel = "TEXT", description = "Why.")
    private String why = "";

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    BookBegin(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Map<String, String> words = new LinkedHashMap<>();
        for (String crop : crops) {
            int equals = crop.lastIndexOf('=');
            if (equals <= 0) {
                throw new BadInputException(
                        "--crop: found '" + crop + "', expected a field and its crop, such as 'East 80=corn'.");
            }
            words.put(crop.substring(0, equals), crop.substring(equals + 1));
        }
        try (Book book = Book.open(file)) {
            BeginAsked asked = BeginWords.asked(year, asOf, LocalDate.now(ZoneId.systemDefault()), words);
            NextSeasonSummary summary = NextSeasonSummary.of(
                    dry
                            ? book.next(asked)
                            : book.beginNext(new By(who, why, By.Way.COMMAND, Instant.now()), asked, null),
                    book.papers(),
                    !dry);
            screen.say(json ? Json.of(summary) : String.join("\n", summary.lines()));
        } catch (IllegalArgumentException | MeanwhileException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
        return Exit.GOOD;
    }
}
