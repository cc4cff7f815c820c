package plumbrow.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.farmplan.FarmPlan;
import plumbrow.advice.farmplan.FarmPlanner;
import plumbrow.advice.farmplan.PlanOptions;
import plumbrow.advice.field.Farm;
import plumbrow.advice.season.Season;
import plumbrow.app.command.said.PlanWords;
import plumbrow.app.json.Json;

/** Plans farms: one program for each field under what they share. */
@Command(
        name = "plan",
        description =
                "Gives each field of a farm one program, so that all together bring most with the hours, money and "
                        + "quantities there are.",
        footer = {"", "Exit: 0 good, 1 where the limits of a farm clash, 2 bad input."})
final class PlanCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(names = "--farm", paramLabel = "NAME", arity = "1..*", description = "Only these farms.")
    private List<String> names = new ArrayList<>();

    @Option(names = "--scenarios", paramLabel = "N", description = "Seasons drawn, 100 to 5,000; else 500.")
    private int scenarios = PlanOptions.DEFAULT.scenarios();

    @Option(names = "--seed", paramLabel = "S", description = "Number from which all draws come.")
    private long seed = PlanOptions.DEFAULT.seed();

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    PlanCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        Season season = from.season();
        for (String name : names) {
            if (season.farm(name).isEmpty()) {
                throw new BadInputException("There is no farm '" + name + "' in " + season.year() + "; the farms are "
                        + season.farms().stream().map(Farm::name).collect(Collectors.joining(", ")) + ".");
            }
        }
        List<FarmPlan> plans = FarmPlanner.of(season, names, options());
        screen.say(json ? Json.of(plans) : PlanWords.of(plans));
        return plans.stream().allMatch(FarmPlan::possible) ? Exit.GOOD : Exit.NOT_ADVISED;
    }

    private PlanOptions options() {
        try {
            return new PlanOptions(scenarios, seed, true);
        } catch (IllegalArgumentException range) {
            throw new BadInputException(String.valueOf(range.getMessage()));
        }
    }
}
