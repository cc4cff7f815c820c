package plumbrow.advice.pests;

/**
 * A weed population of a field that a site of action no longer controls.
 *
 * @param group site-of-action group number, as "9" or "14"
 * @param source test, trial or who saw it
 */
public record KnownResistance(String field, String weed, String group, String source) {}
