package plumbrow.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.command.said.AskWords;
import plumbrow.app.json.Json;

/** What to tell or look up next, field by field. */
@Command(
        name = "next",
        description = "What to tell or look up next on each field, by what knowing it is worth there.",
        footer = {
            "",
            "Worth is the expected gain from choosing after knowing, above choosing now; values don't add up.",
            "Exit: 0 good, 2 bad input."
        })
final class NextCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", description = "Only this field; may be given more than once.")
    private List<String> names = List.of();

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    NextCommand(Screen screen) {
        this.screen = screen;
    }

    /** What to tell next on one field. */
    record OfField(String field, NextInputs next) {}

    @Override
    public Integer call() {
        Season season = from.season();
        List<Field> fields = FromBook.fields(season, names);
        OwnSeasons own = OwnSeasons.of(season);
        WeighingOptions options = WeighingOptions.DEFAULT;
        DrawSource source = new DrawSource(options.draws(), options.seed());
        List<OfField> all = FieldsBar.show(screen, fields.size(), bar -> {
            List<OfField> found = new ArrayList<>();
            for (Field field : fields) {
                found.add(new OfField(field.name(), Adviser.next(own.of(field), options, source)));
                bar.done(found.size(), fields.size());
            }
            return found;
        });
        screen.say(json ? Json.of(all) : said(all));
        return Exit.GOOD;
    }

    private static String said(List<OfField> all) {
        StringBuilder text = new StringBuilder();
        all.forEach(one -> text.append(AskWords.next(one.field(), one.next())).append('\n'));
        return text.toString();
    }
}
