package plumbrow.science.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One model of the science, declared once: command, web form, endpoint, docs page and tests come from this.
 *
 * @param id the name by which it is called
 * @param subject where it is filed
 * @param question what it answers, as a person would ask it
 * @param alsoAsked the same question in other words, so that it is found by them
 * @param inputs what it needs, in the order of asking
 * @param outputs what it answers, in the order of showing
 * @param formula the formula in ordinary notation
 * @param cited where the formula comes from; printed sources by their key in brackets, see {@code Sources} of the reference data
 * @param status how well the formula is backed
 * @param validity where the formula holds and what happens outside
 * @param cautions sentences that always stand beside the answer
 * @param examples worked examples with answers from outside this code
 * @param model the function
 */
public record Figure(
        String id,
        Subject subject,
        String question,
        List<String> alsoAsked,
        List<Input> inputs,
        List<Output> outputs,
        String formula,
        String cited,
        Status status,
        String validity,
        List<String> cautions,
        List<Example> examples,
        Model model) {

    public Figure {
        alsoAsked = List.copyOf(alsoAsked);
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
        cautions = List.copyOf(cautions);
        examples = List.copyOf(examples);
    }

    /** Begins the page of a figure; the declaration ends with its model. */
    public static Declaration declare(String id, Subject subject) {
        return new Declaration(id, subject);
    }

    /**
     * Answers the figure for inputs as they were typed.
     *
     * @throws FigureInputException with one sentence naming the key, the value found and what is expected
     */
    public Answer answer(Map<String, String> typed) {
        Given given = InputReader.read(this, typed);
        Working working = new Working();
        Map<String, Object> answers = model.solve(given, working).values();
        List<String> said = new ArrayList<>(cautions);
        said.addAll(working.cautions());
        return new Answer(this, answers, working.steps(), said);
    }
}
