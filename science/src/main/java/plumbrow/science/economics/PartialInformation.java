package plumbrow.science.economics;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.table;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What it is worth to know one of two uncertain things before choosing.
 *
 *   EVPPI(x) = Σ_x p(x)·max_a Σ_y p(y)·u(a,x,y) − max_a Σ p·u
 *
 * The two things are independent. Both together are worth at least as much as either, but not their sum.
 *
 * Source: Raiffa & Schlaifer 1961; defined as in R package voi.
 */
public final class PartialInformation {
    private static final double CLOSE_TO_ONE = 1e-6;

    public static final Figure FIGURE = Figure.declare("partial-information", Subject.ECONOMICS)
            .question("Which of two uncertain things is worth knowing before choosing?")
            .input(list(
                    "first_chances",
                    "Chances of the first thing, such as pest there or not",
                    "",
                    Range.SHARE,
                    "0.3,0.7"))
            .input(list(
                    "second_chances", "Chances of the second, such as price low or high", "", Range.SHARE, "0.5,0.5"))
            .input(table(
                    "payoffs",
                    "Each action a row; columns: first state with each second state, then the next first state",
                    "$/ac",
                    Range.ANY,
                    "0,0,0,0;17,37,-14.5,-12.5"))
            .output("best_expected", "Best expected payoff without knowing", "$/ac")
            .output("value_first", "Value of information on the first", "$/ac")
            .output("value_second", "Value of information on the second", "$/ac")
            .output("value_both", "Value of information on both", "$/ac")
            .formula(
                    "worth = mean over the known thing of the best action's mean over the other − best mean without knowing")
            .source("[raiffa-schlaifer-1961]; defined as in [voi]", VERIFIED)
            .validity("Both things independent, no dislike of risk. Chances of each sum to 1.")
            .caution("The two worths do not add up to that of both.")
            .example(
                    "first_chances=.3,.7 second_chances=.5,.5 payoffs=0,0,0,0;17,37,-14.5,-12.5",
                    "best_expected=0 value_first=8.10 value_second=1.175 value_both=8.10",
                    "pest saves 10 or 1 bu, price 3.50 or 5.50, cost 18",
                    COMPUTED)
            .example(
                    "first_chances=.5,.5 second_chances=.5,.5 payoffs=0,0,0,0;-.5,9.5,-14.5,-12.5",
                    "value_first=2.25 value_second=0 value_both=2.375",
                    "pest saves 5 or 1 bu",
                    COMPUTED)
            .model(PartialInformation::solve);

    private PartialInformation() {}

    private static Outputs solve(Given given, Working working) {
        double[] first = chances(given, "first_chances");
        double[] second = chances(given, "second_chances");
        double[][] payoffs = given.table("payoffs");
        int states = first.length * second.length;
        for (double[] row : payoffs) {
            if (row.length != states) {
                throw given.refuse("payoffs", "rows of " + states + " numbers, one for each pair of states");
            }
        }
        double best = Double.NEGATIVE_INFINITY;
        for (double[] row : payoffs) {
            best = Math.max(best, mean(row, first, second));
        }
        working.line("best expected payoff without knowing", best, "$/ac", "largest of the actions' means: {}", best);
        double knowFirst = 0;
        for (int i = 0; i < first.length; i++) {
            double most = Double.NEGATIVE_INFINITY;
            for (double[] row : payoffs) {
                double mean = 0;
                for (int j = 0; j < second.length; j++) {
                    mean += second[j] * row[i * second.length + j];
                }
                most = Math.max(most, mean);
            }
            knowFirst += first[i] * most;
        }
        double knowSecond = 0;
        for (int j = 0; j < second.length; j++) {
            double most = Double.NEGATIVE_INFINITY;
            for (double[] row : payoffs) {
                double mean = 0;
                for (int i = 0; i < first.length; i++) {
                    mean += first[i] * row[i * second.length + j];
                }
                most = Math.max(most, mean);
            }
            knowSecond += second[j] * most;
        }
        double knowBoth = 0;
        for (int state = 0; state < states; state++) {
            double most = Double.NEGATIVE_INFINITY;
            for (double[] row : payoffs) {
                most = Math.max(most, row[state]);
            }
            knowBoth += first[state / second.length] * second[state % second.length] * most;
        }
        return new Outputs()
                .put("best_expected", best)
                .put("value_first", worth(working, "the first", knowFirst, best))
                .put("value_second", worth(working, "the second", knowSecond, best))
                .put("value_both", worth(working, "both", knowBoth, best));
    }

    private static double worth(Working working, String what, double known, double best) {
        double gain = working.line("knowing " + what, known - best, "$/ac", "{} − {}", known, best);
        return Math.max(gain, 0);
    }

    private static double mean(double[] row, double[] first, double[] second) {
        double mean = 0;
        for (int state = 0; state < row.length; state++) {
            mean += first[state / second.length] * second[state % second.length] * row[state];
        }
        return mean;
    }

    private static double[] chances(Given given, String key) {
        double[] chances = given.list(key);
        double sum = 0;
        for (double chance : chances) {
            sum += chance;
        }
        if (Math.abs(sum - 1) > CLOSE_TO_ONE) {
            throw given.refuse(key, "chances that sum to 1 (these sum to " + Numbers.plain(sum) + ")");
        }
        return chances;
    }
}
