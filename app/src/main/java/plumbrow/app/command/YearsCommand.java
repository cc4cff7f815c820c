package plumbrow.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.years.Ahead;
import plumbrow.advice.years.Rotation;
import plumbrow.advice.years.YearsAhead;
import plumbrow.advice.years.YearsOptions;
import plumbrow.app.command.said.YearsWords;
import plumbrow.app.json.Json;

/** Looks ahead over several seasons of a field. */
@Command(
        name = "years",
        description = "Says where the programs of a field lead over several seasons: weed seed, resistance, margin.",
        footer = {
            "",
            "Several --program follow each other year by year. A program of another field stands in for a crop that this one"
                    + " has no program for: --program \"Field: Program\". Without --program every program is repeated.",
            "",
            "Exit: 0 good, 1 where none of them can be advised, 2 bad input."
        })
final class YearsCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", required = true, description = "The field.")
    private String field = "";

    @Option(
            names = "--program",
            paramLabel = "NAME",
            description = "A program of the rotation, in the order of the years; again for the next year.")
    private List<String> programs = new ArrayList<>();

    @Option(names = "--seasons", paramLabel = "N", description = "Seasons to look at, 1 to 20; else 10.")
    private int seasons = YearsOptions.SEASONS;

    @Option(
            names = "--discount",
            paramLabel = "PCT",
            description = "What a dollar loses in a year, 0 to 50 percent; else 5 (common practice, no source).")
    private double discountPct = YearsOptions.DISCOUNT_PCT;

    @Option(
            names = "--after-break",
            paramLabel = "PCT",
            description =
                    "Pressure of insects that wait in the field in the first year after another crop, 0 to 100 percent;"
                            + " else 10 (common practice, no source).")
    private double afterBreakPct = YearsOptions.DEFAULT.pressureAfterBreakPct();

    @Option(names = "--draws", paramLabel = "N", description = "Draws, 100 to 100,000; else 1,000.")
    private int draws = YearsOptions.DEFAULT.draws();

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    YearsCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        YearsOptions options = options();
        Season season = from.season();
        Field asked = FromBook.fields(season, List.of(field)).get(0);
        List<Rotation> rotations =
                programs.isEmpty() ? Ahead.repeated(season, asked) : List.of(Rotation.named(season, asked, programs));
        YearsAhead ahead = Ahead.of(season, asked, rotations, options);
        screen.say(json ? Json.of(ahead) : YearsWords.of(ahead));
        return ahead.best() == null ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private YearsOptions options() {
        try {
            return YearsOptions.DEFAULT
                    .withSeasons(seasons)
                    .withDraws(draws)
                    .withDiscountPct(discountPct)
                    .withPressureAfterBreakPct(afterBreakPct);
        } catch (IllegalArgumentException range) {
            throw new BadInputException(String.valueOf(range.getMessage()));
        }
    }
}
