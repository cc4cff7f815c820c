package plumbrow.advice.ask;

import java.util.List;
import java.util.Map;
import plumbrow.advice.weighing.FieldAdvice;
import plumbrow.advice.weighing.NextInputs;

/**
 * The answer to one question.
 *
 * @param question its id
 * @param typed what was typed, by box
 * @param faults what can't be read, by box: a typical value stands there meanwhile
 * @param sentence the answer by the money
 * @param notLookedUp what nobody has looked up, in one line; empty where there is nothing
 * @param onTypical what of it is only typical, in one line
 * @param next what to tell next
 * @param typicals the typical values in it, each with its words, by what they are of
 * @param boxes the box that tells an input, by the input
 * @param advice the weighing, as if what nobody has looked up had come out clear; the programs keep their standing
 */
public record AskAnswer(
        String question,
        String asks,
        Map<String, String> typed,
        Map<String, String> faults,
        String sentence,
        String notLookedUp,
        String onTypical,
        NextInputs next,
        List<Typical> typicals,
        Map<String, String> boxes,
        FieldAdvice advice) {
    /**
     * One typical value that stands in the answer.
     *
     * @param of what it is of
     * @param value as it is shown, with its unit
     * @param words source, year and status
     */
    public record Typical(String of, String value, String words) {}

    public AskAnswer {
        typicals = List.copyOf(typicals);
        boxes = Map.copyOf(boxes);
    }
}
