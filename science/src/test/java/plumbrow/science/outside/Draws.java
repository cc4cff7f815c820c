package plumbrow.science.outside;

import java.util.SplittableRandom;
import java.util.StringJoiner;

/** Seeded data such as a field would give, rounded to two decimals as a scale shows them. */
final class Draws {
    private final SplittableRandom random;

    Draws(long seed) {
        random = new SplittableRandom(seed);
    }

    int whole(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    double between(double low, double high) {
        return rounded(random.nextDouble(low, high));
    }

    /** About normal: the sum of twelve even draws. */
    double around(double mean, double sd) {
        double sum = -6;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return rounded(mean + sd * sum);
    }

    double[] list(int count, double mean, double sd) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = around(mean, sd);
        }
        return values;
    }

    static String typed(double[] values) {
        StringJoiner cells = new StringJoiner(",");
        for (double value : values) {
            cells.add(Double.toString(value));
        }
        return cells.toString();
    }

    static String typed(double[][] rows) {
        StringJoiner all = new StringJoiner(";");
        for (double[] row : rows) {
            all.add(typed(row));
        }
        return all.toString();
    }

    private static double rounded(double value) {
        return Math.rint(100 * value) / 100;
    }
}
