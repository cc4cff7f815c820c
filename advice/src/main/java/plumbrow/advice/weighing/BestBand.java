package plumbrow.advice.weighing;

/**
 * A stretch of one input over which one program has the highest mean margin of all that may be advised.
 *
 * @param program the best there
 * @param from where it begins
 * @param to where it ends
 * @param fromError two standard errors of {@code from}, from the number of draws; 0 where the range looked at begins
 */
public record BestBand(String program, double from, double to, double fromError) {}
