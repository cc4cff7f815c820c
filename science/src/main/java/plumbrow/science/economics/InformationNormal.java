package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What it is worth to know a gain for certain before choosing.
 *
 *   gain ~ N(μ, σ): EVPI = σ·φ(μ/σ) − |μ|·Φ(−|μ|/σ)
 *
 * Source: Raiffa & Schlaifer 1961; defined as in R package voi.
 */
public final class InformationNormal {
    public static final Figure FIGURE = Figure.declare("information-normal", Subject.ECONOMICS)
            .question("What is it worth to know a gain for certain before choosing?")
            .input(number("gain_mean", "Gain believed, mean", "$/ac", Range.ANY, "5"))
            .input(number("gain_sd", "Gain believed, spread", "$/ac", Range.POSITIVE, "20"))
            .output("value_usd_ac", "Value of information", "$/ac")
            .output("chance_wrong", "Chance that today's choice is the wrong one", "")
            .formula("worth = spread × φ(mean ÷ spread) − |mean| × Φ(−|mean| ÷ spread)")
            .source("[raiffa-schlaifer-1961]; defined as in [voi]", VERIFIED)
            .validity("Two programs whose difference is believed normal; today's choice goes by the sign of the mean.")
            .example(
                    "gain_mean=5 gain_sd=20",
                    "value_usd_ac=5.7269 chance_wrong=.4013",
                    "independent arithmetic",
                    COMPUTED)
            .example("gain_mean=-8 gain_sd=15", "value_usd_ac=2.8156", "independent arithmetic", COMPUTED)
            .model(InformationNormal::solve);

    private InformationNormal() {}

    private static Outputs solve(Given given, Working working) {
        double mean = given.number("gain_mean");
        double sd = given.number("gain_sd");
        double size = Math.abs(mean);
        double wrong = working.line(
                "chance that today's choice is wrong", StandardNormal.below(-size / sd), "", "Φ(−{} ÷ {})", size, sd);
        double worth = working.line(
                "value of information",
                sd * StandardNormal.density(size / sd) - size * wrong,
                "$/ac",
                "{} × φ({} ÷ {}) − {} × {}",
                sd,
                size,
                sd,
                size,
                wrong);
        return new Outputs().put("value_usd_ac", Math.max(worth, 0)).put("chance_wrong", wrong);
    }
}
