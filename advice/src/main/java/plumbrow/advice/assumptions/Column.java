package plumbrow.advice.assumptions;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The draws of one uncertain quantity. Read only, though arrays: they are shared between fields and threads.
 *
 * @param values one per draw
 * @param ranks for each draw, how many draws are lower (draws of equal value take their ranks in some fixed order)
 */
@SuppressWarnings("ArrayRecordComponent") // Primitive arrays on purpose: one column is read by every program.
public record Column(double[] values, int[] ranks) {

    /** The column of as many draws in which only some come, each as often as the others up to one. */
    public Column of(int[] draws) {
        double[] some = new double[values.length];
        for (int i = 0; i < some.length; i++) {
            some[i] = values[draws[(int) ((long) i * draws.length / some.length)]];
        }
        int[] order = IntStream.range(0, some.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> some[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] rank = new int[some.length];
        for (int place = 0; place < order.length; place++) {
            rank[order[place]] = place;
        }
        return new Column(some, rank);
    }

    /** The values from low to high, in an array of their own; put there by rank, which is quicker than sorting. */
    public double[] sorted() {
        double[] sorted = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            sorted[ranks[i]] = values[i];
        }
        return sorted;
    }
}
