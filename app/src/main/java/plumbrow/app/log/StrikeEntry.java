package plumbrow.app.log;

import java.time.Instant;
import java.util.Map;
import plumbrow.advice.text.TextRule;
import plumbrow.app.book.LogLine;

/**
 * That a line of the log was wrong, as it was typed.
 *
 * @param fault what keeps it from being written down; empty where nothing does
 */
public record StrikeEntry(String who, String why, String fault) {
    public static StrikeEntry read(Map<String, String> typed) {
        String who = typed.getOrDefault("who", "").strip();
        String why = typed.getOrDefault("why", "").strip();
        String fault = who.isEmpty()
                ? "Say who strikes it."
                : why.isEmpty()
                        ? "Say why it is wrong, in a sentence."
                        : TextRule.NAME
                                .objection(who)
                                .map(expected -> "Who strikes it: expected " + expected + ".")
                                .or(() -> TextRule.PROSE
                                        .objection(why)
                                        .map(expected -> "Why it is wrong: expected " + expected + "."))
                                .orElse("");
        return new StrikeEntry(who, why, fault);
    }

    public LogLine.Strike strike(Instant when) {
        return new LogLine.Strike(who, why, when);
    }
}
