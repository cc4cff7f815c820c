package plumbrow.app.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.lookback.AssumptionBias;
import plumbrow.advice.lookback.FieldLook;
import plumbrow.advice.lookback.Harvest;
import plumbrow.advice.lookback.LookBack;
import plumbrow.advice.lookback.Scaled;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.book.By;
import plumbrow.app.json.Json;
import plumbrow.app.lookback.HarvestEntry;
import plumbrow.app.lookback.LookBackWords;

/** Harvests are written down, and seasons looked back on. */
@Command(
        name = "harvest",
        description =
                "Writes down what was harvested, and looks back: what was earned, how honest odds and assumptions were.")
final class HarvestCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";
    private static final String BOOK = "The book; else the one that PLUMBROW_BOOK names, else ./plumbrow.book.";

    private final Screen screen;

    HarvestCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do: add column=text …, list, look-back, or keep QUANTITY CROP.");
    }

    @Command(
            name = "add",
            description =
                    "Writes a harvest down: field, yield_bu_ac, who, source; program where it is not the one chosen; strip=yes"
                            + " for a strip of another; moisture_pct, price_usd_bu, cost_usd_ac where known.")
    int add(
            @Parameters(paramLabel = "CELL", arity = "1..*", description = "As column=text.") List<String> cells,
            @Option(names = "--year", paramLabel = "YEAR", description = "Harvest year; else the latest season.")
                    @Nullable
                    Integer year,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String cell : cells) {
            int equals = cell.indexOf('=');
            if (equals <= 0) {
                throw new BadInputException(
                        "Found '" + cell + "', expected a cell as column=text, such as yield_bu_ac=188.");
            }
            typed.put(cell.substring(0, equals), cell.substring(equals + 1));
        }
        try (Book book = Book.open(file)) {
            Season season = (year == null ? book.latestSeason() : book.season(year))
                    .orElseThrow(() -> new BadInputException("The book " + file + " has no such season."));
            HarvestEntry entry = HarvestEntry.read(season, book.decided(), typed, Instant.now());
            Harvest harvest = entry.harvest();
            if (harvest == null) {
                throw new BadInputException("Nothing was written down. " + entry.complaint());
            }
            book.harvest(harvest);
            Optional<FieldLook> look = book.lookBack().fields().stream()
                    .filter(one -> one.year() == harvest.year() && one.field().equals(harvest.field()))
                    .findFirst();
            screen.say(
                    json
                            ? Json.of(harvest)
                            : "Written down for " + harvest.field() + ", " + harvest.year() + ".\n"
                                    + look.map(one -> String.join("\n", LookBackWords.sentences(one)))
                                            .orElse(""));
        }
        return Exit.GOOD;
    }

    @Command(name = "list", description = "Every harvest in the order of writing.")
    int list(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            List<Harvest> harvests = book.harvests();
            screen.say(
                    json
                            ? Json.of(harvests)
                            : harvests.isEmpty()
                                    ? "Nothing was harvested yet."
                                    : String.join(
                                            "\n",
                                            harvests.stream()
                                                    .map(one -> one.year() + "  " + one.field() + ": " + one.program()
                                                            + (one.strip() ? " (a strip)" : "") + ", "
                                                            + one.yieldBuPerAcre() + " bu/ac, by " + one.who())
                                                    .toList()));
        }
        return Exit.GOOD;
    }

    @Command(
            name = "look-back",
            description = "What was earned, beside what was expected; how honest odds and assumptions were.")
    int lookBack(
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try (Book book = Book.open(file)) {
            LookBack back = book.lookBack();
            if (json) {
                screen.say(Json.of(back));
                return Exit.GOOD;
            }
            List<String> lines = new ArrayList<>();
            lines.add(LookBackWords.answer(back));
            for (FieldLook look : back.fields()) {
                lines.add("\n" + look.field() + ", " + look.year());
                LookBackWords.sentences(look).forEach(one -> lines.add("  " + one));
            }
            if (!back.fields().isEmpty()) {
                lines.add("\n" + LookBackWords.NOT_OBSERVED);
                lines.add("");
                lines.addAll(LookBackWords.honest(back.honesty()));
                for (AssumptionBias bias : back.honesty().biases()) {
                    lines.add(LookBackWords.bias(bias));
                    if (bias.keepable()) {
                        lines.add("  " + LookBackWords.offer(bias) + " Keep it with: plumbrow harvest keep "
                                + bias.of().word() + " " + bias.crop().word());
                    }
                }
            }
            screen.say(String.join("\n", lines));
        }
        return Exit.GOOD;
    }

    @Command(name = "keep", description = "Puts what looking back offers into the assumptions of the latest season.")
    int keep(
            @Parameters(paramLabel = "QUANTITY", description = "yield or price.") String quantity,
            @Parameters(paramLabel = "CROP", description = "corn, soybean or wheat.") String crop,
            @Option(names = "--book", paramLabel = "FILE", defaultValue = FromBook.DEFAULT, description = BOOK)
                    Path file,
            @Option(names = "--who", paramLabel = "NAME", description = "Who keeps it; else the season's adviser.")
                    @Nullable
                    String who,
            @Option(names = "--why", paramLabel = "TEXT", description = "Why.") @Nullable String why) {
        try (Book book = Book.open(file)) {
            AssumptionBias bias = book.lookBack().honesty().biases().stream()
                    .filter(one -> one.of().word().equals(quantity)
                            && one.crop().word().equals(crop))
                    .filter(AssumptionBias::keepable)
                    .findFirst()
                    .orElseThrow(() -> new BadInputException("Looking back offers nothing for the " + quantity + " of "
                            + crop + "; see plumbrow harvest look-back."));
            By by = new By(who, why == null ? LookBackWords.bias(bias) : why, By.Way.COMMAND, Instant.now());
            Optional<Integer> number = book.changeHeld(by, held -> Scaled.by(held.written(), bias));
            screen.say(number.map(one -> "Change " + one + ": " + LookBackWords.offer(bias))
                    .orElse("Nothing was changed: the season has no such assumption."));
        }
        return Exit.GOOD;
    }
}
