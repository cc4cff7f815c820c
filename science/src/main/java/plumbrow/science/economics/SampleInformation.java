package plumbrow.science.economics;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What a test that may err is worth before choosing: scouting, a soil sample, a forecast.
 *
 *   value = Σ_z max_a Σ_s p_s·L(z|s)·u(a,s) − max_a Σ_s p_s·u(a,s)
 *
 *   p_s chance of state s;  u payoff of action a [$/ac];  L(z|s) chance of signal z in state s, Σ_z L = 1
 *
 * Between 0 and the value of knowing for certain. The cost of the test is not taken off.
 *
 * Source: Raiffa & Schlaifer 1961; defined as in R package voi.
 */
public final class SampleInformation {
    private static final double CLOSE_TO_ONE = 1e-6;

    public static final Figure FIGURE = Figure.declare("sample-information", Subject.ECONOMICS)
            .question("What is a test that may err worth before choosing?")
            .input(Payoffs.CHANCES)
            .input(Payoffs.PAYOFFS)
            .input(Input.table(
                    "likelihoods",
                    "Chance of each signal (row) in each state (column); each column sums to 1",
                    "",
                    Range.SHARE,
                    "0.8,0.2,0.1;0.2,0.8,0.9"))
            .output("best_expected", "Best expected payoff without the test", "$/ac")
            .output("with_information", "Expected payoff when the test is read before choosing", "$/ac")
            .output("value", "Value of the test, its cost not taken off", "$/ac")
            .formula("value = Σ over signals of max over actions of Σ p·L·payoff − max over actions of Σ p·payoff")
            .source("[raiffa-schlaifer-1961]; defined as in [voi]", VERIFIED)
            .validity("Chances sum to 1; the chances of all signals sum to 1 in each state. Else refused.")
            .example(
                    "chances=.3,.7 payoffs=20,-20;0,0 likelihoods=.85,.10;.15,.90",
                    "best_expected=0.00 with_information=3.70 value=3.70",
                    "scouting with sensitivity .85 and specificity .90",
                    COMPUTED)
            .example(
                    "chances=.3,.7 payoffs=20,-20;0,0 likelihoods=.5,.5;.5,.5",
                    "value=0.00",
                    "a coin in place of a scout",
                    COMPUTED)
            .model(SampleInformation::solve);

    private SampleInformation() {}

    /** Σ_z max_a Σ_s p_s·L(z|s)·u(a,s). */
    public static double withSignal(double[] chances, double[][] payoffs, double[][] likelihoods) {
        double sum = 0;
        for (double[] signal : likelihoods) {
            sum += bestShare(chances, payoffs, signal);
        }
        return sum;
    }

    private static double bestShare(double[] chances, double[][] payoffs, double[] signal) {
        return share(chances, payoffs[bestAction(chances, payoffs, signal)], signal);
    }

    private static int bestAction(double[] chances, double[][] payoffs, double[] signal) {
        int best = 0;
        for (int action = 1; action < payoffs.length; action++) {
            if (share(chances, payoffs[action], signal) > share(chances, payoffs[best], signal)) {
                best = action;
            }
        }
        return best;
    }

    private static double share(double[] chances, double[] action, double[] signal) {
        double share = 0;
        for (int state = 0; state < chances.length; state++) {
            share += chances[state] * signal[state] * action[state];
        }
        return share;
    }

    private static Outputs solve(Given given, Working working) {
        double[] chances = Payoffs.chances(given);
        double[][] payoffs = Payoffs.table(given, "payoffs", chances.length);
        double[][] likelihoods = Payoffs.table(given, "likelihoods", chances.length);
        checkColumns(given, likelihoods, chances.length);
        double without = Payoffs.showBest(working, chances, payoffs);
        double[] shares = new double[likelihoods.length];
        double with = 0;
        for (int z = 0; z < likelihoods.length; z++) {
            double seen = working.step(
                    "chance of signal " + (z + 1),
                    sumOfProducts(chances, likelihoods[z]),
                    PerfectInformation.expected(chances, likelihoods[z]),
                    "");
            if (seen > 0) {
                for (int state = 0; state < chances.length; state++) {
                    working.line(
                            "chance of state " + (state + 1) + " after signal " + (z + 1),
                            chances[state] * likelihoods[z][state] / seen,
                            "",
                            "{} × {} ÷ {}",
                            chances[state],
                            likelihoods[z][state],
                            seen);
                }
            }
            int action = bestAction(chances, payoffs, likelihoods[z]);
            shares[z] = working.step(
                    "signal " + (z + 1) + ", share of the payoff, with action " + (action + 1)
                            + " as the best after it",
                    sumOfProducts(chances, likelihoods[z], payoffs[action]),
                    share(chances, payoffs[action], likelihoods[z]),
                    "$/ac");
            with += shares[z];
        }
        working.step("expected payoff with the test", Numbers.terms(shares), with, "$/ac");
        double value = working.line(
                "value of the test", Math.max(with - without, 0), "$/ac", "{} $/ac − {} $/ac", with, without);
        return new Outputs()
                .put("best_expected", without)
                .put("with_information", with)
                .put("value", value);
    }

    private static void checkColumns(Given given, double[][] likelihoods, int states) {
        for (int state = 0; state < states; state++) {
            double sum = 0;
            for (double[] signal : likelihoods) {
                sum += signal[state];
            }
            if (Math.abs(sum - 1) > CLOSE_TO_ONE) {
                throw given.refuse(
                        "likelihoods",
                        "columns that each sum to 1 (column " + (state + 1) + " sums to " + Numbers.plain(sum) + ")");
            }
        }
    }

    private static String sumOfProducts(double[]... factors) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < factors[0].length; i++) {
            text.append(i == 0 ? "" : " + ");
            for (int j = 0; j < factors.length; j++) {
                text.append(j == 0 ? "" : " × ").append(Numbers.inBrackets(factors[j][i]));
            }
        }
        return text.toString();
    }
}
