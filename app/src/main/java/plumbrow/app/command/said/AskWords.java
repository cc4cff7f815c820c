package plumbrow.app.command.said;

import java.util.List;
import plumbrow.advice.ask.AskAnswer;
import plumbrow.advice.ask.Question;
import plumbrow.advice.weighing.NextInput;
import plumbrow.advice.weighing.NextInputs;
import plumbrow.advice.weighing.WeighedProgram;
import plumbrow.app.json.AskSummary;
import plumbrow.science.figure.Numbers;

/** One question said in text: the answer, what it rests on, what to tell next, the boxes. */
public final class AskWords {
    private AskWords() {}

    /** The questions there are. */
    public static String questions(List<Question> questions) {
        Paper paper = new Paper();
        TextTable table = TextTable.empty().words("Question").words("asks").words("about");
        questions.forEach(question -> table.row(question.id(), question.asks(), question.about()));
        paper.table(table);
        return paper.text();
    }

    /** The answer to one. */
    public static String of(Question question, AskAnswer answer) {
        Paper paper = new Paper()
                .heading(question.asks())
                .gap()
                .prose(answer.sentence())
                .gap();
        paper.prose(answer.onTypical());
        if (!answer.notLookedUp().isEmpty()) {
            paper.prose(answer.notLookedUp());
        }
        TextTable table = TextTable.empty()
                .words("Program")
                .numbers("cost", "$/ac")
                .numbers("over baseline", "$/ac")
                .words("beats it in")
                .words("status");
        for (WeighedProgram program : answer.advice().programs()) {
            table.row(
                    program.name(),
                    FieldWords.whole(program.costUsdPerAcre()),
                    program.baseline() ? "" : FieldWords.whole(program.meanGainUsdPerAcre()),
                    program.baseline() ? "the baseline" : answer.advice().odds(program.chanceBeatsBaseline()),
                    program.standing().word());
        }
        paper.gap().table(table).gap();
        inputs(paper, answer.next());
        TextTable boxes = TextTable.empty().words("Box").words("what").words("expects");
        AskSummary.of(question)
                .boxes()
                .forEach(box -> boxes.row(
                        box.box(), box.label() + (box.unit().isEmpty() ? "" : ", " + box.unit()), box.expects()));
        return paper.gap().table(boxes).text();
    }

    /** What to tell next on a field. */
    public static String next(String field, NextInputs next) {
        Paper paper = new Paper().heading(field).gap();
        inputs(paper, next);
        return paper.text();
    }

    private static void inputs(Paper paper, NextInputs next) {
        if (next.inputs().isEmpty()) {
            paper.prose(next.says());
            return;
        }
        paper.prose("Tell me next:");
        for (NextInput input : next.inputs()) {
            paper.prose(Numbers.dollars(input.usdPerAcre(), 2) + "/ac  ", input.says());
        }
    }
}
