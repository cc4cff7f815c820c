package plumbrow.app.desk;

import java.time.Instant;

/**
 * A decision as it was recorded.
 *
 * @param who who decided
 * @param why the reason given
 * @param at when it was recorded
 */
public record Chosen(int year, String field, String course, String who, String why, Instant at) {}
