package plumbrow.bench;

import java.util.List;

/** What is said of several timings of one thing, in the unit they were taken in. */
record Times(double median, double lowest, double highest) {
    static final Times NONE = new Times(Double.NaN, Double.NaN, Double.NaN);

    static Times of(List<Double> timings) {
        double[] sorted =
                timings.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        int half = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
        return new Times(median, sorted[0], sorted[sorted.length - 1]);
    }
}
