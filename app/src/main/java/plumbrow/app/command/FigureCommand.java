package plumbrow.app.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.app.command.said.FigureWords;
import plumbrow.app.json.Json;
import plumbrow.science.FigureSearch;
import plumbrow.science.Figures;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;

/** Answers one figure of the science, shows what it needs, finds those that answer a question, or lists them all. */
@Command(
        name = "figure",
        description = {
            "Answers one figure with its working; shows what a figure needs; finds the figures that answer a question; or"
                    + " lists them all."
        })
final class FigureCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(
            arity = "0..*",
            paramLabel = "ID [key=value…]",
            hideParamSyntax = true,
            description = "The figure and its inputs. Lists: key=1,2,3. Tables: key='1,2;3,4'.")
    private List<String> words = new ArrayList<>();

    @Option(
            names = "--search",
            paramLabel = "QUESTION",
            description = "The figures that answer a question in your words, nearest first.")
    private @Nullable String question;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    FigureCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        if (question != null) {
            search(question);
            return Exit.GOOD;
        }
        if (words.isEmpty()) {
            screen.say(json ? Json.index(Figures.all()) : FigureWords.list(Figures.all()));
            return Exit.GOOD;
        }
        String id = words.get(0);
        Figure figure = Figures.find(id).orElseThrow(() -> new BadInputException(unknown(id)));
        if (words.size() == 1) {
            screen.say(json ? Json.of(figure) : FigureWords.page(figure));
            return Exit.GOOD;
        }
        Answer answer = figure.answer(inputs(words.subList(1, words.size())));
        screen.say(json ? Json.of(answer) : FigureWords.answer(answer));
        return Exit.GOOD;
    }

    private void search(String asked) {
        if (!words.isEmpty()) {
            throw new BadInputException(
                    "--search takes one question in quotes; '" + words.get(0) + "' stands outside them");
        }
        List<Figure> found = FigureSearch.find(asked);
        screen.say(json ? Json.index(found) : FigureWords.nearest(asked, found));
    }

    private static Map<String, String> inputs(List<String> pairs) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String pair : pairs) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new BadInputException(
                        "'" + pair + "' is not an input; expected key=value, such as price_usd_bu=4.40");
            }
            String key = pair.substring(0, equals);
            if (inputs.put(key, pair.substring(equals + 1)) != null) {
                throw new BadInputException(key + " is given twice; expected once");
            }
        }
        return inputs;
    }

    private static String unknown(String id) {
        List<String> parts = Arrays.asList(id.toLowerCase(Locale.ROOT).split("[^a-z0-9]+", -1));
        String near = Figures.all().stream()
                .map(Figure::id)
                .filter(known -> Arrays.stream(known.split("-", -1)).anyMatch(parts::contains))
                .limit(6)
                .collect(Collectors.joining(", "));
        return "There is no figure '" + id + "'; "
                + (near.isEmpty() ? "plumbrow figure lists them all." : "did you mean " + near + "?");
    }
}
