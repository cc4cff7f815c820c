package plumbrow.advice.weighing;

import java.util.Arrays;

/** Every so manieth draw of many. */
final class Thinned {
    private Thinned() {}

    static double[] row(double[] draws, int step) {
        double[] fewer = new double[(draws.length + step - 1) / step];
        for (int i = 0; i < fewer.length; i++) {
            fewer[i] = draws[i * step];
        }
        return fewer;
    }

    static double[][] rows(double[][] draws, int step) {
        return Arrays.stream(draws).map(row -> row(row, step)).toArray(double[][]::new);
    }
}
