package plumbrow.science.reference;

/**
 * Where a value comes from.
 *
 * @param source who published it
 * @param seenAt where it was seen; empty where it was not
 */
public record Origin(String source, String seenAt) {}
