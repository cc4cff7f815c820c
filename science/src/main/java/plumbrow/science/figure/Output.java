package plumbrow.science.figure;

/**
 * One answer of a figure.
 *
 * @param key the name outside checks call, with its unit
 * @param label what a person reads
 * @param unit the unit shown, empty for a bare number or a word
 * @param always false where it is given only for some inputs, as the figure's validity says
 */
public record Output(String key, String label, String unit, boolean always) {}
