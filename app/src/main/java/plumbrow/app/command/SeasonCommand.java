package plumbrow.app.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.calendar.PassChange;
import plumbrow.advice.calendar.SeasonTrial;
import plumbrow.advice.calendar.SeasonTrials;
import plumbrow.advice.field.Field;
import plumbrow.advice.gates.Standing;
import plumbrow.advice.program.Program;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.command.said.SeasonWords;
import plumbrow.app.json.Json;
import plumbrow.documents.WholeFile;
import plumbrow.documents.picture.SeasonPicture;

/** Tells the days of a program: what comes up when, what is left of each soil herbicide, what escapes which pass. */
@Command(
        name = "season",
        description = "Tells the days of a program: what comes up when, what was left, what escaped which pass.",
        footer = {"", "Exit: 0 good, 1 where the program is barred, 2 bad input. Nothing is stored."})
final class SeasonCommand implements Callable<Integer> {
    private static final int PICTURE_PX = 1000;

    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", required = true, description = "The field.")
    private String name = "";

    @Option(names = "--program", paramLabel = "NAME", description = "The program; else the field's baseline.")
    private @Nullable String program;

    @Option(names = "--pass", paramLabel = "N", description = "A pass to try on another day or at another rate.")
    private @Nullable Integer pass;

    @Option(names = "--date", paramLabel = "DAY", description = "The day to try it on, such as 2027-05-24.")
    private @Nullable String date;

    @Option(names = "--rate", paramLabel = "RATE", description = "The rate to try, in the unit of the pass.")
    private @Nullable Double rate;

    @Option(names = "--svg", paramLabel = "OUT", description = "Writes the picture into this file.")
    private @Nullable Path svg;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    SeasonCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Season season = from.season();
        Field field = FromBook.fields(season, List.of(name)).get(0);
        SeasonTrial trial = new SeasonTrials(season, WeighingOptions.DEFAULT, from::weather)
                .whole(field, program(season, field), changes());
        Path file = svg;
        if (file != null) {
            String picture = SeasonPicture.of(trial.calendar(), PICTURE_PX).svg();
            WholeFile.write(file, out -> out.write(picture.getBytes(StandardCharsets.UTF_8)));
        }
        screen.say(json ? Json.of(trial) : SeasonWords.of(trial));
        return trial.standing() == Standing.BARRED ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private String program(Season season, Field field) {
        String asked = program;
        return asked != null
                ? asked
                : season.programs(field.name()).stream()
                        .filter(Program::baseline)
                        .map(Program::name)
                        .findFirst()
                        .orElseThrow(() -> new BadInputException(
                                field.name() + " has no baseline program; name one with --program."));
    }

    private List<PassChange> changes() {
        Integer number = pass;
        if (number == null) {
            if (date != null || rate != null) {
                throw new BadInputException("--date and --rate need --pass: which pass are they for?");
            }
            return List.of();
        }
        return List.of(new PassChange(number, day(), rate));
    }

    private @Nullable LocalDate day() {
        String text = date;
        if (text == null) {
            return null;
        }
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException fault) {
            throw new BadInputException("--date is '" + text + "'; expected a day such as 2027-05-24.");
        }
    }
}
