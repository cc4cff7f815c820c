package plumbrow.science.economics;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What it is worth, at most, to know before choosing.
 *
 *   value = Σ p_s·max_a u(a,s) − max_a Σ p_s·u(a,s)                 states s with chance p_s, payoff u of action a
 *   from draws: mean_k max_c m[c,k] − max_c mean_k m[c,k]
 *   two programs, gain normal: σ·φ(μ/σ) − |μ|·Φ(−|μ|/σ)
 *
 * For someone who weighs a dollar lost like a dollar won. Never below 0. No test, map or forecast is worth more.
 *
 * Source: Raiffa & Schlaifer 1961; defined as in R package voi.
 */
public final class PerfectInformation {
    public static final Figure FIGURE = Figure.declare("perfect-information", Subject.ECONOMICS)
            .question("What is it worth, at most, to know before choosing?")
            .input(Payoffs.CHANCES)
            .input(Payoffs.PAYOFFS)
            .output("best_expected", "Best expected payoff without knowing", "$/ac")
            .output("with_information", "Expected payoff when the state is known before choosing", "$/ac")
            .output("value", "Value of knowing", "$/ac")
            .formula("value = Σ p·max over actions − max over actions of Σ p·payoff")
            .source("[raiffa-schlaifer-1961]; defined as in [voi]", VERIFIED)
            .validity("Chances sum to 1; each action has a payoff in each state. Risk is not weighed. Else refused.")
            .example(
                    "chances=.4,.1,.3,.2 payoffs=55,43,29,15;26,38,43,51",
                    "best_expected=38.00 with_information=49.40 value=11.40",
                    "payoffs of a textbook table ([questionai-22], expected payoffs 38 and 37.3),"
                            + " independent arithmetic",
                    COMPUTED)
            .example(
                    "chances=.5,.3,.2 payoffs=0,0,0;-16,4,44",
                    "best_expected=2.00 with_information=10.00 value=8.00",
                    "spray or none",
                    COMPUTED)
            .model(PerfectInformation::solve);

    private PerfectInformation() {}

    /** max_a Σ p_s·u(a,s). */
    public static double bestExpected(double[] chances, double[][] payoffs) {
        double best = Double.NEGATIVE_INFINITY;
        for (double[] action : payoffs) {
            best = Math.max(best, expected(chances, action));
        }
        return best;
    }

    /** Σ p_s·max_a u(a,s). */
    public static double withInformation(double[] chances, double[][] payoffs) {
        double sum = 0;
        for (int state = 0; state < chances.length; state++) {
            sum += chances[state] * best(payoffs, state);
        }
        return sum;
    }

    /** The value of knowing [unit of the payoff], from margins[program][draw] on the same draws. */
    public static double fromDraws(double[][] margins) {
        int draws = margins[0].length;
        double known = 0;
        for (int draw = 0; draw < draws; draw++) {
            known += best(margins, draw);
        }
        double best = Double.NEGATIVE_INFINITY;
        for (double[] program : margins) {
            double sum = 0;
            for (double margin : program) {
                sum += margin;
            }
            best = Math.max(best, sum);
        }
        return Math.max((known - best) / draws, 0);
    }

    /** The value of knowing which of two programs is better when their difference is normal: mean μ, spread σ ≥ 0. */
    public static double ofNormalGain(double mean, double sd) {
        if (sd == 0) {
            return 0;
        }
        double z = Math.abs(mean) / sd;
        return Math.max(sd * StandardNormal.density(z) - Math.abs(mean) * StandardNormal.below(-z), 0);
    }

    static double expected(double[] chances, double[] payoffs) {
        double sum = 0;
        for (int state = 0; state < chances.length; state++) {
            sum += chances[state] * payoffs[state];
        }
        return sum;
    }

    private static double best(double[][] payoffs, int state) {
        double best = Double.NEGATIVE_INFINITY;
        for (double[] action : payoffs) {
            best = Math.max(best, action[state]);
        }
        return best;
    }

    private static Outputs solve(Given given, Working working) {
        double[] chances = Payoffs.chances(given);
        double[][] payoffs = Payoffs.table(given, "payoffs", chances.length);
        double without = Payoffs.showBest(working, chances, payoffs);
        double[] shares = new double[chances.length];
        double with = 0;
        for (int state = 0; state < chances.length; state++) {
            double best = best(payoffs, state);
            with += chances[state] * best;
            shares[state] = working.line(
                    "share of state " + (state + 1) + " with its best action",
                    chances[state] * best,
                    "$/ac",
                    "{} × {} $/ac",
                    chances[state],
                    best);
        }
        working.step("expected payoff when the state is known", Numbers.terms(shares), with, "$/ac");
        double value = working.line(
                "value of knowing", Math.max(with - without, 0), "$/ac", "{} $/ac − {} $/ac", with, without);
        return new Outputs()
                .put("best_expected", without)
                .put("with_information", with)
                .put("value", value);
    }
}
