package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.app.json.Json;
import plumbrow.app.json.SeasonSummary;
import plumbrow.documents.workbook.Fault;
import plumbrow.documents.workbook.WorkbookFaults;
import plumbrow.documents.workbook.WorkbookReader;
import plumbrow.documents.workbook.WorkbookTemplate;

/** Makes an empty workbook to fill in, and says what is wrong with a filled one. */
@Command(name = "workbook", description = "Makes a workbook to fill in, or says what is wrong with a filled one.")
final class WorkbookCommand implements Runnable {
    private static final String JSON = "Answer as JSON.";

    private final Screen screen;

    WorkbookCommand(Screen screen) {
        this.screen = screen;
    }

    private record Template(String workbook) {}

    private record Good(String workbook, SeasonSummary season) {}

    private record Bad(String workbook, List<Fault> faults) {}

    @Override
    public void run() {
        throw new BadInputException("Say what to do with the workbook: template or check.");
    }

    @Command(name = "template", description = "Writes an empty workbook; a file of that name must not exist.")
    int template(
            @Parameters(paramLabel = "FILE", description = "NAME.xlsx.") Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new BadInputException("The workbook's name is '" + file + "'; expected one that ends in .xlsx.");
        }
        NewFile.demandFree(file);
        WorkbookTemplate.write(file);
        screen.say(
                json
                        ? Json.of(new Template(file.toString()))
                        : "An empty workbook is in " + file + ". When it is filled in: plumbrow workbook check "
                                + file);
        return Exit.GOOD;
    }

    @Command(name = "check", description = "Says everything that is wrong with a workbook, by sheet, row and column.")
    int check(
            @Parameters(paramLabel = "FILE", description = "An .xlsx file, or a folder of .csv files.") Path file,
            @Option(names = "--json", description = JSON) boolean json) {
        try {
            List<String> told = new ArrayList<>();
            Season season = WorkbookReader.read(file, told::add);
            SeasonSummary summary = SeasonSummary.of(season);
            screen.say(
                    json
                            ? Json.of(new Good(file.toString(), summary))
                            : "The workbook " + file + " can be used. Season " + season.year() + ": "
                                    + Said.holds(summary) + "." + Said.after(told));
            return Exit.GOOD;
        } catch (WorkbookFaults faults) {
            if (!json) {
                throw faults;
            }
            screen.say(Json.of(new Bad(file.toString(), faults.faults())));
            return Exit.BAD_INPUT;
        }
    }
}
