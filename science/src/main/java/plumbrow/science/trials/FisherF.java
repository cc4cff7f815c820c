package plumbrow.science.trials;

import org.apache.commons.statistics.distribution.FDistribution;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Working;

/** The ratio of two mean squares, and the chance of one so large when there is nothing behind it. */
public final class FisherF {
    private FisherF() {}

    /** The chance of an F above a value of 0 or more. */
    public static double above(double f, double dfAbove, double dfBelow) {
        return FDistribution.of(dfAbove, dfBelow).survivalProbability(f);
    }

    /** The F not passed with a chance. */
    public static double quantile(double chance, double dfAbove, double dfBelow) {
        return FDistribution.of(dfAbove, dfBelow).inverseCumulativeProbability(chance);
    }

    /** Writes F and its chance into working and outputs, and hands the chance back. */
    static double show(
            Working working,
            Outputs outputs,
            String fKey,
            String pKey,
            String of,
            double squares,
            int df,
            double errorMeanSquare,
            int dfError) {
        double f = working.line(
                "F of the " + of, squares / df / errorMeanSquare, "", "{} ÷ {} ÷ {}", squares, df, errorMeanSquare);
        double p = working.line(
                "chance of so large an F if " + of + " did not differ",
                above(f, df, dfError),
                "",
                "1 − F({}; {}; {})",
                f,
                df,
                dfError);
        outputs.put(fKey, f).put(pKey, p);
        return p;
    }
}
