package plumbrow.documents.sheet.grammar;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Conditions;
import plumbrow.documents.sheet.Amount.Qualifier;

/**
 * An amount found in a text: {@code [qualifier] number [range] [× 10^n] unit}.
 *
 * @param from, to the stretch of text it takes
 * @param doubt why it can be read in two ways; empty where it can't
 */
public record AmountText(Amount amount, int from, int to, String doubt) {
    /** Signs may stand right behind a word, as in "LC50> 100". */
    private static final String SIGN = "(?:>\\s?=|<\\s?=|=\\s?>|=\\s?<|[><≥≤⩾⩽‹›~≈=])";

    private static final String QUALIFIER =
            "(?:ca\\.?|c\\.|approx(?:imately|\\.)?|about|circa|estimated|est\\.|greater\\s+than\\s+or\\s+equal\\s+to|"
                    + "less\\s+than\\s+or\\s+equal\\s+to|(?:not\\s+|no\\s+)?(?:greater|more|less|higher|lower|above|below|over)(?:\\s+than)?|"
                    + "at\\s+least|up\\s+to|above|below|max\\.?|min\\.?)";
    private static final String RANGE = "\\s?(?:-|–|—|−|‑|to|bis|à|through|and|\\.\\.\\.?)\\s?";
    /** "8.7 x" before "10 Pa": what follows is no amount of its own. */
    private static final Pattern LOST_POWER = Pattern.compile("\\d\\s?[x×X*·∙]\\s?$");

    private static final int NEAR = 8;
    private static final Map<Family, Pattern> PATTERNS = new EnumMap<>(Family.class);

    static {
        for (Family family : Family.values()) {
            PATTERNS.put(family, pattern(family));
        }
    }

    private static Pattern pattern(Family family) {
        boolean bare = family == Family.BARE;
        String sign = family == Family.TEMPERATURE || bare ? "[-−–]?\\s?" : "";
        String number = sign + Numeral.DIGITS;
        String unit = family.alternatives();
        String end = bare
                ? "(?![\\d.,]*\\d)(?!\\s?(?:%|°|º|m?g\\b|[CF]\\b|h\\b|hrs?\\b|hours|ppm|mol|N\\b|M\\b))"
                : "\\s?(?<unit>" + unit + ")(?![\\p{L}\\d])";
        String between = bare ? "" : "(?:\\s?" + unit + ")?";
        return Pattern.compile(
                "(?:(?<q1>" + SIGN + "|(?<![\\p{L}\\d.,])(?i:" + QUALIFIER + "))\\s*)?(?<![\\p{L}\\d.,])(?<n1>"
                        + number + ")(?<p1>"
                        + Numeral.POWER + ")?(?:" + between + RANGE + "(?:(?<q2>" + SIGN + "|(?i:" + QUALIFIER
                        + "))\\s*)?(?<n2>" + number
                        + ")(?<p2>" + Numeral.POWER + ")?)?" + end);
    }

    /** The first amount of a family in a text; null without one. */
    public static @Nullable AmountText first(String text, Family family, NumberStyle style) {
        List<AmountText> all = all(text, family, style, 1);
        return all.isEmpty() ? null : all.get(0);
    }

    /** All amounts of a family in a text, in order. */
    public static List<AmountText> all(String text, Family family, NumberStyle style) {
        return all(text, family, style, Integer.MAX_VALUE);
    }

    private static List<AmountText> all(String text, Family family, NumberStyle style, int most) {
        List<AmountText> found = new ArrayList<>();
        Matcher matcher = Objects.requireNonNull(PATTERNS.get(family)).matcher(text);
        while (found.size() < most && matcher.find()) {
            found.add(read(text, matcher, family, style));
        }
        return found;
    }

    private static AmountText read(String text, Matcher matcher, Family family, NumberStyle style) {
        String unit = family == Family.BARE ? "" : family.unit(matcher.group("unit"));
        Numeral one = numeral(matcher, "n1", "p1", family, style);
        Numeral two = matcher.group("n2") == null ? null : numeral(matcher, "n2", "p2", family, style);
        boolean sure = one.sure() && (two == null || two.sure());
        double low = one.value();
        double high = two == null ? low : two.value();
        String doubt = sure
                ? ""
                : "the mark before three digits may part thousands or decimals in '"
                        + matcher.group().strip() + "'";
        if (LOST_POWER
                .matcher(text.substring(Math.max(0, matcher.start() - NEAR), matcher.start()))
                .find()) {
            doubt = "a power of ten stands there whose exponent is lost";
        }
        if (high < low) {
            doubt = "'" + matcher.group().strip() + "' runs from more to less";
            high = low;
        }
        Qualifier qualifier = two == null ? qualifier(matcher.group("q1")) : Qualifier.RANGE;
        return new AmountText(
                new Amount(qualifier, low, high, unit, Conditions.NONE), matcher.start(), matcher.end(), doubt);
    }

    private static Numeral numeral(Matcher matcher, String digits, String power, Family family, NumberStyle style) {
        String text = matcher.group(digits);
        String printedPower = matcher.group(power);
        boolean negative = "-−–".indexOf(text.charAt(0)) >= 0;
        Numeral size = Numeral.of(
                negative ? text.substring(1) : text, printedPower == null ? "" : printedPower, style, family.strict());
        return negative ? new Numeral(-size.value(), size.sure()) : size;
    }

    private static Qualifier qualifier(@Nullable String printed) {
        if (printed == null) {
            return Qualifier.EXACTLY;
        }
        String word = printed.toLowerCase(Locale.ROOT).replaceAll("\\s", "");
        boolean not = word.startsWith("not") || word.startsWith("no");
        return switch (word) {
            case ">=", "=>", "≥", "⩾", "greaterthanorequalto", "atleast", "min", "min." -> Qualifier.AT_LEAST;
            case "<=", "=<", "≤", "⩽", "lessthanorequalto", "upto", "max", "max." -> Qualifier.AT_MOST;
            case "=" -> Qualifier.EXACTLY;
            default -> {
                if (word.matches(".*(?:[>›]|greater|more|higher|above|over).*")) {
                    yield not ? Qualifier.AT_MOST : Qualifier.MORE_THAN;
                }
                if (word.matches(".*(?:[<‹]|less|lower|below).*")) {
                    yield not ? Qualifier.AT_LEAST : Qualifier.LESS_THAN;
                }
                yield Qualifier.ABOUT;
            }
        };
    }
}
