package plumbrow.advice.assumptions;

/**
 * The draws of one uncertain quantity. Read only, though arrays: they are shared between fields and threads.
 *
 * @param values one per draw
 * @param ranks for each draw, how many draws are lower (draws of equal value take their ranks in some fixed order)
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: one column is read by every program.
public record Column(double[] values, int[] ranks) {

    /** The values from low to high, in an array of their own; put there by rank, which is quicker than sorting. */
    public double[] sorted() {
        double[] sorted = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            sorted[ranks[i]] = values[i];
        }
        return sorted;
    }
}
