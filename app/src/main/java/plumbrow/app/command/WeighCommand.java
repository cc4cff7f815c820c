package plumbrow.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.field.Field;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Advice;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.EqualRule;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.advice.years.BesideOneSeason;
import plumbrow.advice.years.LaterYears;
import plumbrow.advice.years.YearsOptions;
import plumbrow.app.command.said.AdviceWords;
import plumbrow.app.json.AdviceSummary;
import plumbrow.app.json.Json;

/** Weighs the programs of each field on the same draws of the assumptions and says which to take. */
@Command(
        name = "weigh",
        description = "Says for each field which program to take, with its odds and what would change it.",
        footer = {"", "Exit: 0 good, 1 where nothing can be advised for any of the fields asked for, 2 bad input."})
final class WeighCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--field", paramLabel = "NAME", arity = "1..*", description = "Only these fields.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--draws",
            paramLabel = "N",
            description = "Draws of the assumptions, 100 to 1,000,000; else 10,000.")
    private int draws = WeighingOptions.DEFAULT.draws();

    @Option(names = "--seed", paramLabel = "S", description = "Number from which all draws come.")
    private long seed = WeighingOptions.DEFAULT.seed();

    @Option(names = "--threads", paramLabel = "T", description = "Fields weighed at once; changes the time alone.")
    private @Nullable Integer threads;

    @Option(
            names = "--years",
            paramLabel = "N",
            description = "Count what each program leaves for the seasons after this one: N seasons with it, 2 to 20.")
    private @Nullable Integer years;

    @Option(
            names = "--discount",
            paramLabel = "PCT",
            description = "What a dollar loses in a year, with --years; else 5 percent (common practice, no source).")
    private double discountPct = YearsOptions.DISCOUNT_PCT;

    @Option(
            names = "--equal",
            paramLabel = "USD",
            description = "Least gain per acre worth an order; below it programs are about equal. Else 2.")
    private double equalUsd = EqualRule.DEFAULT.leastUsdPerAcre();

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    WeighCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        WeighingOptions options = options();
        Season season = from.season();
        List<Field> fields = FromBook.fields(season, names);
        Advice advice = fields.size() < season.fields().size()
                ? some(season, fields, options)
                : FieldsBar.show(screen, fields.size(), bar -> Adviser.advise(season, options, bar));
        Map<String, String> later = later(season, fields);
        screen.say(json ? Json.of(AdviceSummary.of(advice, later)) : AdviceWords.of(advice, later));
        return code(advice);
    }

    /** What the seasons to come make of it; not asked for where what they cost is in the margins already. */
    private Map<String, String> later(Season season, List<Field> fields) {
        return years != null
                ? Map.of()
                : fields.parallelStream()
                        .collect(Collectors.toMap(Field::name, field -> BesideOneSeason.orWhyNot(season, field)));
    }

    static int code(Advice advice) {
        return advice.fields().stream().anyMatch(field -> field.advised() != null) ? Exit.GOOD : Exit.NOT_ADVISED;
    }

    private static Advice some(Season season, List<Field> fields, WeighingOptions options) {
        List<FieldAdvice> answers = fields.stream()
                .map(field -> Adviser.adviseField(season, field, options))
                .toList();
        return new Advice(season.year(), season.asOf(), season.adviser(), options.draws(), options.seed(), answers);
    }

    private WeighingOptions options() {
        try {
            Integer asked = threads;
            WeighingOptions options =
                    WeighingOptions.DEFAULT.withDraws(draws).withSeed(seed).withEqual(new EqualRule(equalUsd));
            Integer seasons = years;
            WeighingOptions counted =
                    seasons == null ? options : options.withLater(new LaterYears(seasons, discountPct));
            return asked == null ? counted : counted.withThreads(asked);
        } catch (IllegalArgumentException range) {
            throw new BadInputException(String.valueOf(range.getMessage()));
        }
    }
}
