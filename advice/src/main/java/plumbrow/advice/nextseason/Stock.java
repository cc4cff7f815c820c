package plumbrow.advice.nextseason;

import org.jspecify.annotations.Nullable;
import plumbrow.advice.quantity.Amount;

/**
 * What was in the shed of a product, and is.
 *
 * @param before as the last season says
 * @param after what the log left; null where it can't be told
 * @param lines lines of the log that took of it
 */
public record Stock(String product, Amount before, @Nullable Amount after, int lines) {}
