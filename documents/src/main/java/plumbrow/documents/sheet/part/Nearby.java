package plumbrow.documents.sheet.part;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks for words around an amount: on its own line first, then in the lines before it. */
final class Nearby {
    private final String line;
    private final int at;
    private final String before;

    Nearby(String text, Stretch stretch) {
        line = text.substring(stretch.lineFrom(), stretch.to());
        at = stretch.amount().from() - stretch.lineFrom();
        before = text.substring(stretch.from(), stretch.lineFrom());
    }

    /** The nearest match before the amount on its line, else behind it, else the last in the lines before; empty without. */
    String find(Pattern pattern) {
        String onLine = onLine(pattern);
        return onLine.isEmpty() ? last(pattern, before, before.length()) : onLine;
    }

    String onLine(Pattern pattern) {
        String ahead = last(pattern, line, at);
        if (!ahead.isEmpty()) {
            return ahead;
        }
        Matcher behind = pattern.matcher(line);
        return behind.find(Math.min(at, line.length())) ? behind.group() : "";
    }

    private static String last(Pattern pattern, String text, int to) {
        Matcher matcher = pattern.matcher(text.substring(0, to));
        String found = "";
        while (matcher.find()) {
            found = matcher.group();
        }
        return found;
    }

    String line() {
        return line;
    }

    String before() {
        return before;
    }
}
