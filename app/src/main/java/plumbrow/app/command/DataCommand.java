package plumbrow.app.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.command.said.DataWords;
import plumbrow.app.json.DataSummary;
import plumbrow.app.json.Json;
import plumbrow.app.json.SubstanceSummary;
import plumbrow.science.reference.DataCheck;
import plumbrow.science.reference.DataReport;
import plumbrow.science.reference.Substance;
import plumbrow.science.reference.Substances;

/** Looks through the reference data, and shows what is kept of an active ingredient. */
@Command(name = "data", description = "Checks the reference data; shows what is kept of an active ingredient.")
final class DataCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";

    private final Screen screen;

    DataCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public void run() {
        throw new BadInputException("Say what to do with the data: check, or show NAME.");
    }

    @Command(
            name = "check",
            description = "Looks at every row of the reference data, or of an efficacy guide of your own.",
            footer = {"", "Exit: 0 nothing is wrong, 2 something is."})
    int check(
            @Parameters(
                            arity = "0..1",
                            paramLabel = "FILE.csv",
                            description = "Your own guide, in the 15 columns of the efficacy set.")
                    @Nullable
                    Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        DataReport report = file == null ? DataCheck.packed() : DataCheck.guide(file.toString(), text(file));
        DataSummary summary = DataSummary.of(report);
        screen.say(json ? Json.of(summary) : DataWords.checked(summary));
        return report.clean() ? Exit.GOOD : Exit.BAD_INPUT;
    }

    @Command(
            name = "show",
            description = "Shows every value of one active ingredient with unit, conditions, source and status.")
    int show(
            @Parameters(paramLabel = "NAME", description = "ISO common name or CAS number.") String name,
            @Option(names = "--json", description = JSON) boolean json) {
        SubstanceSummary summary =
                SubstanceSummary.of(Substances.find(name).orElseThrow(() -> new BadInputException(unknown(name))));
        screen.say(json ? Json.of(summary) : DataWords.substance(summary));
        return Exit.GOOD;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (CharacterCodingException otherLetters) {
            throw new BadInputException("The file " + file + " is not UTF-8 text; save it as CSV UTF-8.");
        } catch (NoSuchFileException missing) {
            throw new BadInputException("There is no file " + file + ".");
        } catch (IOException unreadable) {
            throw new BadInputException("The file " + file + " can't be read.");
        }
    }

    private static String unknown(String name) {
        String start = name.strip();
        String near = Substances.search(start.substring(0, Math.min(4, start.length()))).stream()
                .map(Substance::name)
                .limit(8)
                .collect(Collectors.joining(", "));
        return "Nothing is kept of '" + name + "', which says nothing about it"
                + (near.isEmpty() ? "; expected an ISO common name or a CAS number." : "; did you mean " + near + "?");
    }
}
