package plumbrow.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.field.Farm;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.binder.Binders;
import plumbrow.app.json.Json;

/** Writes the advice of a season down, to print or to reckon with. */
@Command(
        name = "binder",
        description = {
            "Writes the binder: farm page, field plans, load cards and product cards to print, or a spreadsheet.",
            "A file holds one grower's money: for several growers it writes one file each, with their names."
        },
        footer = {"", "Exit: 0 good, 1 where nothing can be advised for any of the fields asked for, 2 bad input."})
final class BinderCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Parameters(paramLabel = "OUT", description = "OUT.pdf for the pages, OUT.xlsx for the spreadsheet.")
    private Path out = Path.of("");

    @Option(names = "--farm", paramLabel = "NAME", description = "Only this farm; may be given more than once.")
    private List<String> farms = List.of();

    @Option(names = "--field", paramLabel = "NAME", description = "Only this field; may be given more than once.")
    private List<String> names = List.of();

    @Option(names = "--annex", description = "With odds, findings and workings of each field.")
    private boolean annex;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    BinderCommand(Screen screen) {
        this.screen = screen;
    }

    private record Written(String binder, List<String> files, int year, int fields) {}

    @Override
    public Integer call() {
        String name = out.toString().toLowerCase(Locale.ROOT);
        boolean pages = name.endsWith(".pdf");
        if (!pages && !name.endsWith(".xlsx")) {
            throw new BadInputException("The binder's name is '" + out + "'; expected one that ends in .pdf or .xlsx.");
        }
        Season season = from.season();
        List<Field> fields = fields(season);
        Advice advice = FieldsBar.show(
                screen, fields.size(), bar -> Adviser.advise(season.withFields(fields), WeighingOptions.DEFAULT, bar));
        List<Path> files = new ArrayList<>();
        Map<String, List<Field>> growers = Binders.byGrower(season, fields);
        try (Binders binders = Binders.open(from.file())) {
            growers.forEach((grower, own) -> {
                Path file = growers.size() == 1 ? out : Binders.named(out, grower, files);
                if (pages) {
                    binders.pages(season, Binders.of(advice, own), annex, file);
                } else {
                    binders.sheet(season, Binders.of(advice, own), file);
                }
                files.add(file);
            });
        }
        screen.say(
                json
                        ? Json.of(new Written(
                                out.toString(),
                                files.stream().map(Path::toString).toList(),
                                season.year(),
                                fields.size()))
                        : "The binder for " + season.year() + " is in "
                                + files.stream().map(Path::toString).collect(Collectors.joining(", ")) + ".");
        return WeighCommand.code(advice);
    }

    private List<Field> fields(Season season) {
        for (String farm : farms) {
            if (season.farm(farm).isEmpty()) {
                throw new BadInputException("There is no farm '" + farm + "' in " + season.year() + "; the farms are "
                        + season.farms().stream().map(Farm::name).collect(Collectors.joining(", ")) + ".");
            }
        }
        List<Field> fields = FromBook.fields(season, names).stream()
                .filter(field -> farms.isEmpty() || farms.contains(field.farm()))
                .toList();
        if (fields.isEmpty()) {
            throw new BadInputException(
                    farms.isEmpty()
                            ? "The season " + season.year() + " has no field to make a binder of."
                            : "No field of that name lies on " + String.join(", ", farms) + ".");
        }
        return fields;
    }
}
