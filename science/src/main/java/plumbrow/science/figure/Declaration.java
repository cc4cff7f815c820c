package plumbrow.science.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A figure while it is being written down, in the order in which a handbook page is read: the question, what it needs,
 * what it answers, the formula, where it comes from, where it holds, worked examples, and last the function.
 */
public final class Declaration {
    private final String id;
    private final Subject subject;
    private final List<String> alsoAsked = new ArrayList<>();
    private final List<Input> inputs = new ArrayList<>();
    private final List<Output> outputs = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final List<Example> examples = new ArrayList<>();
    private @Nullable String question;
    private @Nullable String formula;
    private @Nullable String cited;
    private @Nullable Status status;
    private @Nullable String validity;

    Declaration(String id, Subject subject) {
        this.id = id;
        this.subject = subject;
    }

    /** What it answers, as a person would ask it. */
    public Declaration question(String sentence) {
        question = sentence;
        return this;
    }

    /** The same question in other words; the figure is found by them too. */
    public Declaration alsoAsked(String words) {
        alsoAsked.add(words);
        return this;
    }

    /** One thing it needs, in the order of asking. */
    public Declaration input(Input input) {
        inputs.add(input);
        return this;
    }

    /** One thing it always answers, in the order of showing. */
    public Declaration output(String key, String label, String unit) {
        outputs.add(new Output(key, label, unit, true));
        return this;
    }

    /** One thing it answers only for some inputs; the validity says for which. */
    public Declaration sometimes(String key, String label, String unit) {
        outputs.add(new Output(key, label, unit, false));
        return this;
    }

    public Declaration formula(String notation) {
        formula = notation;
        return this;
    }

    /** Where the formula comes from, printed sources by their key in brackets, and how well that is backed. */
    public Declaration source(String citation, Status backing) {
        cited = citation;
        status = backing;
        return this;
    }

    /** Where it holds and what happens outside. */
    public Declaration validity(String sentences) {
        validity = sentences;
        return this;
    }

    /** A sentence that always stands beside the answer. */
    public Declaration caution(String sentence) {
        cautions.add(sentence);
        return this;
    }

    /**
     * A worked example with an answer from outside this code.
     *
     * @param typed the inputs as typed on one line, {@code key=value key=value}
     * @param expected the answers as printed there; each number is met within one in its last printed digit
     * @param citation where they come from, printed sources by their key in brackets
     */
    public Declaration example(String typed, String expected, String citation, Status backing) {
        examples.add(Example.of(typed, expected, citation, backing));
        return this;
    }

    /** The function, which completes the page. A page with a part missing is a fault of its author. */
    public Figure model(Model model) {
        return new Figure(
                unique(id),
                subject,
                written("question", question),
                alsoAsked,
                inputs,
                outputs,
                written("formula", formula),
                written("source", cited),
                written("status", status),
                written("validity", validity),
                cautions,
                examples,
                model);
    }

    private String unique(String name) {
        Set<String> keys = new LinkedHashSet<>();
        inputs.forEach(input -> keys.add(input.key()));
        if (keys.size() != inputs.size()) {
            throw new IllegalStateException(name + ": an input is declared twice");
        }
        return name;
    }

    private <T> T written(String part, @Nullable T value) {
        if (value == null) {
            throw new IllegalStateException(id + ": the declaration has no " + part);
        }
        return value;
    }
}
