package plumbrow.advice.text;

import java.util.Optional;

/**
 * What words without a list may be: the one rule for workbook, desk, command line and programs, so that whatever comes in by
 * one door can go out and come in again by another.
 *
 * @param longest most characters (UTF-16 units, as a browser's maxlength counts)
 * @param lines whether line breaks and tabs may stand in it; a name has none, and a letter or digit at least: one of dots is a step in
 *     an address, which browsers take out, and one of blanks can't be read
 */
public record TextRule(int longest, boolean lines) {
    /** A name by which other rows refer to something, and who did it. */
    public static final TextRule NAME = new TextRule(80, false);

    /** A remark or a source. */
    public static final TextRule PROSE = new TextRule(1000, true);

    /** Signs with which a spreadsheet program begins a formula: it runs the text of a CSV file that begins so. */
    private static final String FORMULA = "=+-@";

    /** What may stand, in words that follow "expected". */
    public String words() {
        return "text of up to " + longest + " characters";
    }

    /** What is expected instead of a text; empty where nothing is wrong with it. */
    public Optional<String> objection(String text) {
        Optional<String> unreadable = unreadable(text);
        if (unreadable.isPresent()) {
            return unreadable;
        }
        if (formula(text)) {
            return Optional.of("text that does not begin with = + - or @");
        }
        return !lines && !text.isEmpty() && text.codePoints().noneMatch(Character::isLetterOrDigit)
                ? Optional.of("a name with a letter or digit in it")
                : Optional.empty();
    }

    /** The same where a formula does no harm, since the text never stands in a workbook. */
    public Optional<String> unreadable(String text) {
        if (text.length() > longest) {
            return Optional.of(words() + ", not " + text.length());
        }
        if (text.codePoints().anyMatch(this::unseen)) {
            return Optional.of(lines ? "text without control characters" : "text on one line");
        }
        return Optional.empty();
    }

    /** Whether a spreadsheet program would take the text for a formula. */
    public static boolean formula(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    /** The text with a mark that can be seen in the place of each character that may not stand in it. */
    public String seen(String text) {
        StringBuilder seen = new StringBuilder();
        text.codePoints().forEach(c -> seen.appendCodePoint(unseen(c) ? mark(c) : c));
        return seen.toString();
    }

    private boolean unseen(int c) {
        return hidden(c) && !(lines && (c == '\n' || c == '\t'));
    }

    /** A character that orders instead of being read: a control, a line separator, a mark or turn of direction, a nothing, half a letter. */
    public static boolean hidden(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE ->
                true;
            default ->
                (c >= 0x202A && c <= 0x202E)
                        || (c >= 0x2066 && c <= 0x2069)
                        || c == 0x200B
                        || c == 0x200E
                        || c == 0x200F
                        || c == 0x061C
                        || c == 0xFEFF;
        };
    }

    /** Unicode's pictures of control characters, as ␛ for escape; the rest is one mark. */
    private static int mark(int c) {
        return c < 0x20 ? 0x2400 + c : c == 0x7F ? 0x2421 : 0xFFFD;
    }
}
