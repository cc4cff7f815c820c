package plumbrow.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.app.json.Json;
import plumbrow.app.json.SeasonSummary;
import plumbrow.documents.workbook.WorkbookWriter;

/** Writes a season of a book out as a workbook, to be looked at, changed and brought in again. */
@Command(name = "export", description = "Writes a season out as a workbook; a file of that name must not exist.")
final class BookExport implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Parameters(paramLabel = "WORKBOOK", description = "NAME.xlsx, or a folder for .csv files.")
    private Path workbook = Path.of("");

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    BookExport(Screen screen) {
        this.screen = screen;
    }

    private record Exported(String workbook, SeasonSummary season) {}

    @Override
    public Integer call() {
        NewFile.demandFree(workbook);
        Season season = from.season();
        WorkbookWriter.write(season, workbook);
        SeasonSummary summary = SeasonSummary.of(season);
        screen.say(
                json
                        ? Json.of(new Exported(workbook.toString(), summary))
                        : "Season " + season.year() + " is written to " + workbook + ": " + Said.holds(summary) + ".");
        return Exit.GOOD;
    }
}
