package plumbrow.documents.label.grammar;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Amount.Qualifier;

/**
 * An amount found in a label's text.
 *
 * @param from, to the stretch of text it takes
 * @param doubt why it can't be read; empty where it can
 */
public record MeasureText(Amount amount, int from, int to, String doubt) {
    static final String QUALIFIER =
            "(?<q>(?i:at least|a minimum of|minimum of|minimum|not less than|no less than|up to|a maximum of|maximum of|not more than"
                    + "|no more than|not to exceed|at most|more than|greater than|exceeding|exceeds|exceed|above|over|less than|fewer than|below|under"
                    + "|about|approximately|[<>≤≥])\\s?)?";
    static final String RANGE = "\\s?(?:-|–|—|to|through|and)\\s?";
    private static final Map<Measure, Pattern> PATTERNS = new EnumMap<>(Measure.class);

    static {
        for (Measure measure : Measure.values()) {
            String unit = measure.alternatives();
            PATTERNS.put(
                    measure,
                    Pattern.compile("(?<![\\w.,/])" + QUALIFIER + "(?<n1>" + Figure.PATTERN + ")\\s?(?:(?:" + unit
                            + ")?" + RANGE + "(?<n2>" + Figure.PATTERN + ")\\s?)?(?i:(?<unit>" + unit + "))"));
        }
    }

    /** The first amount of its kind in a text. */
    public static Optional<MeasureText> first(String text, Measure measure) {
        return all(text, measure).stream().findFirst();
    }

    /** All amounts of a kind in a text, in order. */
    public static List<MeasureText> all(String text, Measure measure) {
        List<MeasureText> found = new ArrayList<>();
        Matcher matcher = Objects.requireNonNull(PATTERNS.get(measure)).matcher(text);
        while (matcher.find()) {
            String unit = measure.unit(matcher.group("unit"));
            found.add(read(
                    matcher.group("q"),
                    matcher.group("n1"),
                    matcher.group("n2"),
                    unit,
                    matcher.start(),
                    matcher.end()));
        }
        return found;
    }

    static MeasureText read(
            @Nullable String qualifier, String one, @Nullable String two, String unit, int from, int to) {
        double low = Figure.of(one);
        double high = two == null ? low : Figure.of(two);
        String printed = one.strip() + (two == null ? "" : " to " + two.strip());
        if (Double.isNaN(low) || Double.isNaN(high)) {
            return doubtful(unit, from, to, "words and digits differ in '" + printed + "'");
        }
        if (high < low) {
            return doubtful(unit, from, to, "'" + printed + "' runs from more to less");
        }
        Qualifier meant = two != null ? high > low ? Qualifier.RANGE : Qualifier.EXACTLY : qualifier(qualifier);
        return new MeasureText(new Amount(meant, low, high, unit, Conditions.NONE), from, to, "");
    }

    private static MeasureText doubtful(String unit, int from, int to, String why) {
        return new MeasureText(new Amount(Qualifier.EXACTLY, 0, 0, unit, Conditions.NONE), from, to, why);
    }

    /** The same size with another sign. */
    public static Amount as(Qualifier qualifier, Amount amount) {
        return amount.qualifier() == Qualifier.RANGE
                ? amount
                : new Amount(qualifier, amount.low(), amount.high(), amount.unit(), Conditions.NONE);
    }

    private static Qualifier qualifier(@Nullable String printed) {
        if (printed == null) {
            return Qualifier.EXACTLY;
        }
        String word = printed.strip().toLowerCase(Locale.ROOT);
        return switch (word) {
            case "at least", "a minimum of", "minimum of", "minimum", "not less than", "no less than", "≥" ->
                Qualifier.AT_LEAST;
            case "up to",
                    "a maximum of",
                    "maximum of",
                    "not more than",
                    "no more than",
                    "not to exceed",
                    "at most",
                    "≤" -> Qualifier.AT_MOST;
            case "less than", "fewer than", "below", "under", "<" -> Qualifier.LESS_THAN;
            case "about", "approximately" -> Qualifier.ABOUT;
            default -> Qualifier.MORE_THAN;
        };
    }
}
