package plumbrow.advice.outlook;

/**
 * The draws of one uncertain quantity. Read only, though arrays: they are shared between fields and threads.
 *
 * @param values one per draw
 * @param ranks for each draw, how many draws are lower (draws of equal value take their ranks in some fixed order)
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: one column is read by every course.
public record Column(double[] values, int[] ranks) {}
