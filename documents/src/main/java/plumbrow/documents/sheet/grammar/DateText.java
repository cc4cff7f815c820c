package plumbrow.documents.sheet.grammar;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A date found in a text.
 *
 * @param date what it is; null where it can be read in two ways
 * @param from, to the stretch of text it takes
 * @param doubt why there is none
 */
public record DateText(@Nullable LocalDate date, int from, int to, String doubt) {
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final String MONTH = "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]{0,6}\\.?";
    private static final Pattern ISO = Pattern.compile("(?<!\\d)(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})(?!\\d)");
    private static final Pattern NAMED_FIRST =
            Pattern.compile("(?i)\\b" + MONTH + "\\s?(\\d{1,2})(?:st|nd|rd|th)?,?\\s?(\\d{4})(?!\\d)");
    private static final Pattern NAMED_SECOND = Pattern.compile(
            "(?i)(?<!\\d)(\\d{1,2})(?:st|nd|rd|th)?[-\\s./]?\\s?" + MONTH + "[-\\s,/]?\\s?(\\d{4}|\\d{2})(?!\\d)");
    private static final Pattern DIGITS =
            Pattern.compile("(?<!\\d)(\\d{1,2})([-./])(\\d{1,2})\\2(\\d{4}|\\d{2})(?!\\d)");
    private static final int MONTHS_PER_YEAR = 12;
    private static final int CENTURY = 100;

    /** Which number of 03/04/2021 is the month. */
    public enum Order {
        MONTH_FIRST,
        DAY_FIRST,
        UNSAID
    }

    /** The first date in a text; null without one. */
    public static @Nullable DateText first(String text, Order order) {
        DateText best = null;
        for (Pattern pattern : List.of(ISO, NAMED_FIRST, NAMED_SECOND, DIGITS)) {
            Matcher found = pattern.matcher(text);
            if (found.find() && (best == null || found.start() < best.from)) {
                best = read(pattern, found, order);
            }
        }
        return best;
    }

    private static DateText read(Pattern pattern, Matcher found, Order order) {
        if (pattern.equals(ISO)) {
            return dated(found, found.group(1), found.group(2), found.group(3));
        }
        if (pattern.equals(NAMED_FIRST)) {
            return dated(found, found.group(3), month(found.group(1)), found.group(2));
        }
        if (pattern.equals(NAMED_SECOND)) {
            return dated(found, found.group(3), month(found.group(2)), found.group(1));
        }
        return byDigits(found, order);
    }

    private static DateText byDigits(Matcher found, Order order) {
        int one = Integer.parseInt(found.group(1));
        int two = Integer.parseInt(found.group(3));
        boolean point = found.group(2).equals(".");
        Order meant = one > MONTHS_PER_YEAR || point
                ? Order.DAY_FIRST
                : two > MONTHS_PER_YEAR || one == two ? Order.MONTH_FIRST : order;
        return switch (meant) {
            case DAY_FIRST -> dated(found, found.group(4), found.group(3), found.group(1));
            case MONTH_FIRST -> dated(found, found.group(4), found.group(1), found.group(3));
            case UNSAID ->
                new DateText(
                        null, found.start(), found.end(), "in '" + found.group() + "' either number may be the month");
        };
    }

    private static String month(String word) {
        return String.valueOf(MONTHS.indexOf(word.toLowerCase(Locale.ROOT)) + 1);
    }

    private static DateText dated(Matcher found, String year, String month, String day) {
        int printed = Integer.parseInt(year);
        int full = printed >= CENTURY ? printed : printed < 70 ? 2000 + printed : 1900 + printed;
        try {
            LocalDate date = LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day));
            return new DateText(date, found.start(), found.end(), "");
        } catch (DateTimeException none) {
            return new DateText(null, found.start(), found.end(), "'" + found.group() + "' is no date");
        }
    }
}
