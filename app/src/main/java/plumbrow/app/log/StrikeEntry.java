package plumbrow.app.log;

import java.time.Instant;
import java.util.Map;
import plumbrow.app.book.LogLine;

/**
 * That a line of the log was wrong, as it was typed.
 *
 * @param fault what keeps it from being written down; empty where nothing does
 */
public record StrikeEntry(String who, String why, String fault) {
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_REASON = 1000;

    public static StrikeEntry read(Map<String, String> typed) {
        String who = typed.getOrDefault("who", "").strip();
        String why = typed.getOrDefault("why", "").strip();
        String fault = who.isEmpty() || who.length() > LONGEST_NAME
                ? "Say who strikes it, in up to " + LONGEST_NAME + " letters."
                : why.isEmpty() || why.length() > LONGEST_REASON ? "Say why it is wrong, in a sentence." : "";
        return new StrikeEntry(who, why, fault);
    }

    public LogLine.Strike strike(Instant when) {
        return new LogLine.Strike(who, why, when);
    }
}
