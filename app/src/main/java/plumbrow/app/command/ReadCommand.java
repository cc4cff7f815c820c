package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;
import plumbrow.app.command.said.LabelWords;
import plumbrow.app.command.said.SheetWords;
import plumbrow.app.json.Json;
import plumbrow.app.json.LabelRead;
import plumbrow.app.json.SheetRead;
import plumbrow.documents.apart.ApartReader;
import plumbrow.documents.apart.PaperValues;
import plumbrow.documents.paper.PaperTrouble;
import plumbrow.documents.reading.PaperSort;

/** Reads safety data sheets and labels and says what stands on them, and where. */
@Command(
        name = "read",
        description =
                "Reads safety data sheets and labels (PDF, text, web page): each value with its page and what is missing.",
        footer = {"", "Exit: 0 where at least one file could be read, 2 where none could."})
final class ReadCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Files to read.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Answer as JSON, with the boxes on the pages.")
    private boolean json;

    @Option(
            names = "--as",
            paramLabel = "label|sheet",
            converter = SortWord.class,
            description =
                    "Read every file as a label, or as a safety data sheet; without it each is told by what it says.")
    private @Nullable PaperSort sort;

    /** Turns the word of the command line into a sort of paper. */
    static final class SortWord implements ITypeConverter<PaperSort> {
        @Override
        public PaperSort convert(String word) {
            return switch (word) {
                case "label" -> PaperSort.LABEL;
                case "sheet" -> PaperSort.SHEET;
                default -> throw new TypeConversionException("'" + word + "' is neither label nor sheet");
            };
        }
    }

    ReadCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        List<Record> read = new ArrayList<>();
        List<SheetRead> sheets = new ArrayList<>();
        List<LabelRead> labels = new ArrayList<>();
        try (ApartReader reader = new ApartReader()) {
            for (Path file : files) {
                read.add(read(reader, file, sheets, labels));
            }
        }
        if (json) {
            screen.say(Json.of(read));
        } else {
            if (!sheets.isEmpty()) {
                screen.say(SheetWords.read(sheets));
            }
            if (!labels.isEmpty()) {
                screen.say(LabelWords.read(labels));
            }
        }
        return sheets.isEmpty() && labels.isEmpty() ? Exit.BAD_INPUT : Exit.GOOD;
    }

    private Record read(ApartReader reader, Path file, List<SheetRead> sheets, List<LabelRead> labels) {
        String name = file.toString();
        try {
            PaperValues values = reader.values(file, sort);
            if (values instanceof PaperValues.Label read) {
                LabelRead label = LabelRead.of(name, read.label());
                labels.add(label);
                return label;
            }
            SheetRead sheet = SheetRead.of(name, ((PaperValues.Sheet) values).sheet());
            sheets.add(sheet);
            return sheet;
        } catch (PaperTrouble trouble) {
            String sentence = String.valueOf(trouble.getMessage());
            screen.complain(sentence);
            return SheetRead.failed(name, sentence);
        }
    }
}
