package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.command.said.SheetWords;
import plumbrow.app.json.Json;
import plumbrow.app.json.SheetRead;
import plumbrow.documents.apart.ApartReader;
import plumbrow.documents.paper.PaperTrouble;

/** Reads safety data sheets and says what stands on them, and where. */
@Command(
        name = "read",
        description = "Reads safety data sheets (PDF, text, web page): each value with its page and what is missing.",
        footer = {"", "Exit: 0 where at least one file could be read, 2 where none could."})
final class ReadCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Files to read.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Answer as JSON, with the boxes on the pages.")
    private boolean json;

    ReadCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<SheetRead> read = new ArrayList<>();
        try (ApartReader reader = new ApartReader()) {
            for (Path file : files) {
                read.add(read(reader, file));
            }
        }
        List<SheetRead> good =
                read.stream().filter(sheet -> sheet.trouble() == null).toList();
        read.forEach(sheet -> Optional.ofNullable(sheet.trouble()).ifPresent(screen.err()::println));
        if (json) {
            screen.say(Json.of(read));
        } else if (!good.isEmpty()) {
            screen.say(SheetWords.read(good));
        }
        return good.isEmpty() ? Exit.BAD_INPUT : Exit.GOOD;
    }

    private static SheetRead read(ApartReader reader, Path file) {
        try {
            return SheetRead.of(file.toString(), reader.sheet(file));
        } catch (PaperTrouble trouble) {
            return SheetRead.failed(file.toString(), String.valueOf(trouble.getMessage()));
        }
    }
}
