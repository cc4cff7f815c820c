package plumbrow.app.desk.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plumbrow.app.desk.shown.Shown;
import plumbrow.science.figure.Answer;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.FigureInputException;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Output;

/**
 * A figure as a form: what was typed, and the answer, what is still missing, or what can't be used.
 *
 * @param typed by key
 * @param missing labels of required inputs that are still empty; with these the figure isn't asked yet
 * @param faultKey the input at fault, empty where it is all of them together
 */
public record FigureForm(
        Figure figure,
        Map<String, String> typed,
        List<String> missing,
        @Nullable Answer answer,
        String fault,
        String faultKey) {

    static FigureForm of(Figure figure, Map<String, String> sent) {
        Map<String, String> typed = new LinkedHashMap<>();
        sent.forEach((key, text) -> {
            if (!text.isBlank()) {
                typed.put(key, text);
            }
        });
        List<String> missing = figure.inputs().stream()
                .filter(input -> input.required() && !typed.containsKey(input.key()))
                .map(Input::label)
                .toList();
        if (!missing.isEmpty()) {
            return new FigureForm(figure, typed, missing, null, "", "");
        }
        try {
            return new FigureForm(figure, typed, List.of(), figure.answer(asTyped(figure, typed)), "", "");
        } catch (FigureInputException fault) {
            return new FigureForm(figure, typed, List.of(), null, Shown.text(fault.getMessage()), fault.key());
        }
    }

    /** The address of this figure with its example filled in. */
    public String exampleAddress() {
        Map<String, String> example = new LinkedHashMap<>();
        for (Input input : figure.inputs()) {
            if (input.required()) {
                example.put(input.key(), input.example());
            }
        }
        if (!figure.examples().isEmpty()) {
            example = figure.examples().get(0).inputs();
        }
        return "/figures/" + Shown.part(figure.id()) + "?"
                + example.entrySet().stream()
                        .map(given -> Shown.part(given.getKey()) + "=" + Shown.part(given.getValue()))
                        .collect(Collectors.joining("&"));
    }

    public String typed(Input input) {
        return typed.getOrDefault(input.key(), "");
    }

    /** What the answer was worked from, typed or taken where it was left out: on paper the boxes are not seen. */
    public Map<Input, String> given() {
        Map<Input, String> given = new LinkedHashMap<>();
        for (Input input : figure.inputs()) {
            String text = typed.getOrDefault(input.key(), input.fallback());
            if (text != null) {
                given.put(input, text);
            }
        }
        return given;
    }

    /** What is wrong with one input; empty where nothing is. */
    public String fault(Input input) {
        return input.key().equals(faultKey) ? fault : "";
    }

    /** The place of the input at fault, from 0; −1 where the fault is of none alone. */
    public int faultAt() {
        return figure.inputs().stream().map(Input::key).toList().indexOf(faultKey);
    }

    /** Whether some input is a list or table, which may be longer than an address. */
    public boolean longInputs() {
        return figure.inputs().stream().anyMatch(FigureForm::rows);
    }

    public static boolean rows(Input input) {
        return input.kind() == Input.Kind.LIST || input.kind() == Input.Kind.TABLE;
    }

    /** An answer as it is shown. */
    public String shown(Output output) {
        Object value = answer == null ? null : answer.outputs().get(output.key());
        if (value instanceof List<?> list) {
            return list.stream().map(FigureForm::one).collect(Collectors.joining(", "));
        }
        return one(value);
    }

    /** What the page must renew beside the answer: the faults of the boxes, by id. */
    public String renewed() {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < figure.inputs().size(); i++) {
            ids.add("#e" + i);
        }
        return String.join(",", ids);
    }

    private static String one(@Nullable Object value) {
        return value instanceof Double number ? Numbers.plain(number) : String.valueOf(value);
    }

    /** Rows pasted from a spreadsheet come with tabs and line ends; figures take commas and semicolons. */
    private static Map<String, String> asTyped(Figure figure, Map<String, String> typed) {
        Map<String, String> texts = new LinkedHashMap<>(typed);
        for (Input input : figure.inputs()) {
            if (rows(input)) {
                String between = input.kind() == Input.Kind.TABLE ? ";" : ",";
                texts.computeIfPresent(
                        input.key(),
                        (key, text) -> text.strip()
                                .replaceAll("\\s*[\\r\\n]+\\s*", between)
                                .replace('\t', ','));
            }
        }
        return texts;
    }
}
