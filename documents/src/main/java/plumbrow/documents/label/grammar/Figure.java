package plumbrow.documents.label.grammar;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as labels write it: 2.5, 1,200, 1/2, 1 1/2, 1-1/2, 1½, two, or two (2). */
final class Figure {
    private static final List<String> WORDS = List.of(
            "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");
    private static final String VULGAR = "½¼¾⅓⅔⅛⅜⅝⅞";
    private static final double[] VULGAR_VALUES = {.5, .25, .75, 1.0 / 3, 2.0 / 3, .125, .375, .625, .875};

    /** Number words may carry the digits in brackets. */
    static final String PATTERN =
            "(?:\\d{1,3}(?:,\\d{3})+(?!\\d)(?:\\.\\d+)?|\\d{1,3}[ -]\\d/\\d{1,2}(?!\\d)|\\d{1,2}/\\d{1,2}(?!\\d)"
                    + "|\\d{0,3}\\s?[" + VULGAR + "]|\\d{1,9}(?:\\.\\d{1,6})?|\\.\\d{1,6}"
                    + "|(?i:" + String.join("|", WORDS) + ")\\b(?:\\s?\\(\\d{1,3}\\))?)";

    private static final Pattern MIXED = Pattern.compile("(?:(\\d{1,3})[ -])?(\\d{1,2})/(\\d{1,2})");
    private static final Pattern WORD = Pattern.compile("([a-z]+)(?:\\s?\\((\\d{1,3})\\))?");

    private Figure() {}

    /** What the number is; NaN where its words and its digits differ. */
    static double of(String printed) {
        String text = printed.strip().toLowerCase(Locale.ROOT);
        Matcher mixed = MIXED.matcher(text);
        if (mixed.matches()) {
            double whole = mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1));
            double below = Double.parseDouble(mixed.group(3));
            return below == 0 ? Double.NaN : whole + Double.parseDouble(mixed.group(2)) / below;
        }
        int vulgar = VULGAR.indexOf(text.charAt(text.length() - 1));
        if (vulgar >= 0) {
            String whole = text.substring(0, text.length() - 1).strip();
            return (whole.isEmpty() ? 0 : Double.parseDouble(whole)) + VULGAR_VALUES[vulgar];
        }
        Matcher word = WORD.matcher(text);
        if (word.matches()) {
            int value = WORDS.indexOf(word.group(1));
            boolean agrees = word.group(2) == null || Integer.parseInt(word.group(2)) == value;
            return agrees ? value : Double.NaN;
        }
        return Double.parseDouble(text.replace(",", ""));
    }
}
