package plumbrow.science.reference;

import java.util.List;

/**
 * One value of several, and the spread of them all.
 *
 * @param fact the one to work with
 * @param low smallest number that any source prints, in {@code unit}
 * @param high largest number that any source prints, of a limit the limit
 * @param all every value, the chosen one first
 */
public record Choice(Fact fact, double low, double high, String unit, List<Fact> all) {}
