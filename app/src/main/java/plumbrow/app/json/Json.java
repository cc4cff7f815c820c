package plumbrow.app.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plumbrow.advice.text.TextRule;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Step;
import plumbrow.science.reference.Sources;
import tools.jackson.core.JacksonException;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;

/**
 * Answers as JSON text: keys in small letters with their units, in the order of the records; numbers at full precision;
 * fixed lists by their words; what is unknown as null. The same answer gives the same text to the letter.
 */
public final class Json {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .addModule(JsonShapes.module())
            .build()
            .writer()
            .with(printer());

    private static final JsonMapper READER = JsonMapper.builder().build();

    private Json() {}

    /** Advice, a field's advice, a finding, a choice, a season summary or another record of the desk. */
    public static String of(Record value) {
        return write(value);
    }

    public static String of(List<? extends Record> values) {
        return write(values);
    }

    /** Plain maps, lists, words and numbers as they are, keys as they are spelled. */
    public static String plain(Map<String, ?> values) {
        return write(values);
    }

    /** {@code {"figure": id, "outputs": {…}, "working": ["step", …], "source": "…", "cautions": […]}}. */
    public static String of(Answer answer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("figure", answer.figure().id());
        json.put("outputs", answer.outputs());
        json.put("working", answer.working().stream().map(Step::text).toList());
        json.put("source", Sources.full(answer.figure().cited()));
        json.put("cautions", answer.cautions());
        return write(json);
    }

    /** Every figure with its subject and question. */
    public static String index(List<Figure> figures) {
        return of(figures.stream()
                .map(figure -> new Entry(figure.id(), figure.subject().title(), figure.question()))
                .toList());
    }

    /**
     * A JSON object of plain values, as a program sends it.
     *
     * @throws IllegalArgumentException with a sentence, where it is none
     */
    public static Map<String, Object> object(String text) {
        try {
            Map<String, Object> values = new LinkedHashMap<>();
            READER.readTree(text)
                    .properties()
                    .forEach(property -> values.put(
                            property.getKey(),
                            property.getValue().isNull()
                                    ? ""
                                    : property.getValue().asString()));
            return values;
        } catch (JacksonException | IllegalStateException wrong) {
            throw new IllegalArgumentException(
                    "What came is no JSON object of plain values, such as {\"field\": \"East 80\"}.", wrong);
        }
    }

    private record Entry(String figure, String subject, String question) {}

    private static String write(Object value) {
        return seen(WRITER.writeValueAsString(value));
    }

    /** Characters that a terminal obeys are written by their number; outside of words there are none. */
    private static String seen(String json) {
        if (json.codePoints().noneMatch(c -> c != '\n' && TextRule.hidden(c))) {
            return json;
        }
        StringBuilder seen = new StringBuilder();
        json.codePoints()
                .forEach(c -> seen.append(
                        c != '\n' && TextRule.hidden(c)
                                ? String.format(Locale.ROOT, "\\u%04x", c)
                                : Character.toString(c)));
        return seen.toString();
    }

    /** One value on a line; the line ends do not depend on the machine. */
    private static DefaultPrettyPrinter printer() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(lines);
        printer.indentArraysWith(DefaultPrettyPrinter.FixedSpaceIndenter.instance());
        return printer;
    }
}
