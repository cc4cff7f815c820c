package plumbrow.app.book;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import plumbrow.advice.program.Done;

/**
 * A line of the log as the book keeps it. Lines are only ever added; one that was wrong is struck by a further line, and
 * both stay.
 *
 * @param number by which a strike refers to it
 * @param done what was put on
 * @param writtenAt when it came into the book; null for a line of an older book
 * @param strike that it does not count, and why; null where it counts
 * @param record number of the application record of which it is a product; null for a line by itself
 */
public record LogLine(
        int number,
        Done done,
        @Nullable Instant writtenAt,
        @Nullable Strike strike,
        @Nullable Integer record) {

    /** Says that a line was wrong. */
    public record Strike(String who, String why, Instant when) {}

    /** Whether the line counts. */
    public boolean counts() {
        return strike == null;
    }

    /**
     * What bringing a season in did to the log.
     *
     * @param added lines that were new
     * @param known lines that the book had already, struck or not
     * @param bookOnly lines of the season's fields and years that the book has and the season brought in has not; they stay
     */
    public record Merged(int added, int known, int bookOnly) {}
}
