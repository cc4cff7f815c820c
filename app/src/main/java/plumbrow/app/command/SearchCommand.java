package plumbrow.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbrow.advice.field.Field;
import plumbrow.advice.search.Search;
import plumbrow.advice.search.SearchAnswer;
import plumbrow.advice.search.SearchOptions;
import plumbrow.advice.season.Season;
import plumbrow.app.book.Book;
import plumbrow.app.command.said.SearchWords;
import plumbrow.app.json.Json;

/** Searches all lawful programs that the shelf makes for a field. */
@Command(
        name = "search",
        description = "Finds the program that returns most among all lawful ones that the shelf makes for a field.",
        footer = {
            "",
            "Exit: 0 good, 1 where no program that may be advised is found for any field asked for, 2 bad input."
        })
final class SearchCommand implements Callable<Integer> {
    private final Screen screen;

    @Mixin
    private FromBook from = new FromBook();

    @Option(
            names = "--field",
            paramLabel = "NAME",
            arity = "1..*",
            required = true,
            description = "The fields to search for.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--draws",
            paramLabel = "N",
            description = "Draws of the assumptions, 100 to 1,000,000; else 10,000.")
    private int draws = SearchOptions.DEFAULT.draws();

    @Option(names = "--seed", paramLabel = "S", description = "Number from which all draws come.")
    private long seed = SearchOptions.DEFAULT.seed();

    @Option(names = "--sites", paramLabel = "N", description = "Sites of action on each driver weed; else 2.")
    private int sites = SearchOptions.DEFAULT.sites();

    @Option(names = "--mates", paramLabel = "N", description = "Most products in one tank, 1 to 4; else 2.")
    private int mates = SearchOptions.DEFAULT.mates();

    @Option(
            names = "--width",
            paramLabel = "USD",
            description = "Also find all within so many $/ac of the best; else 10.")
    private double width = SearchOptions.DEFAULT.widthUsdPerAcre();

    @Option(names = "--most", paramLabel = "N", description = "Programs weighed at most; else 20,000.")
    private int most = SearchOptions.DEFAULT.mostWeighed();

    @Option(names = "--take", description = "Put the best program into the season of the book, beside your own.")
    private boolean take;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    SearchCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        SearchOptions options = options();
        Season season = from.season();
        List<SearchAnswer> answers = new ArrayList<>();
        for (Field field : FromBook.fields(season, names)) {
            answers.add(Search.of(season, field, options));
        }
        if (take) {
            take(season, answers);
        }
        screen.say(json ? Json.of(answers) : SearchWords.of(answers, take));
        return answers.stream().anyMatch(answer -> answer.best() != null) ? Exit.GOOD : Exit.NOT_ADVISED;
    }

    private void take(Season searched, List<SearchAnswer> answers) {
        try (Book book = Book.open(from.file())) {
            book.changeHeld(held -> {
                held.demand(searched, "nothing was taken into it, search again");
                return with(held.written(), answers);
            });
        }
    }

    private static Season with(Season season, List<SearchAnswer> answers) {
        Season with = season;
        for (SearchAnswer answer : answers) {
            with = answer.best() == null ? with : Search.with(with, answer.best());
        }
        return with;
    }

    private SearchOptions options() {
        try {
            return new SearchOptions(draws, seed, most, width, sites, mates);
        } catch (IllegalArgumentException range) {
            throw new BadInputException(String.valueOf(range.getMessage()));
        }
    }
}
