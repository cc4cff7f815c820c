package plumbrow.science.figure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Turns what a person typed into checked inputs, or says in one sentence what is wrong. */
final class InputReader {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final int MOST_CELLS = 100_000;

    private InputReader() {}

    static Given read(Figure figure, Map<String, String> typed) {
        for (String key : typed.keySet()) {
            if (figure.inputs().stream().noneMatch(input -> input.key().equals(key))) {
                String known = figure.inputs().stream().map(Input::key).collect(Collectors.joining(", "));
                throw new FigureInputException(
                        key, figure.id() + " has no input '" + shown(key) + "'; it takes " + known);
            }
        }
        Map<String, Object> values = new HashMap<>();
        Map<String, String> texts = new HashMap<>();
        for (Input input : figure.inputs()) {
            String text = typed.get(input.key());
            if (text == null || text.isBlank()) {
                if (input.required()) {
                    throw new FigureInputException(
                            input.key(), input.key() + " is missing; expected " + expected(input));
                }
                text = input.fallback();
            }
            if (text != null) {
                values.put(input.key(), value(input, text.strip()));
                texts.put(input.key(), text.strip());
            }
        }
        return new Given(values, texts);
    }

    private static Object value(Input input, String text) {
        return switch (input.kind()) {
            case NUMBER -> number(input, text, text);
            case LIST -> list(input, text, text);
            case TABLE -> table(input, text);
            case WORD -> word(input, text);
            case TEXT -> text;
        };
    }

    private static double number(Input input, String cell, String whole) {
        if (!NUMBER.matcher(cell).matches()) {
            throw fault(input, whole);
        }
        double value = Double.parseDouble(cell);
        if (!input.range().holds(value)) {
            throw fault(input, whole);
        }
        return value;
    }

    private static double[] list(Input input, String row, String whole) {
        String[] cells = row.split(",", -1);
        if (cells.length > MOST_CELLS) {
            throw new FigureInputException(input.key(), input.key() + " holds more than " + MOST_CELLS + " numbers");
        }
        double[] values = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            values[i] = number(input, cells[i].strip(), whole);
        }
        return values;
    }

    private static double[][] table(Input input, String text) {
        String[] rows = text.split(";", -1);
        double[][] table = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            table[i] = list(input, rows[i], text);
        }
        return table;
    }

    private static String word(Input input, String text) {
        if (input.choices().contains(text)) {
            return text;
        }
        List<String> alike = input.choices().stream()
                .filter(choice -> choice.equalsIgnoreCase(text))
                .toList();
        // Where two choices differ only by capitals, such as mPa and MPa, only the exact one will do.
        if (alike.size() != 1) {
            throw fault(input, text);
        }
        return alike.get(0);
    }

    private static FigureInputException fault(Input input, @Nullable String found) {
        return new FigureInputException(
                input.key(), input.key() + " is '" + shown(found) + "'; expected " + expected(input));
    }

    private static String expected(Input input) {
        String unit = input.unit().isEmpty() ? "" : " " + input.unit();
        String range =
                input.range().equals(Range.ANY) ? "" : ", " + input.range().words() + unit;
        return switch (input.kind()) {
            case NUMBER -> "a number" + (range.isEmpty() ? unit : range) + ", such as " + input.example();
            case LIST -> "numbers with commas between" + range + ", such as " + input.example();
            case TABLE ->
                "rows of numbers, commas between numbers and semicolons between rows"
                        + range
                        + ", such as "
                        + input.example();
            case WORD -> "one of " + String.join(", ", input.choices());
            case TEXT -> "a text such as " + input.example();
        };
    }

    static String shown(@Nullable String text) {
        if (text == null) {
            return "";
        }
        String oneLine = text.replaceAll("\\p{Cntrl}", " ");
        return oneLine.length() > 60 ? oneLine.substring(0, 57) + "…" : oneLine;
    }
}
