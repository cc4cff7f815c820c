package plumbrow.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.assumptions.DrawSource;
import plumbrow.advice.field.Field;
import plumbrow.advice.fieldplan.Decision;
import plumbrow.advice.fieldplan.FieldPlan;
import plumbrow.advice.fieldplan.FieldPlans;
import plumbrow.advice.season.Season;
import plumbrow.advice.weighing.Adviser;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.OwnSeason;
import plumbrow.advice.weighing.OwnSeasons;
import plumbrow.advice.weighing.SeasonGapException;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.FieldPlanWords;
import plumbrow.app.json.Json;
import plumbrow.app.weather.Decided;
import plumbrow.documents.binder.FieldPlanPaper;

/** What to do on one field, in date order. */
@Command(
        name = "field-plan",
        description = "What to do on one field, in date order: days, products, gear, distances, money, doubts.",
        footer = {"", "The current label is the law.", "Exit: 0 good, 1 where nothing may be put on yet, 2 bad input."})
final class FieldPlanCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Parameters(arity = "0..1", paramLabel = "OUT.pdf", description = "Writes the plan on one page, too.")
    private @Nullable Path out;

    @Option(names = "--field", paramLabel = "NAME", required = true, description = "The field.")
    private String name = "";

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    FieldPlanCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Path file = out;
        if (file != null && !file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new BadInputException("The plan's name is '" + file + "'; expected one that ends in .pdf.");
        }
        Season season = from.season();
        Field field = FromBook.fields(season, List.of(name)).get(0);
        FieldPlan plan = plan(season, field);
        if (file != null) {
            FieldPlanPaper.write(plan, file);
        }
        screen.say(json ? Json.of(plan) : FieldPlanWords.of(plan));
        return plan.program() == null || !plan.standing().advisable() ? Exit.NOT_ADVISED : Exit.GOOD;
    }

    private FieldPlan plan(Season season, Field field) {
        Decision decision = decision(season, field);
        OwnSeason own = OwnSeasons.of(season).of(field);
        WeighingOptions options = WeighingOptions.DEFAULT;
        FieldAdvice advice = null;
        NextInputs next = null;
        String gap = "";
        try {
            DrawSource source = new DrawSource(options.draws(), options.seed());
            advice = Adviser.adviseField(own, options, source);
            next = Adviser.next(own, options, source);
        } catch (SeasonGapException lacking) {
            gap = String.valueOf(lacking.getMessage());
        }
        return new FieldPlans(season).of(field, decision, advice, gap, Optional.ofNullable(next));
    }

    private @Nullable Decision decision(Season season, Field field) {
        try (Book book = Book.open(from.file())) {
            return Decided.decision(season, field, book.choices(season.year()));
        }
    }
}
