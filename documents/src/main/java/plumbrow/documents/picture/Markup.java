package plumbrow.documents.picture;

/** Text made safe to stand in HTML, SVG and XML, both between tags and inside quoted attributes. */
public final class Markup {
    private static final int REPLACEMENT = 0xFFFD;

    private Markup() {}

    /**
     * The text with markup characters written as references. What XML 1.0 (section 2.2, Char) forbids, such as control
     * characters and lone surrogates, becomes U+FFFD, so that a name from a damaged file cannot break a page.
     */
    public static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(allowed(point) ? point : REPLACEMENT);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int point) {
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || (point >= 0x20 && point <= 0xD7FF)
                || (point >= 0xE000 && point <= 0xFFFD)
                || point >= 0x10000;
    }
}
