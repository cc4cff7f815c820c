package plumbrow.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Field;
import plumbrow.advice.loadcard.LoadCard;
import plumbrow.advice.loadcard.LoadCards;
import plumbrow.advice.season.Season;
import plumbrow.advice.trip.SprayTrip;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.MixWords;
import plumbrow.app.json.Json;
import plumbrow.app.weather.Decided;
import plumbrow.documents.binder.LoadCardPaper;

/** What goes into the tank, load by load. */
@Command(
        name = "mix",
        description =
                "Writes the load card: what goes into the tank, in what order, load by load, through which nozzle.",
        footer = {"", "The current label is the law.", "Exit: 0 good, 1 where the mix is barred, 2 bad input."})
final class MixCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Parameters(arity = "0..1", paramLabel = "OUT.pdf", description = "Writes the card on one page, too.")
    private @Nullable Path out;

    @Option(names = "--field", paramLabel = "NAME", required = true, description = "The field.")
    private String name = "";

    @Option(
            names = "--program",
            paramLabel = "NAME",
            description = "The program; else the chosen one, else the baseline.")
    private @Nullable String program;

    @Option(names = "--pass", paramLabel = "N", description = "A pass of the trip; else the first of the program.")
    private @Nullable Integer pass;

    @Option(names = "--machine", paramLabel = "NAME", description = "Which sprayer or planter; else the farm's first.")
    private @Nullable String machine;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    MixCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Path file = out;
        if (file != null && !file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new BadInputException("The card's name is '" + file + "'; expected one that ends in .pdf.");
        }
        Season season = from.season();
        Field field = FromBook.fields(season, List.of(name)).get(0);
        SprayTrip trip = trip(season, field);
        String asked = machine;
        if (asked != null
                && trip.machines(season).stream().noneMatch(one -> one.name().equals(asked))) {
            throw new BadInputException("There is no such machine '" + asked + "' on " + field.farm() + "; "
                    + (trip.machines(season).isEmpty()
                            ? "none is on file."
                            : "expected one of "
                                    + String.join(
                                            ", ",
                                            trip.machines(season).stream()
                                                    .map(one -> one.name())
                                                    .toList()) + "."));
        }
        LoadCard card = LoadCards.of(season, trip, asked);
        if (file != null) {
            LoadCardPaper.write(card, season.asOf(), file);
        }
        screen.say(json ? Json.of(card) : MixWords.of(card));
        return card.barred() ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private SprayTrip trip(Season season, Field field) {
        try (Book book = Book.open(from.file())) {
            return Decided.trip(season, field, book.choices(season.year()), program, pass, false);
        } catch (IllegalArgumentException fault) {
            throw new BadInputException(String.valueOf(fault.getMessage()));
        }
    }
}
