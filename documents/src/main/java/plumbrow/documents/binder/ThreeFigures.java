package plumbrow.documents.binder;

import java.math.BigDecimal;
import java.math.MathContext;
import plumbrow.science.figure.Numbers;

/** A mean or a quantile over the draws in three figures: no more than the draws support. */
final class ThreeFigures {
    /** Smaller than anything a farmer measures, in whatever unit: what is left of a sum that should be zero. */
    private static final double NOTHING = 1e-9;

    private ThreeFigures() {}

    static String of(double value) {
        if (Math.abs(value) < NOTHING) {
            return "0";
        }
        if (Math.abs(value) >= 100) {
            return Numbers.fixed(value, 0);
        }
        return Numbers.plain(new BigDecimal(value).round(new MathContext(3)).doubleValue());
    }
}
