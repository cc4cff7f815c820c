package plumbrow.documents.sheet.grammar;

import java.util.regex.Pattern;

/** How a paper writes its decimals, as far as its own numbers tell. */
public enum NumberStyle {
    /** 0.5 for a half; a comma parts thousands. */
    POINT,
    /** 0,5 for a half. */
    COMMA,
    /** Both are found. */
    MIXED,
    /** No decimals are found. */
    SILENT;

    private static final String UNIT = "\\s?(?:%|°|º|mg|g/|kg|µg|ug|hPa|kPa|mPa|Pa\\b|mbar|mm|h\\b|cm|ppm)";
    private static final Pattern WITH_COMMA = Pattern.compile("(?<![\\d,.])(?:\\d+,\\d{1,2}(?![\\d,-])" + UNIT
            + "|0,\\d+" + UNIT + "|(?:pH|Pow|Kow)\\W{1,4}\\d{1,2},\\d(?!\\d))");
    private static final Pattern WITH_POINT = Pattern.compile("(?<![\\d,.])(?:\\d+\\.\\d{1,2}(?![\\d.-])" + UNIT
            + "|0\\.\\d+" + UNIT + "|(?:pH|Pow|Kow)\\W{1,4}\\d{1,2}\\.\\d(?!\\d))");

    /** What the numbers of a text have in common. */
    public static NumberStyle of(String text) {
        boolean comma = WITH_COMMA.matcher(text).find();
        boolean point = WITH_POINT.matcher(text).find();
        if (comma) {
            return point ? MIXED : COMMA;
        }
        return point ? POINT : SILENT;
    }
}
