package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * What a strip trial is worth before it is laid out.
 *
 *   σ_n = σ₀² / √(σ₀² + s²/n);  value = σ_n·φ(μ/σ_n) − |μ|·Φ(−|μ|/σ_n)
 *
 *   μ, σ₀  what is believed of the gain today: mean and spread [$/ac];  s  SD of one pair's difference [$/ac];  n  pairs
 *
 * Times the acres and years for which the answer will be used, less the cost of the trial. Below the value of certainty
 * (σ_n → σ₀) and above 0.
 *
 * Source: Raiffa & Schlaifer 1961; defined as in R package voi.
 */
public final class TrialValue {
    public static final Figure FIGURE = Figure.declare("trial-value", Subject.ECONOMICS)
            .question("What is a strip trial worth before it is laid out?")
            .input(number("gain_mean", "Gain believed today, mean", "$/ac", Range.ANY, "5"))
            .input(number("gain_sd", "Gain believed today, spread", "$/ac", Range.NOT_NEGATIVE, "20"))
            .input(number("pair_sd", "Spread of one pair's difference", "$/ac", Range.POSITIVE, "40"))
            .input(number("pairs", "Pairs of strips", "", Range.closed(1, 10_000), "8"))
            .input(number("acres", "Acres on which the answer will be used", "ac", Range.NOT_NEGATIVE, "500")
                    .orElse("1"))
            .input(number("years", "Years for which it will be used", "yr", Range.NOT_NEGATIVE, "2")
                    .orElse("1"))
            .input(number("trial_usd", "Cost of the trial", "$", Range.NOT_NEGATIVE, "800")
                    .orElse("0"))
            .output("sd_of_answer", "Spread that the trial's answer will have", "$/ac")
            .output("value_usd_ac", "Value of the trial per acre and year", "$/ac")
            .output("certainty_usd_ac", "Value of knowing for certain", "$/ac")
            .output("net_usd", "Value over all acres and years, after the trial's cost", "$")
            .formula("σn = σ₀² ÷ √(σ₀² + s²/n); value = σn φ(μ/σn) − |μ| Φ(−|μ|/σn)")
            .source("[raiffa-schlaifer-1961]; defined as in [voi]", VERIFIED)
            .validity(
                    "Normal belief and normal errors; the same gain on all the acres and years. Later years are not discounted.")
            .example(
                    "gain_mean=5 gain_sd=20 pair_sd=40 pairs=1",
                    "sd_of_answer=8.944 value_usd_ac=1.612 certainty_usd_ac=5.7269",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "gain_mean=5 gain_sd=20 pair_sd=40 pairs=4",
                    "sd_of_answer=14.142 value_usd_ac=3.491",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "gain_mean=5 gain_sd=20 pair_sd=40 pairs=8",
                    "sd_of_answer=16.330 value_usd_ac=4.318",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "gain_mean=5 gain_sd=20 pair_sd=40 pairs=16",
                    "sd_of_answer=17.889 value_usd_ac=4.913",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "gain_mean=-8 gain_sd=15 pair_sd=40 pairs=8",
                    "certainty_usd_ac=2.8156",
                    "independent arithmetic",
                    COMPUTED)
            .model(TrialValue::solve);

    private TrialValue() {}

    /** σ_n [$/ac], the spread of what the trial will make us believe. */
    public static double sdOfAnswer(double gainSd, double pairSd, double pairs) {
        return gainSd == 0 ? 0 : gainSd * gainSd / Math.sqrt(gainSd * gainSd + pairSd * pairSd / pairs);
    }

    private static Outputs solve(Given given, Working working) {
        double mean = given.number("gain_mean");
        double sd = given.number("gain_sd");
        double pairSd = given.number("pair_sd");
        double pairs = given.number("pairs");
        double answer = working.line(
                "spread of the answer",
                sdOfAnswer(sd, pairSd, pairs),
                "$/ac",
                "{}² ÷ √({}² + {}² ÷ {})",
                sd,
                sd,
                pairSd,
                pairs);
        double value = showValue(working, "value of the trial", mean, answer);
        double certain = showValue(working, "value of certainty", mean, sd);
        double acres = given.number("acres");
        double years = given.number("years");
        double cost = given.number("trial_usd");
        double net = working.line(
                "net value",
                value * acres * years - cost,
                "$",
                "{} $/ac × {} ac × {} yr − {} $",
                value,
                acres,
                years,
                cost);
        return new Outputs()
                .put("sd_of_answer", answer)
                .put("value_usd_ac", value)
                .put("certainty_usd_ac", certain)
                .put("net_usd", net);
    }

    private static double showValue(Working working, String label, double mean, double sd) {
        double value = PerfectInformation.ofNormalGain(mean, sd);
        if (sd == 0) {
            return working.line(label, value, "$/ac", "nothing is left to learn: {}", 0);
        }
        double size = Math.abs(mean);
        double z = working.line(label + ": mean in spreads", size / sd, "", "{} ÷ {}", size, sd);
        return working.line(label, value, "$/ac", "{} × φ({}) − {} × Φ(−{})", sd, z, size, z);
    }
}
