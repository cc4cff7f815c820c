package plumbrow.app.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.pestpage.PestNames;
import plumbrow.advice.pestpage.PestPage;
import plumbrow.advice.pestpage.PestPages;
import plumbrow.advice.season.Season;
import plumbrow.app.command.said.PestText;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.PestPaper;

/** Says all that the book knows of one weed or insect. */
@Command(
        name = "pest",
        description = "A weed or insect: when it comes here, what it costs, what works on this shelf, what fails.",
        footer = {"", "Without NAME it lists all that have a page.", "Exit: 0 good, 2 bad input."})
final class PestCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The weed or insect: \"waterhemp\".")
    private @Nullable String name;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    @Option(names = "--pdf", paramLabel = "OUT.pdf", description = "Where to print it, on one page.")
    private @Nullable Path pdf;

    PestCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Path out = pdf;
        String asked = name;
        if (out != null && !out.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new BadInputException("The page's name is '" + out + "'; expected one that ends in .pdf.");
        }
        if (out != null && asked == null) {
            throw new BadInputException("Say which weed or insect to print: plumbrow pest waterhemp --pdf OUT.pdf.");
        }
        Season season = from.season();
        if (asked == null) {
            screen.say(json ? Json.of(PestNames.of(season)) : PestText.names(PestNames.of(season)));
            return Exit.GOOD;
        }
        PestPage page = PestPages.of(season, asked)
                .orElseThrow(() -> new BadInputException("Nothing is kept of '" + asked
                        + "', neither in the book nor in the reference data; see all names with: plumbrow pest."));
        if (out != null) {
            PestPaper.write(page, out);
        }
        if (json) {
            screen.say(Json.of(page));
        } else {
            screen.say(out == null ? PestText.of(page) : "The page of " + page.name() + " is in " + out + ".");
        }
        return Exit.GOOD;
    }
}
