package plumbrow.science.trials;

import static plumbrow.science.figure.Input.number;

import java.util.Arrays;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Working;

/** Inputs and sentences that several figures of this subject share. */
final class Asked {
    static final Input CONFIDENCE = number(
                    "confidence", "Confidence of the interval", "", Range.closed(.5, .9999), "0.95")
            .orElse("0.95");
    static final String NO_SPREAD = "none";
    static final String NOT_SHOWN = "A chance above 5 % means not shown, never no effect.";

    private static final int MOST_TERMS = 12;
    private static final int WEAK_BLOCKS = 4;
    private static final double ROUNDING = 1e-12;

    private Asked() {}

    static double mean(double[] values) {
        return Arrays.stream(values).sum() / values.length;
    }

    static double squares(double[] values, double around) {
        return Arrays.stream(values)
                .map(value -> (value - around) * (value - around))
                .sum();
    }

    /** (v₁ − m)² + (v₂ − m)² + …, shortened in the middle. */
    static String squareTerms(double[] values, double around) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < values.length; i++) {
            if (values.length > MOST_TERMS && i == MOST_TERMS - 1) {
                text.append(" + …");
                i = values.length - 1;
            }
            text.append(i == 0 ? "" : " + ")
                    .append("(")
                    .append(Numbers.plain(values[i]))
                    .append(" − ")
                    .append(Numbers.inBrackets(around))
                    .append(")²");
        }
        return text.toString();
    }

    /** Whether a spread is nothing but the rounding of numbers of this size. */
    static boolean isRounding(double spread, double size) {
        return spread <= ROUNDING * size;
    }

    static double largest(double[] values) {
        return Arrays.stream(values).map(Math::abs).max().orElse(0);
    }

    static void cautionFewBlocks(Working working, int blocks) {
        if (blocks < WEAK_BLOCKS) {
            working.caution("Weak: " + blocks + " blocks. Four to six, randomised side by side, make a trial.");
        }
    }

    /** Rows of one width, at least two of each, or the refusal. */
    static double[][] blocks(Given given, String key) {
        double[][] rows = given.table(key);
        if (rows.length < 2) {
            throw given.refuse(key, "two blocks (rows) or more; one strip each way is a demonstration, not a trial");
        }
        for (double[] row : rows) {
            if (row.length != rows[0].length || row.length < 2) {
                throw given.refuse(key, "rows of the same two or more treatments");
            }
        }
        return rows;
    }
}
