package plumbrow.app.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.Book;
import plumbrow.app.json.Json;
import plumbrow.documents.binder.AdviceSheet;
import plumbrow.documents.binder.Binder;

/** Writes the advice of a season down, to print or to reckon with. */
@Command(name = "binder", description = "Weighs the season and writes the binder: pages to print, or a spreadsheet.")
final class BinderCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Parameters(paramLabel = "OUT", description = "OUT.pdf for the pages, OUT.xlsx for the spreadsheet.")
    private Path out = Path.of("");

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    BinderCommand(Screen screen) {
        this.screen = screen;
    }

    private record Written(String binder, int year, int fields) {}

    @Override
    public Integer call() {
        String name = out.toString().toLowerCase(Locale.ROOT);
        boolean pages = name.endsWith(".pdf");
        if (!pages && !name.endsWith(".xlsx")) {
            throw new BadInputException("The binder's name is '" + out + "'; expected one that ends in .pdf or .xlsx.");
        }
        Season season = from.season();
        Advice advice = FieldsBar.show(
                screen, season.fields().size(), bar -> Adviser.advise(season, WeighingOptions.DEFAULT, bar));
        if (pages) {
            Binder.write(season, advice, recordHead(), from::weather, out);
        } else {
            AdviceSheet.write(season, advice, out);
        }
        screen.say(
                json
                        ? Json.of(new Written(
                                out.toString(), season.year(), season.fields().size()))
                        : "The binder for " + season.year() + " is in " + out + ".");
        return WeighCommand.code(advice);
    }

    private String recordHead() {
        try (Book book = Book.open(from.file())) {
            return book.head().text();
        }
    }
}
