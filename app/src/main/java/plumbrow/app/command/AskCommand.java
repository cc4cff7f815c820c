package plumbrow.app.command;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbrow.advice.ask.AskAnswer;
import plumbrow.advice.ask.Asking;
import plumbrow.advice.ask.Box;
import plumbrow.advice.ask.Question;
import plumbrow.advice.ask.Questions;
import plumbrow.advice.names.Near;
import plumbrow.advice.weighing.WeighingOptions;
import plumbrow.app.command.said.AskWords;
import plumbrow.app.json.AskSummary;
import plumbrow.app.json.Json;

/** One question about one field, answered from what is told and typical values. */
@Command(
        name = "ask",
        description = "Answers one question about one field, from typical values and whatever is told.",
        footer = {
            "",
            "Without QUESTION it lists the questions; with one and nothing told, its boxes stand below the answer.",
            "For example: plumbrow ask insecticide state=IA price=4.40 trait=one",
            "Exit: 0 good, 2 bad input."
        })
final class AskCommand implements Callable<Integer> {
    private final Screen screen;

    @Parameters(index = "0", arity = "0..1", paramLabel = "QUESTION", description = "Such as insecticide.")
    private @Nullable String id;

    @Parameters(index = "1..*", paramLabel = "BOX=VALUE", description = "What is told, such as state=IA.")
    private List<String> told = List.of();

    @Option(names = "--as-of", paramLabel = "DAY", description = "The day it is asked; else today.")
    private @Nullable LocalDate asOf;

    @Option(names = "--json", description = "Answer as JSON.")
    private boolean json;

    AskCommand(Screen screen) {
        this.screen = screen;
    }

    @Override
    public Integer call() {
        String asked = id;
        if (asked == null) {
            screen.say(
                    json
                            ? Json.of(
                                    Questions.all().stream().map(AskSummary::of).toList())
                            : AskWords.questions(Questions.all()));
            return Exit.GOOD;
        }
        Question question = Questions.find(asked).orElseThrow(() -> new BadInputException(noQuestion(asked)));
        LocalDate day = asOf;
        AskAnswer answer = Asking.answer(
                question,
                typed(question),
                day == null ? LocalDate.now(ZoneId.systemDefault()) : day,
                WeighingOptions.DEFAULT.draws());
        if (!answer.faults().isEmpty()) {
            throw new BadInputException(
                    String.join(System.lineSeparator(), answer.faults().values()));
        }
        screen.say(json ? Json.of(answer) : AskWords.of(question, answer));
        return Exit.GOOD;
    }

    private static String noQuestion(String asked) {
        List<String> ids = Questions.all().stream().map(Question::id).toList();
        return "There is no question '" + asked + "'; "
                + Near.to(asked, ids).map(near -> "did you mean " + near + "? ").orElse("")
                + "The questions are " + String.join(", ", ids) + ".";
    }

    private Map<String, String> typed(Question question) {
        List<String> boxes = question.boxes().stream().map(Box::id).toList();
        Map<String, String> typed = new LinkedHashMap<>();
        for (String one : told) {
            int equals = one.indexOf('=');
            String box = equals < 0 ? one : one.substring(0, equals).strip();
            if (equals < 0 || !boxes.contains(box)) {
                throw new BadInputException("Found '" + one + "'; expected BOX=VALUE with one of the boxes "
                        + String.join(", ", boxes)
                        + Near.to(box, boxes)
                                .map(near -> "; did you mean " + near + "?")
                                .orElse("."));
            }
            typed.put(box, one.substring(equals + 1));
        }
        return typed;
    }
}
