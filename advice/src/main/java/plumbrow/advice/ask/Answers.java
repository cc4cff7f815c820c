package plumbrow.advice.ask;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbrow.advice.assumptions.AssumptionLine;
import plumbrow.advice.assumptions.AssumptionQuantity;
import plumbrow.advice.field.Crop;
import plumbrow.advice.names.Near;
import plumbrow.science.figure.Numbers;

/**
 * What was typed into the boxes of a question.
 *
 * @param typed as it was typed, by the id of the box; empty boxes are left out
 * @param numbers what was read of it
 * @param choices the words chosen
 * @param days the days typed
 * @param faults what can't be read, by the id of the box; a typical value stands there meanwhile
 * @param own the book's assumptions for whole crops, which come before what is typical
 */
public record Answers(
        Map<String, String> typed,
        Map<String, Double> numbers,
        Map<String, String> choices,
        Map<String, LocalDate> days,
        Map<String, String> faults,
        List<AssumptionLine> own) {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,3}(,\\d{3})+|\\d+)?(\\.\\d+)?([eE]-?\\d+)?");
    private static final Pattern MONTH_DAY = Pattern.compile("(\\d{1,2})[/.](\\d{1,2})(?:[/.](\\d{4}))?");

    public Answers {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
        numbers = Map.copyOf(numbers);
        choices = Map.copyOf(choices);
        days = Map.copyOf(days);
        faults = Collections.unmodifiableMap(new LinkedHashMap<>(faults));
        own = List.copyOf(own);
    }

    /**
     * Reads the boxes of a question.
     *
     * @param year of days that are typed without one
     */
    static Answers read(List<Box> boxes, Map<String, String> given, int year) {
        Map<String, String> typed = new LinkedHashMap<>();
        Map<String, Double> numbers = new LinkedHashMap<>();
        Map<String, String> choices = new LinkedHashMap<>();
        Map<String, LocalDate> days = new LinkedHashMap<>();
        Map<String, String> faults = new LinkedHashMap<>();
        for (Box box : boxes) {
            String text = given.getOrDefault(box.id(), "").strip();
            if (text.isEmpty()) {
                continue;
            }
            typed.put(box.id(), text);
            if (box.day()) {
                day(text, year)
                        .ifPresentOrElse(
                                day -> days.put(box.id(), day),
                                () -> faults.put(
                                        box.id(),
                                        found(box, text) + "expected a day such as 5/20 or " + year + "-05-20."));
            } else if (!box.options().isEmpty()) {
                box.option(text)
                        .ifPresentOrElse(
                                option -> choices.put(box.id(), option.word()),
                                () -> faults.put(box.id(), found(box, text) + "expected one of " + words(box, text)));
            } else {
                number(text)
                        .ifPresentOrElse(
                                value -> keep(box, text, value, numbers, faults),
                                () -> faults.put(box.id(), found(box, text) + "expected a number, " + limits(box)));
            }
        }
        return new Answers(typed, numbers, choices, days, faults, List.of());
    }

    private static void keep(
            Box box, String text, double value, Map<String, Double> numbers, Map<String, String> faults) {
        if (box.range() != null && !box.range().holds(value)) {
            faults.put(box.id(), found(box, text) + "expected " + limits(box));
        } else {
            numbers.put(box.id(), value);
        }
    }

    private static String found(Box box, String text) {
        return box.label() + ": found '" + (text.length() > 40 ? text.substring(0, 37) + "…" : text) + "'; ";
    }

    private static String limits(Box box) {
        return box.range() == null
                ? "."
                : Numbers.plain(box.range().low()) + " to "
                        + Numbers.plain(box.range().high()) + (box.unit().isEmpty() ? "" : " " + box.unit()) + ".";
    }

    private static String words(Box box, String text) {
        List<String> words = box.options().stream().map(Box.Option::word).toList();
        Optional<String> near = Near.to(text, words);
        return (words.size() > 12 ? "the words in the list" : String.join(", ", words))
                + near.map(one -> "; did you mean " + one + "?").orElse(".");
    }

    /** A number with or without dollar sign, per cent sign and commas. */
    static OptionalDouble number(String typed) {
        String text = typed.strip()
                .replace('−', '-')
                .replaceFirst("^(-?)\\$\\s*", "$1")
                .replaceFirst("\\s*%$", "");
        if (!text.matches(".*\\d.*") || !NUMBER.matcher(text).matches()) {
            return OptionalDouble.empty();
        }
        double value = Double.parseDouble(text.replace(",", ""));
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    static Optional<LocalDate> day(String text, int year) {
        try {
            Matcher written = MONTH_DAY.matcher(text);
            if (written.matches()) {
                String own = written.group(3);
                return Optional.of(LocalDate.of(
                        own == null ? year : Integer.parseInt(own),
                        Integer.parseInt(written.group(1)),
                        Integer.parseInt(written.group(2))));
            }
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    /** The same where a book's season has assumptions of its own. */
    Answers knowing(List<AssumptionLine> assumptions) {
        return new Answers(typed, numbers, choices, days, faults, assumptions);
    }

    /** What the book says of a crop. */
    Optional<AssumptionLine> own(Crop crop, AssumptionQuantity quantity) {
        return own.stream()
                .filter(line -> line.crop() == crop && line.quantity() == quantity)
                .findFirst();
    }

    boolean told(String box) {
        return numbers.containsKey(box) || choices.containsKey(box) || days.containsKey(box);
    }

    /** What was chosen; empty where nothing was. */
    String choice(String box) {
        return choices.getOrDefault(box, "");
    }
}
