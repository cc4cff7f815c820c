package plumbrow.app.command;

import java.util.List;
import java.util.stream.Collectors;
import plumbrow.app.json.SeasonSummary;

/** Small things said in words. */
final class Said {
    private Said() {}

    /** "2026, 2027", or "none". */
    static String list(List<?> values) {
        return values.isEmpty() ? "none" : values.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** "2 farms, 5 fields with 14 programs, 9 products". */
    static String holds(SeasonSummary season) {
        int programs = season.fields().stream()
                .mapToInt(field -> field.programs().size())
                .sum();
        return count(season.farms().size(), "farm") + ", "
                + count(season.fields().size(), "field") + " with " + count(programs, "program") + ", "
                + count(season.products(), "product");
    }

    /** Sentences on lines of their own after what was said. */
    static String after(List<String> sentences) {
        return sentences.stream().map(sentence -> "\n" + sentence).collect(Collectors.joining());
    }

    static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
