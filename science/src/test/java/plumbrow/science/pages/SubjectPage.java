package plumbrow.science.pages;

import static plumbrow.science.pages.Markdown.code;
import static plumbrow.science.pages.Markdown.head;
import static plumbrow.science.pages.Markdown.item;
import static plumbrow.science.pages.Markdown.row;
import static plumbrow.science.pages.Markdown.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.science.Figures;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Example;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Output;
import plumbrow.science.figure.Subject;
import plumbrow.science.reference.Sources;

/** The manual's page of one subject: each figure from its declaration, and its first example worked in full. */
final class SubjectPage {
    private SubjectPage() {}

    /** The name of the page's file, without its ending. */
    static String file(Subject subject) {
        return subject.name().toLowerCase(Locale.ROOT);
    }

    /** The list of subjects with their figures' questions. */
    static String index() {
        StringBuilder page = new StringBuilder("# Figures\n\n")
                .append(
                        "Every figure of the science, by subject. Each answers one question, shows its arithmetic and names")
                .append(
                        " its source. The same figure is called by `plumbrow figure ID key=value …`, stands as a form on the")
                .append(
                        " desk, and answers at `/api/figures/ID`. `plumbrow figure --search \"a question\"` finds one.\n\n")
                .append(
                        "These pages are written from the declarations in `science`; [checks](../checks.md) holds every value")
                .append(
                        " from outside that they are held against. The current label is the law; no figure decides alone.\n");
        for (Subject subject : Subject.values()) {
            page.append("\n## [")
                    .append(subject.title())
                    .append("](")
                    .append(file(subject))
                    .append(".md)\n\n");
            of(subject)
                    .forEach(figure -> page.append(item("[" + figure.id() + "](" + file(subject) + ".md#" + figure.id()
                            + "): " + words(figure.question()))));
        }
        return page.toString();
    }

    static String markdown(Subject subject) {
        String figures = of(subject).stream().map(SubjectPage::figure).collect(Collectors.joining("\n"));
        return "# " + subject.title() + "\n\n"
                + "Written from the declarations in `science`. [All figures](README.md), [checks](../checks/"
                + file(subject)
                + ".md).\n\n"
                + figures;
    }

    private static List<Figure> of(Subject subject) {
        return Figures.all().stream()
                .filter(figure -> figure.subject() == subject)
                .toList();
    }

    private static String figure(Figure figure) {
        StringBuilder page = new StringBuilder("## " + figure.id() + "\n\n**" + words(figure.question()) + "**\n\n");
        if (!figure.alsoAsked().isEmpty()) {
            page.append("Also asked: ")
                    .append(words(String.join(" ", figure.alsoAsked())))
                    .append("\n\n");
        }
        page.append(head("give", "meaning", "unit", "range", "such as"));
        figure.inputs()
                .forEach(input -> page.append(row(List.of(
                        code(input.key()),
                        meaning(input),
                        words(input.unit()),
                        words(range(input)),
                        code(input.example())))));
        page.append('\n').append(head("get", "meaning", "unit"));
        figure.outputs()
                .forEach(output -> page.append(row(List.of(
                        code(output.key()),
                        words(output.label()) + (output.always() ? "" : " (for some inputs)"),
                        words(output.unit())))));
        page.append("\nFormula:\n\n    ").append(figure.formula()).append("\n\n");
        page.append(item("Source: " + words(Sources.full(figure.cited())) + " ("
                + figure.status().words() + ")"));
        page.append(item("Holds for: " + words(figure.validity())));
        figure.cautions().forEach(caution -> page.append(item("Mind: " + words(caution))));
        return page.append(example(figure)).toString();
    }

    private static String example(Figure figure) {
        Example example = figure.examples().get(0);
        Answer answer = figure.answer(example.inputs());
        StringBuilder page = new StringBuilder("\nWorked example, ")
                .append(words(Sources.brief(example.cited())))
                .append(" (")
                .append(example.status().words())
                .append("):\n\n    plumbrow figure ")
                .append(figure.id());
        example.inputs()
                .forEach(
                        (key, value) -> page.append(' ').append(key).append('=').append(quoted(value)));
        page.append("\n\n");
        answer.working()
                .forEach(step -> page.append("1. ").append(words(step.text())).append('\n'));
        page.append('\n');
        figure.outputs().stream()
                .filter(output -> answer.outputs().containsKey(output.key()))
                .forEach(output -> page.append(item(result(output, answer.outputs()))));
        int more = figure.examples().size() - 1;
        if (more > 0) {
            page.append("\n%d more worked example%s in [checks](../checks/%s.md).%n"
                    .formatted(more, more == 1 ? "" : "s", file(figure.subject()))
                    .replace("\r", ""));
        }
        return page.toString();
    }

    private static String result(Output output, Map<String, Object> answers) {
        return words((output.label() + ": " + shown(answers.get(output.key())) + " " + output.unit()).strip());
    }

    private static String shown(@Nullable Object value) {
        if (value instanceof Double number) {
            return Numbers.plain(number);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(SubjectPage::shown).collect(Collectors.joining(", "));
        }
        return String.valueOf(value);
    }

    private static String meaning(Input input) {
        return words(input.label()) + (input.required() ? "" : " (may be left out)");
    }

    private static String range(Input input) {
        String fallback = input.fallback() == null ? "" : "; else " + input.fallback();
        return switch (input.kind()) {
            case WORD -> String.join(", ", input.choices()) + fallback;
            case TEXT -> "text" + fallback;
            case NUMBER -> input.range().words() + fallback;
            case LIST -> "list, each " + input.range().words() + fallback;
            case TABLE -> "rows, each " + input.range().words() + fallback;
        };
    }

    /** Semicolons and blanks mean something to the shell. */
    private static String quoted(String value) {
        return value.matches("[\\w.,:+-]*") ? value : "'" + value + "'";
    }
}
