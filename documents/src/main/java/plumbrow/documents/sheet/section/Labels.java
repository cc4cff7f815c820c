package plumbrow.documents.sheet.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds a known label at the start of a text. */
final class Labels {
    /** Bullets, subsection numbers and letters before a label, and its name in another language. */
    private static final Pattern PREFIX = Pattern.compile(
            "^(?:[•·▪■●‣*–-]\\s*|o\\s)?(?:(?:1[0-6]|[1-9])\\.\\d{1,2}(?:\\.\\d{1,2})?\\.?\\s+(?=\\p{L})|\\(?[a-z]\\)\\s*)?");

    private static final Pattern FOREIGN_FIRST = Pattern.compile("^[^:/\\t\\d]{2,60}\\s/\\s");

    /** What may stand between a label's words and its value. */
    private static final String END =
            "(?<paren>(?:\\s?\\([^)]{0,70}\\)|\\s?\\[[^\\]]{0,40}\\]|\\s?,?\\s(?:at|@)\\s\\d{1,3}\\s?°\\s?[CF]|\\s?,?\\s(?:at|@)\\s[^:\\t.]{1,40}(?=:)){0,2})"
                    + "(?<foreign>\\s?/\\s?[\\p{L}(][^:\\t\\d<>=]{1,60})?\\s*"
                    + "(?:(?<colon>[:=]\\s*)|(?<stop>\\.\\s+(?=\\p{L}))|(?<shut>$)|(?=[<>~≥≤≈]|\\d|ca\\.|approx|-\\d|\\.\\d))";

    private static final Pattern LOOSE_END = Pattern.compile("^[\\s,/:(\\-][^\\d\\t]{0,60}$");

    /** A label with what must follow it, and without. */
    private record Known(Label label, Pattern start, Pattern words) {}

    private static final List<Known> KNOWN = known();

    private Labels() {}

    /**
     * A label found.
     *
     * @param end where the value begins
     * @param colon whether a colon sets it off
     */
    record Hit(Label label, int end, boolean colon) {}

    private static List<Known> known() {
        List<Known> known = new ArrayList<>();
        for (Label label : Label.values()) {
            String words = "(?<words>" + label.words().pattern() + ")(?![\\p{L}])";
            known.add(new Known(
                    label,
                    Pattern.compile(words + END, Pattern.CASE_INSENSITIVE),
                    Pattern.compile(words, Pattern.CASE_INSENSITIVE)));
        }
        return known;
    }

    /**
     * The label that a text begins with.
     *
     * @param ownCell whether the text is a cell with its value in the next one, so that more words may follow the label
     */
    static Optional<Hit> at(String text, boolean ownCell) {
        return at(text, 0, ownCell);
    }

    /** The label that begins at a place in a text. */
    static Optional<Hit> at(String text, int from, boolean ownCell) {
        Matcher prefix = PREFIX.matcher(text).region(from, text.length());
        int start = prefix.find() ? prefix.end() : from;
        Optional<Hit> hit = begins(text, start, ownCell);
        if (hit.isEmpty()) {
            Matcher foreign = FOREIGN_FIRST.matcher(text).region(from, text.length());
            if (foreign.find()) {
                return begins(text, foreign.end(), ownCell);
            }
        }
        return hit;
    }

    private static Optional<Hit> begins(String text, int start, boolean ownCell) {
        Hit best = null;
        int longest = 0;
        if (start >= text.length()) {
            return Optional.empty();
        }
        for (Known known : KNOWN) {
            Matcher whole = known.start.matcher(text).region(start, text.length());
            if (whole.lookingAt()
                    && (whole.group("stop") == null
                            || (Character.isUpperCase(text.charAt(start))
                                    && Character.isUpperCase(text.charAt(whole.end()))))) {
                if (whole.end("words") - start > longest) {
                    longest = whole.end("words") - start;
                    best = new Hit(known.label, whole.end(), whole.group("colon") != null);
                }
            } else if (ownCell) {
                Matcher words = known.words.matcher(text).region(start, text.length());
                if (words.lookingAt()
                        && words.end() - start > longest
                        && LOOSE_END.matcher(text.substring(words.end())).matches()) {
                    longest = words.end() - start;
                    best = new Hit(known.label, text.length(), false);
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
