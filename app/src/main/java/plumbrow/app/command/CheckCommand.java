package plumbrow.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.course.Course;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Finding;
import plumbrow.advice.gates.Gates;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.season.Season;
import plumbrow.app.command.said.FindingWords;
import plumbrow.app.json.CourseFindings;
import plumbrow.app.json.Json;

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

    CheckCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Season season = from.season();
        Gates gates = Gates.of(season);
        List<CourseFindings> checked = new ArrayList<>();
        for (Field field : FromBook.fields(season, names)) {
            season.courses(field.name()).stream()
                    .filter(candidate -> course == null || candidate.name().equals(course))
                    .forEach(candidate -> checked.add(findings(gates, field, candidate)));
        }
        if (checked.isEmpty() && course != null) {
            throw new BadInputException(
                    "There is no course '" + course + "' there; the courses are " + courses(season));
        }
        screen.say(json ? Json.of(checked) : FindingWords.checked(checked));
        boolean barred = checked.stream().anyMatch(found -> found.standing() == Standing.BARRED);
        return barred ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private static CourseFindings findings(Gates gates, Field field, Course course) {
        List<Finding> findings = gates.check(field, course);
        return new CourseFindings(field.name(), course.name(), Gates.standing(findings), findings);
    }

    private String courses(Season season) {
        return FromBook.fields(season, names).stream()
                .flatMap(field -> season.courses(field.name()).stream())
                .map(Course::name)
                .distinct()
                .collect(Collectors.joining(", ", "", "."));
    }
}
