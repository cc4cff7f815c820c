package plumbrow.app.book;

import java.time.Instant;

/**
 * A value that somebody typed from a page that can't be read by the machine.
 *
 * @param paper number of the paper
 * @param page from 1
 * @param about what it is, such as "Product name"
 */
public record TypedValue(int paper, int page, String about, String value, String who, Instant when) {}
