package plumbrow.app.command;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.records.KeptRecord;
import plumbrow.advice.season.Season;
import plumbrow.advice.today.Days;
import plumbrow.advice.today.Today;
import plumbrow.app.book.Book;
import plumbrow.app.book.Choice;
import plumbrow.app.command.said.TodayWords;
import plumbrow.app.json.Json;
import plumbrow.app.weather.Decided;

/** What is due, what is fit, what waits. */
@Command(
        name = "today",
        description = "Says what is due on a day, which of it is fit, and what must be waited for.",
        footer = {"", "Exit: 0 good, 2 bad input. The current label is the law."})
final class TodayCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--day", paramLabel = "DAY", description = "Another day, such as 2026-06-01.")
    private @Nullable String day;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    TodayCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        LocalDate on = on();
        Season season = from.season();
        try (Book book = Book.open(from.file())) {
            List<Choice> choices = book.choices(season.year());
            Today today = Days.of(
                    season,
                    on,
                    field -> Decided.chosen(season, field, choices),
                    book::weather,
                    KeptRecord.counting(book.records()));
            screen.say(json ? Json.of(today) : TodayWords.of(today));
        }
        return Exit.GOOD;
    }

    private LocalDate on() {
        String text = day;
        if (text == null) {
            return LocalDate.now(ZoneId.systemDefault());
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException fault) {
            throw new BadInputException("--day is '" + text + "'; expected a day such as 2026-06-01.");
        }
    }
}
