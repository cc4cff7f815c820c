package plumbrow.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.binder.Binders;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.AdviceWords;
import plumbrow.app.demo.DemoBook;
import plumbrow.app.demo.DemoPapers;
import plumbrow.app.demo.DemoWeather;
import plumbrow.app.json.Json;
import plumbrow.app.papers.Intake;
import plumbrow.app.papers.PaperDesk;
import plumbrow.app.weather.WeatherIntake;
import plumbrow.app.weather.Zones;
import plumbrow.documents.weather.WeatherFile;

/** An invented season from workbook to binder, to look around in. */
@Command(
        name = "demo",
        description = "Makes a book of invented farms, weighs it, writes its binder, and opens the desk on it.",
        footer = {
            "",
            "A demo book that is there already is used as it stands.",
            "Exit: 0 good, 1 nothing can be advised, 2 bad input."
        })
final class DemoCommand implements Callable<Integer> {
    private final Screen screen;
    private final DeskDoor door;

    @Option(names = "--folder", paramLabel = "DIR", description = "Where it is put; else ./demo.")
    private Path folder = Path.of("demo");

    @Option(names = "--once", description = "Stop after writing; don't open the desk.")
    private boolean once;

    @Option(names = "--port", paramLabel = "N", description = "Where the desk listens; else 8040. 0 takes a free one.")
    private int port = Serving.PORT;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    DemoCommand(Screen screen, DeskDoor door) {
        this.screen = screen;
        this.door = door;
    }

    @Override
    public Integer call() {
        Serving.demandPort(port);
        Path file = folder.resolve("demo.book");
        Season season = season(file);
        Advice advice = FieldsBar.show(
                screen, season.fields().size(), bar -> Adviser.advise(season, WeighingOptions.DEFAULT, bar));
        List<Path> files = new ArrayList<>();
        try (Binders binders = Binders.open(file)) {
            for (Map.Entry<String, List<Field>> own :
                    Binders.byGrower(season, season.fields()).entrySet()) {
                Advice of = Binders.of(advice, own.getValue());
                Path binder = Binders.named(folder.resolve("binder.pdf"), own.getKey(), files);
                Path sheet = Binders.named(folder.resolve("advice.xlsx"), own.getKey(), files);
                binders.pages(season, of, false, binder);
                binders.sheet(season, of, sheet);
                files.addAll(List.of(binder, sheet));
            }
        }
        screen.say(json ? Json.of(advice) : AdviceWords.of(advice, Map.of()));
        if (!json) {
            screen.say(
                    "\nThe farms, people and products are invented. In " + folder
                            + ": workbook (what went in), papers, weather, demo.book, and for each grower a binder (PDF) and the advice as a spreadsheet.");
        }
        screen.out().flush();
        if (once) {
            return WeighCommand.code(advice);
        }
        Screen rest = json ? new Screen(screen.err(), screen.err(), screen.terminal()) : screen;
        return Serving.untilStopped(rest, door, file, port, json);
    }

    private void weather(Book book, Season season) throws IOException {
        List<Path> files = DemoWeather.writeTo(folder.resolve("weather"));
        for (int i = 0; i < files.size(); i++) {
            String place = DemoWeather.PLACES.get(i);
            WeatherIntake.take(
                    book,
                    String.valueOf(files.get(i).getFileName()),
                    WeatherFile.bytes(files.get(i)),
                    WeatherIntake.asked(
                            season,
                            place,
                            Zones.of(season, place),
                            null,
                            null,
                            null,
                            null,
                            null,
                            "invented for the demo"),
                    Instant.now());
        }
    }

    private Season season(Path file) {
        if (Files.exists(file)) {
            try (Book book = Book.open(file)) {
                return book.latestSeason()
                        .orElseThrow(() -> new BadInputException(
                                "The book " + file + " holds no season; remove it and run the demo again."));
            }
        }
        try {
            Path workbook = folder.resolve("workbook");
            NewFile.demandFree(workbook);
            DemoBook.copyTo(workbook);
        } catch (IOException fault) {
            throw new BadInputException("The folder " + folder + " can't be written to; name another with --folder.");
        }
        Season season = DemoBook.season();
        try (Book book = Book.create(file);
                PaperDesk desk = new PaperDesk()) {
            book.put(season);
            Intake.add(
                    Intake.Into.book(book),
                    desk,
                    DemoPapers.writeTo(folder.resolve("papers")),
                    Instant.now(),
                    done -> {});
            weather(book, season);
        } catch (IOException fault) {
            throw new BadInputException("The folder " + folder + " can't be written to; name another with --folder.");
        }
        return season;
    }
}
