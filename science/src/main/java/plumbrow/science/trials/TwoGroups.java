package plumbrow.science.trials;

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
 * How many plots each of two ways needs where the plots are not paired, and a pair's spread from a plot's.
 *
 *   least n with P(T' > t_{1−α/2, 2(n−1)}) ≥ power, T' noncentral around δ/σ·√(n/2);  s_d = √2·σ
 *
 *   δ  difference that matters;  σ  standard deviation of a plot
 *
 * Source: definition of the noncentral t distribution; R power.t.test, its help and source.
 */
public final class TwoGroups {
    public static final Figure FIGURE = Figure.declare("plots-needed", Subject.TRIALS)
            .question("How many plots of each of two ways does it take where they are not paired?")
            .input(number("difference", "Difference that matters", "bu/ac", Range.POSITIVE, "10"))
            .input(number("sd", "Standard deviation of a plot", "bu/ac", Range.POSITIVE, "12"))
            .input(ReplicatesNeeded.ALPHA)
            .input(number("power", "Chance wanted of showing it", "", Range.closed(.5, .999), "0.8")
                    .orElse("0.8"))
            .output("plots_each", "Plots of each way", "")
            .output("exact", "Before rounding up", "")
            .output("first_guess", "First guess by the normal distribution", "")
            .output("pair_sd", "Spread of a difference of two such plots", "bu/ac")
            .formula(
                    "least n by the noncentral t distribution; first guess 2 × (z + z)² × (sd ÷ difference)²; pair spread = √2 × sd")
            .source("Noncentral t distribution, as in [r-power-t-test]", VERIFIED)
            .validity(
                    "Two ways, plots laid out at random, one spread. Pairing side by side needs fewer: see replicates-needed.")
            .caution("Most single fields can't show 3 bushels: add sites rather than plots.")
            .example("difference=1 sd=1 power=.9", "plots_each=23 exact=22.02", "[r-power-t-test]", COMPUTED)
            .example("difference=5 sd=6", "first_guess=22.6 pair_sd=8.485", "CV 6 %, difference 5 %", COMPUTED)
            .example("difference=5 sd=10", "first_guess=62.8", "CV 10 %", COMPUTED)
            .model(TwoGroups::solve);

    private TwoGroups() {}

    private static Outputs solve(Given given, Working working) {
        double difference = given.number("difference");
        double sd = given.number("sd");
        double alpha = given.number("alpha");
        double power = given.number("power");
        double size = working.line("difference in standard deviations", difference / sd, "", "{} ÷ {}", difference, sd);
        double guess = size > 0 ? 2 * ReplicatesNeeded.firstGuess(size, alpha, power) : Double.POSITIVE_INFINITY;
        if (guess > 100_000) {
            throw given.refuse(
                    "difference", "a difference less small beside sd: this one needs more than 100,000 plots");
        }
        working.line("first guess", guess, "", "2 × ((Φ⁻¹({}) + Φ⁻¹({})) ÷ {})²", 1 - alpha / 2, power, size);
        double exact = working.line(
                "plots by the noncentral t distribution",
                ReplicatesNeeded.exactOfTwoGroups(size, alpha, power),
                "",
                "root of: chance of a significant difference is {}",
                power);
        double pair = working.line("spread of a pair's difference", Math.sqrt(2) * sd, "", "√(2) × {}", sd);
        return new Outputs()
                .put("plots_each", Numbers.wholeUp(exact - 1e-6))
                .put("exact", exact)
                .put("first_guess", guess)
                .put("pair_sd", pair);
    }
}
