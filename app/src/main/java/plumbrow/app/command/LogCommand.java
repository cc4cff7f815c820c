package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.LogLine;
import plumbrow.app.command.said.LogWords;
import plumbrow.app.json.Json;
import plumbrow.app.log.LogEntry;
import plumbrow.app.log.LogOfField;
import plumbrow.app.log.PassEntry;
import plumbrow.app.log.StrikeEntry;

/** The log of what was put on the fields: lines are added and struck, never changed. */
@Command(name = "log", description = "Writes down what was put on the fields, and strikes what was wrong.")
final class LogCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";

    private final Screen screen;

    LogCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do with the log: list, add, or strike NUMBER.");
    }

    @Command(name = "list", description = "Every line in the order of writing, those that were voided among them.")
    int list(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--field", paramLabel = "NAME", description = "Only of this field.") @Nullable String field,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            List<LogLine> lines = LogOfField.lines(book.log(), book.latestSeason(), field)
                    .orElseThrow(() -> new BadInputException(
                            LogOfField.unknown(book.log(), book.latestSeason(), String.valueOf(field))));
            screen.say(json ? Json.of(lines) : LogWords.lines(lines));
        }
        return Exit.GOOD;
    }

    @Command(name = "add", description = "Writes down what was put on a field.")
    int add(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--field", paramLabel = "NAME", description = "The field.") @Nullable String field,
            @Option(names = "--date", paramLabel = "DAY", description = "The day, as 2026-05-04.") @Nullable
                    String date,
            @Option(names = "--product", paramLabel = "NAME", description = "A product of the shelf.") @Nullable
                    String product,
            @Option(
                            names = "--rate",
                            paramLabel = "NUMBER",
                            description = "How much on each acre treated; 0 where scouting found too few.")
                    @Nullable
                    String rate,
            @Option(names = "--unit", paramLabel = "UNIT", description = "Its unit, as fl oz/ac.") @Nullable
                    String unit,
            @Option(names = "--share", paramLabel = "PCT", description = "Share of the field's acres [%]; else 100.")
                    @Nullable
                    String share,
            @Option(names = "--by", paramLabel = "NAME", description = "Who put it on.") @Nullable String applicator,
            @Option(
                            names = "--planned",
                            paramLabel = "PASS",
                            description = "The planned pass it was, as \"3 of PROGRAM\", or none; else it is found by"
                                    + " product, day and rate.")
                    @Nullable
                    String planned,
            @Option(names = "--source", paramLabel = "TEXT", description = "Source: log book, receipt, memory.")
                    @Nullable
                    String source,
            @Option(names = "--json", description = JSON) boolean json) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(LogEntry.FIELD, Objects.requireNonNullElse(field, ""));
        typed.put(LogEntry.DATE, Objects.requireNonNullElse(date, ""));
        typed.put(LogEntry.PRODUCT, Objects.requireNonNullElse(product, ""));
        typed.put(LogEntry.RATE, Objects.requireNonNullElse(rate, ""));
        typed.put(LogEntry.UNIT, Objects.requireNonNullElse(unit, ""));
        typed.put(LogEntry.SHARE, Objects.requireNonNullElse(share, ""));
        typed.put(LogEntry.APPLICATOR, Objects.requireNonNullElse(applicator, ""));
        typed.put(PassEntry.PLANNED, Objects.requireNonNullElse(planned, ""));
        typed.put(LogEntry.SOURCE, Objects.requireNonNullElse(source, ""));
        try (Book book = Book.open(file)) {
            Season season = season(book, file);
            LogEntry entry = LogEntry.read(season, typed, LocalDate.now(ZoneId.systemDefault()));
            if (entry.done() == null) {
                throw new BadInputException("The line was not written down. " + entry.complaint());
            }
            LogLine line = book.log(entry.done(), Instant.now());
            screen.say(json ? Json.of(line) : "Written down. " + LogWords.line(line));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "pass",
            description = "Says which planned pass a line was, where that is not clear; the last answer counts.")
    int pass(
            @Parameters(paramLabel = "NUMBER", description = "The line, by its number in the list.") int number,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--planned", paramLabel = "PASS", description = "The pass, as \"3 of PROGRAM\", or none.")
                    @Nullable
                    String planned,
            @Option(names = "--who", paramLabel = "NAME", description = "Who says so.") @Nullable String who,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            Season season = season(book, file);
            LogLine line = book.log().stream()
                    .filter(one -> one.number() == number)
                    .findFirst()
                    .orElseThrow(() -> new BadInputException("The log has no line " + number + "."));
            PassEntry entry = PassEntry.read(
                    season,
                    line.done(),
                    Map.of(
                            PassEntry.PLANNED,
                            Objects.requireNonNullElse(planned, ""),
                            "who",
                            Objects.requireNonNullElse(who, "")));
            if (entry.meant() == null) {
                throw new BadInputException("Nothing was written down. " + entry.fault());
            }
            LogLine said = book.sayPass(number, entry.meant(), entry.who(), Instant.now());
            screen.say(json ? Json.of(said) : "Written down. " + LogWords.line(said));
        }
        return Exit.GOOD;
    }

    private static Season season(Book book, Path file) {
        return book.latestSeason()
                .orElseThrow(() -> new BadInputException("The book " + file + " holds no season yet."));
    }

    @Command(name = "strike", description = "Strikes a line that was wrong: it stays, and no longer counts.")
    int strike(
            @Parameters(paramLabel = "NUMBER", description = "The line, by its number in the list.") int number,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = "Who strikes it.") @Nullable String who,
            @Option(names = "--why", paramLabel = "TEXT", description = "Why it is wrong.") @Nullable String why,
            @Option(names = "--json", description = JSON) boolean json) {
        StrikeEntry entry = StrikeEntry.read(
                Map.of("who", Objects.requireNonNullElse(who, ""), "why", Objects.requireNonNullElse(why, "")));
        if (!entry.fault().isEmpty()) {
            throw new BadInputException("The line was not voided. " + entry.fault());
        }
        try (Book book = Book.open(file)) {
            book.strike(number, entry.strike(Instant.now()));
            LogLine line = book.log().stream()
                    .filter(one -> one.number() == number)
                    .findFirst()
                    .orElseThrow();
            screen.say(json ? Json.of(line) : "Voided. " + LogWords.line(line));
        }
        return Exit.GOOD;
    }
}
