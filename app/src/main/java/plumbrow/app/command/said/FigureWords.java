package plumbrow.app.command.said;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Output;
import plumbrow.science.figure.Step;
import plumbrow.science.figure.Subject;
import plumbrow.science.reference.Sources;

/** Figures said in text: the list of them, the page of one, and an answer. */
public final class FigureWords {
    private FigureWords() {}

    /** Every figure with its question, by subject. */
    public static String list(List<Figure> figures) {
        Paper paper = new Paper();
        for (Subject subject : Subject.values()) {
            TextTable table = TextTable.empty().words("").words("");
            figures.stream()
                    .filter(figure -> figure.subject() == subject)
                    .forEach(figure -> table.row(figure.id(), figure.question()));
            if (table.hasRows()) {
                paper.heading(subject.title()).table(table);
            }
        }
        return paper.gap()
                .line(
                        "plumbrow figure ID shows what a figure needs; plumbrow figure ID key=value … answers it; --search finds one by a question.")
                .text();
    }

    /** The figures that answer a question, nearest first; or that there are none. */
    public static String nearest(String asked, List<Figure> figures) {
        Paper paper = new Paper();
        if (figures.isEmpty()) {
            return paper.line(
                            "No figure asks “" + asked.strip() + "”. Try fewer words; plumbrow figure lists them all.")
                    .text();
        }
        TextTable table = TextTable.empty().words("").words("");
        figures.forEach(figure -> table.row(figure.id(), figure.question()));
        return paper.table(table)
                .gap()
                .line("plumbrow figure ID shows what a figure needs.")
                .text();
    }

    /** What a figure needs, what it answers, its formula and where it comes from. */
    public static String page(Figure figure) {
        Paper paper = new Paper().heading(figure.question()).gap();
        TextTable inputs = TextTable.empty()
                .words("Give")
                .words("meaning")
                .words("unit")
                .words("range")
                .words("such as");
        for (Input input : figure.inputs()) {
            inputs.row(input.key() + optional(input), input.label(), input.unit(), range(input), input.example());
        }
        TextTable outputs = TextTable.empty().words("Get").words("meaning").words("unit");
        figure.outputs().forEach(output -> outputs.row(output.key(), output.label(), output.unit()));
        paper.table(inputs).gap().table(outputs);
        if (figure.inputs().stream().anyMatch(input -> !input.required())) {
            paper.gap().line("? may be left out.");
        }
        paper.gap().prose("Formula  ", figure.formula());
        paper.prose("Holds    ", figure.validity());
        paper.prose(
                "Source   ",
                Sources.full(figure.cited()) + " (" + figure.status().words() + ")");
        cautions(paper, figure.cautions());
        return paper.gap()
                .line("Try: plumbrow figure " + figure.id() + " " + example(figure))
                .text();
    }

    /** The answers with their units, then the arithmetic, the source and the cautions. */
    public static String answer(Answer answer) {
        Paper paper = new Paper();
        TextTable table = TextTable.empty().words("").words("").words("");
        answer.outputs().forEach((key, value) -> {
            Output output = output(answer.figure(), key);
            table.row(output.label(), Paper.strong(shown(value)), output.unit());
        });
        paper.table(table);
        if (!answer.working().isEmpty()) {
            paper.heading("Working");
            for (Step step : answer.working()) {
                paper.prose("  ", step.text());
            }
        }
        paper.gap().prose("Formula ", answer.figure().formula());
        paper.prose(
                "Source  ",
                Sources.full(answer.figure().cited()) + " ("
                        + answer.figure().status().words() + ")");
        cautions(paper, answer.cautions());
        return paper.text();
    }

    private static void cautions(Paper paper, List<String> cautions) {
        cautions.forEach(caution -> paper.prose("Mind    ", caution));
    }

    private static Output output(Figure figure, String key) {
        return figure.outputs().stream()
                .filter(output -> output.key().equals(key))
                .findFirst()
                .orElse(new Output(key, key, "", true));
    }

    private static String shown(Object value) {
        if (value instanceof Double number) {
            return Numbers.plain(number);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(FigureWords::shown).collect(Collectors.joining(", "));
        }
        return value.toString();
    }

    private static String optional(Input input) {
        return input.required() ? "" : " ?";
    }

    private static String range(Input input) {
        String fallback = input.fallback() == null ? "" : ", else " + input.fallback();
        return switch (input.kind()) {
            case WORD -> String.join(" | ", input.choices()) + fallback;
            case TEXT -> "text" + fallback;
            case NUMBER -> input.range().words() + fallback;
            case LIST -> "list, " + input.range().words() + fallback;
            case TABLE -> "rows, " + input.range().words() + fallback;
        };
    }

    private static String example(Figure figure) {
        List<Input> needed = figure.inputs().stream().filter(Input::required).toList();
        List<Input> inputs = needed.isEmpty() ? figure.inputs() : needed;
        return inputs.stream()
                .map(input -> input.key() + "=" + quoted(input.example()))
                .collect(Collectors.joining(" "));
    }

    /** Semicolons and blanks mean something to the shell. */
    private static String quoted(String example) {
        return example.matches("[\\w.,+-]*") ? example : "'" + example + "'";
    }
}
