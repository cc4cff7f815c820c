package plumbrow.documents.picture;

import java.util.ArrayList;
import java.util.List;
import plumbrow.science.figure.Numbers;

/**
 * One straight scale of dollars per acre, shared by every strip of a picture.
 *
 * @param low value at the left end [$/ac]
 * @param high value at the right end [$/ac], more than low
 * @param step from one tick to the next [$/ac]
 * @param left where it begins [px]
 * @param right where it ends [px]
 */
record MoneyScale(double low, double high, double step, double left, double right) {

    /** A scale with round ends that holds all from lowest to highest, with about as many ticks as asked. */
    static MoneyScale holding(double lowest, double highest, double left, double right, int ticks) {
        double span = highest - lowest;
        if (span < 1e-6) {
            span = Math.max(1, Math.abs(highest) * 0.1);
        }
        double step = round(span / Math.max(1, ticks));
        double low = Math.floor((lowest - span * 0.02) / step) * step;
        double high = Math.ceil((highest + span * 0.02) / step) * step;
        return new MoneyScale(low, high, step, left, right);
    }

    double x(double usdPerAcre) {
        return left + (usdPerAcre - low) / (high - low) * (right - left);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        long count = Math.round((high - low) / step);
        for (int i = 0; i <= count; i++) {
            ticks.add(low + i * step);
        }
        return ticks;
    }

    String tickText(double value) {
        return Numbers.dollars(value, step < 1 ? 2 : 0);
    }

    boolean holdsZero() {
        return low <= 0 && high >= 0;
    }

    private static double round(double rough) {
        double ten = Math.pow(10, Math.floor(Math.log10(rough)));
        double lead = rough / ten;
        return (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10) * ten;
    }
}
