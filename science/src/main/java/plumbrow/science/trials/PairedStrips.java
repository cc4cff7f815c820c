package plumbrow.science.trials;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
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
 * What strips laid side by side say of two ways.
 *
 *   d_i = a_i − b_i;  se = s_d/√n;  t = d̄/se, n − 1 degrees of freedom;  interval d̄ ± t_{1−α/2}·se
 *   chance that the mean gain passes g*: T((d̄ − g*)/se)                    flat prior
 *
 *   a, b  yields of the pairs [bu/ac], two or more;  g*  gain that pays [bu/ac]
 *
 * The chance is that of this field and season, not of next year. Where all differences are equal there is no spread: the
 * difference alone is reported.
 *
 * Source: Student 1908; data of the check: Immer et al. 1934.
 */
public final class PairedStrips {
    public static final Figure FIGURE = Figure.declare("paired-strips", Subject.TRIALS)
            .question("Which of two ways yielded more in side-by-side strips, and how sure is that?")
            .input(list(
                    "a", "Yields of the first way, one for each pair", "bu/ac", Range.ANY, "212.4,205.1,198.7,220.3"))
            .input(list(
                    "b", "Yields of the second way, in the same order", "bu/ac", Range.ANY, "205.0,199.8,196.2,209.1"))
            .input(Asked.CONFIDENCE)
            .input(number("break_even", "Gain that pays for the first way", "bu/ac", Range.ANY, "5.5")
                    .orElse("0"))
            .output("difference", "Mean difference, first less second", "bu/ac")
            .output("standard_error", "Standard error of the difference", "bu/ac")
            .output("t", "Difference in standard errors", "")
            .output("df", "Degrees of freedom", "")
            .output("p", "Chance of so large a difference if there were none", "")
            .output("low", "Interval, lower end", "bu/ac")
            .output("high", "Interval, upper end", "bu/ac")
            .output("chance_above_break_even", "Chance that the mean gain passes break-even", "")
            .formula("se = s ÷ √n; t = mean difference ÷ se; chance = T((mean difference − break-even) ÷ se; n − 1)")
            .source("Paired t of [student-1908], as worked in [immer-1934]", VERIFIED)
            .validity(
                    "Two pairs or more, randomised side by side. Where all differences are equal, the word none stands for"
                            + " t, p, interval and chance.")
            .caution("The chance is that of this field and season's mean, not of next year.")
            .caution(Asked.NOT_SHOWN)
            .example(
                    "a=212.4,205.1,198.7,220.3,209.9,201.6 b=205.0,199.8,196.2,209.1,206.6,192.3 break_even=5.5",
                    "difference=6.5000 standard_error=1.39547 t=4.65793 df=5 p=.0055424 low=2.9128 high=10.0872"
                            + " chance_above_break_even=.74716",
                    "invented strips",
                    COMPUTED)
            .example(
                    "a=212.4,205.1,198.7,220.3,209.9,201.6 b=205.0,199.8,196.2,209.1,206.6,192.3 confidence=.9",
                    "low=3.6881 high=9.3119",
                    "invented strips",
                    COMPUTED)
            .example(
                    "a=81.0,105.4,119.7,109.7,98.3,146.6,142.0,150.7,191.5,145.7,82.3,77.3,78.4,131.3,89.6,119.8,121.4,124.0,"
                            + "140.8,124.8,98.9,89.0,69.1,89.3,104.1,86.9,77.1,78.9,101.8,96.0"
                            + " b=80.7,82.3,80.4,87.2,84.2,100.4,115.5,112.2,147.7,108.1,103.1,105.1,116.5,139.9,129.6,98.9,"
                            + "61.9,96.2,125.5,75.7,66.4,49.9,96.7,61.9,80.3,67.7,66.7,67.4,91.8,94.1 break_even=8",
                    "difference=15.91333 t=3.324 df=29 p=.002413 low=6.121954 high=25.704713",
                    "barley of 1931 and 1932, [immer-1934]",
                    VERIFIED)
            .model(PairedStrips::solve);

    private PairedStrips() {}

    /** The chance that the true mean passes a gain, from mean and standard error of n pairs. */
    public static double chanceAbove(double gain, double mean, double standardError, int pairs) {
        return StudentT.below((mean - gain) / standardError, pairs - 1);
    }

    private static Outputs solve(Given given, Working working) {
        double[] a = given.list("a");
        double[] b = given.list("b");
        int n = a.length;
        if (b.length != n) {
            throw given.refuse("b", "as many yields as a has (" + n + ")");
        }
        if (n < 2) {
            throw given.refuse("a", "two pairs or more; one strip each way is a demonstration, not a trial");
        }
        double[] differences = new double[n];
        for (int i = 0; i < n; i++) {
            differences[i] = a[i] - b[i];
        }
        double mean = working.step(
                "mean difference, first less second",
                "(" + Numbers.terms(differences) + ") ÷ " + n,
                Asked.mean(differences),
                "bu/ac");
        double squares = working.step(
                "squared deviations", Asked.squareTerms(differences, mean), Asked.squares(differences, mean), "");
        double sd = working.line(
                "spread of the differences", Math.sqrt(squares / (n - 1)), "bu/ac", "√({} ÷ ({} − 1))", squares, n);
        double error = working.line("standard error", sd / Math.sqrt(n), "bu/ac", "{} ÷ √{}", sd, n);
        Asked.cautionFewBlocks(working, n);
        Outputs outputs = new Outputs().put("difference", mean).put("standard_error", error);
        if (Asked.isRounding(sd, Math.max(Asked.largest(a), Asked.largest(b)))) {
            working.caution("All differences are equal: strips without any spread say nothing of how sure this is.");
            return outputs.put("t", Asked.NO_SPREAD)
                    .put("df", n - 1)
                    .put("p", Asked.NO_SPREAD)
                    .put("low", Asked.NO_SPREAD)
                    .put("high", Asked.NO_SPREAD)
                    .put("chance_above_break_even", Asked.NO_SPREAD);
        }
        return withTest(given, working, outputs, mean, error, n);
    }

    private static Outputs withTest(Given given, Working working, Outputs outputs, double mean, double error, int n) {
        double breakEven = given.number("break_even");
        double confidence = given.number("confidence");
        double t = working.line("t", mean / error, "", "{} ÷ {}", mean, error);
        double p = working.line(
                "chance of so large a difference if there were none",
                StudentT.bothTails(t, n - 1),
                "",
                "2 × T(−{}; {})",
                Math.abs(t),
                n - 1);
        double reach = working.line(
                "t for the interval",
                StudentT.forConfidence(confidence, n - 1),
                "",
                "T⁻¹({}; {})",
                (1 + confidence) / 2,
                n - 1);
        double low = working.line("lower end", mean - reach * error, "bu/ac", "{} − {} × {}", mean, reach, error);
        double high = working.line("upper end", mean + reach * error, "bu/ac", "{} + {} × {}", mean, reach, error);
        double chance = working.line(
                "chance that the mean gain passes break-even",
                chanceAbove(breakEven, mean, error, n),
                "",
                "T(({} − {}) ÷ {}; {})",
                mean,
                breakEven,
                error,
                n - 1);
        return outputs.put("t", t)
                .put("df", n - 1)
                .put("p", p)
                .put("low", low)
                .put("high", high)
                .put("chance_above_break_even", chance);
    }
}
