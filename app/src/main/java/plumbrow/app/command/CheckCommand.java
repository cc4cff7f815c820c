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

/** Asks every gate about the courses of the season. */
@Command(
        name = "check",
        description = "Says for each course whether it is barred, unknown, conditional or clear, and why.",
        footer = {
            "",
            "Exit: 0 good, 1 where a course asked for is barred, 2 bad input. Unknown is not clear: look it up."
        })
final class CheckCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", arity = "1..*", description = "Only these fields.")
    private List<String> names = new ArrayList<>();

    @Option(names = "--course", paramLabel = "NAME", description = "Only the course of this name.")
    private @Nullable String course;

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
        SeasonCheck check = course == null ? all : all.named(course);
        if (check.courses().isEmpty() && course != null) {
            throw new BadInputException("There is no course '" + course + "' there; the courses are " + courses(all));
        }
        if (pdf != null) {
            NewFile.demandFree(pdf);
            CheckPaper.write(check, pdf);
        }
        screen.say(json ? Json.of(CheckSummary.of(check)) : FindingWords.checked(check));
        return check.count(Standing.BARRED) > 0 ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private static String courses(SeasonCheck check) {
        return check.courses().stream()
                .map(one -> one.course().name())
                .distinct()
                .collect(Collectors.joining(", ", "", "."));
    }
}
