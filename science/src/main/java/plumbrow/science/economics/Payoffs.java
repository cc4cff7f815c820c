package plumbrow.science.economics;

import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Working;

/** The payoff table that the figures on the value of information ask for: rows are actions, columns are states. */
final class Payoffs {
    static final Input CHANCES =
            Input.list("chances", "Chance of each state, together 1", "", Range.SHARE, "0.5,0.3,0.2");
    static final Input PAYOFFS = Input.table(
            "payoffs", "Payoff of each action (row) in each state (column)", "$/ac", Range.ANY, "0,0,0;-16,4,44");

    private static final double CLOSE_TO_ONE = 1e-6;

    private Payoffs() {}

    static double[] chances(Given given) {
        double[] chances = given.list("chances");
        double sum = 0;
        for (double chance : chances) {
            sum += chance;
        }
        if (Math.abs(sum - 1) > CLOSE_TO_ONE) {
            throw given.refuse("chances", "chances that sum to 1 (these sum to " + Numbers.plain(sum) + ")");
        }
        return chances;
    }

    static double[][] table(Given given, String key, int states) {
        double[][] rows = given.table(key);
        for (double[] row : rows) {
            if (row.length != states) {
                throw given.refuse(key, "rows of " + states + " numbers, one for each chance");
            }
        }
        return rows;
    }

    /** Writes the expected payoff of each action and hands back the best. */
    static double showBest(Working working, double[] chances, double[][] payoffs) {
        double best = Double.NEGATIVE_INFINITY;
        for (int action = 0; action < payoffs.length; action++) {
            StringBuilder sum = new StringBuilder();
            for (int state = 0; state < chances.length; state++) {
                sum.append(state == 0 ? "" : " + ")
                        .append(Numbers.plain(chances[state]))
                        .append(" × ")
                        .append(Numbers.inBrackets(payoffs[action][state]));
            }
            double expected = working.step(
                    "expected payoff of action " + (action + 1),
                    sum.toString(),
                    PerfectInformation.expected(chances, payoffs[action]),
                    "$/ac");
            best = Math.max(best, expected);
        }
        return best;
    }
}
