package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.check.SeasonCheck;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.app.command.said.FindingWords;
import plumbrow.app.json.CheckSummary;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.CheckPaper;

/** Asks every gate about the programs of the season. */
@Command(
        name = "check",
        description = "Says for each program whether it is barred, unknown, conditional or clear, and why.",
        footer = {
            "",
            "Exit: 0 good, 1 where a program asked for is barred, 2 bad input. Unknown is not clear: look it up."
        })
final class CheckCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", arity = "1..*", description = "Only these fields.")
    private List<String> names = new ArrayList<>();

    @Option(names = "--program", paramLabel = "NAME", description = "Only the program of this name.")
    private @Nullable String program;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    @Option(names = "--pdf", paramLabel = "OUT.pdf", description = "Print it too; a file of that name must not exist.")
    private @Nullable Path pdf;

    CheckCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Season season = from.season();
        SeasonCheck all = SeasonCheck.of(season, FromBook.fields(season, names));
        SeasonCheck check = program == null ? all : all.named(program);
        if (check.programs().isEmpty() && program != null) {
            throw new BadInputException(
                    "There is no program '" + program + "' there; the programs are " + programs(all));
        }
        if (pdf != null) {
            NewFile.demandFree(pdf);
            CheckPaper.write(check, pdf);
        }
        screen.say(json ? Json.of(CheckSummary.of(check)) : FindingWords.checked(check));
        return check.count(Standing.BARRED) > 0 ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private static String programs(SeasonCheck check) {
        return check.programs().stream()
                .map(one -> one.program().name())
                .distinct()
                .collect(Collectors.joining(", ", "", "."));
    }
}
