package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.Distribution;
import plumbrow.science.chance.FourParameterBeta;
import plumbrow.science.chance.WeibullDistribution;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Distributions for a yield from its mean and its coefficient of variation, as figures: {@link FourParameterBeta} and {@link WeibullDistribution}.
 *
 * Usual CV of one farm's yield, trend taken out (values from memory): corn 0.15–0.25 in the I-states, 0.25–0.40 on dry
 * plains; soybean 0.15–0.25; winter wheat 0.25–0.40; a field varies at least as much. With six years of own records use
 * those instead.
 */
public final class YieldDistributions {
    private static final String TAIL_CAUTION =
            "A drought year can fall below every smooth curve: Illinois corn farms averaged 0.64 of normal in 2012, 13 % of them below 0.3.";
    private static final Input MEAN =
            number("mean", "Mean yield, trend taken out", "bu/ac", Range.closed(0.001, 1e6), "180");

    public static final Figure BETA = Figure.declare("yield-beta", Subject.ECONOMICS)
            .question("What do mean, spread and ends say of a yield?")
            .input(MEAN)
            .input(number("cv", "Coefficient of variation, as a share", "", Range.closed(0.001, 5), "0.20"))
            .input(number("low", "Lowest yield there can be", "bu/ac", Range.NOT_NEGATIVE, "0")
                    .orElse("0"))
            .input(number("high", "Highest yield there can be", "bu/ac", Range.above(0, 1e6), "250"))
            .input(Asked.PROBABILITY)
            .output("alpha", "First shape", "")
            .output("beta", "Second shape", "")
            .output("skew", "Skew: below 0 leans to bad years", "")
            .sometimes("quantile", "Yield not passed with the given chance", "bu/ac")
            .formula("m = (μ−a)/(b−a), v = (CV·μ/(b−a))², κ = m(1−m)/v − 1, α = mκ, β = (1−m)κ")
            .source("Beta distribution by its moments", MEMORY)
            .validity(
                    "Mean between the ends; a CV too large for the ends is refused. The quantile needs a probability.")
            .caution(TAIL_CAUTION)
            .example(
                    "mean=180 cv=.20 low=0 high=250 probability=.1",
                    "alpha=6.2800 beta=2.4422 skew=-.570 quantile=129.96",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "mean=50 cv=.18 low=0 high=75 probability=.5",
                    "alpha=9.6214 beta=4.8107 skew=-.338 quantile=50.592",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "mean=55 cv=.30 low=0 high=110 probability=.9",
                    "alpha=5.0556 skew=0.000 quantile=76.778",
                    "independent arithmetic",
                    COMPUTED)
            .model(YieldDistributions::solveBeta);

    public static final Figure WEIBULL = Figure.declare("yield-weibull", Subject.ECONOMICS)
            .question("What do mean and spread say of a yield?")
            .input(MEAN)
            .input(number("cv", "Coefficient of variation, as a share", "", Range.closed(0.03, 2), "0.20"))
            .input(Asked.PROBABILITY)
            .output("shape", "Shape", "")
            .output("scale", "Scale", "bu/ac")
            .output("skew", "Skew: below 0 leans to bad years", "")
            .sometimes("quantile", "Yield not passed with the given chance", "bu/ac")
            .formula("1 + CV² = Γ(1+2/k)/Γ(1+1/k)², λ = μ/Γ(1+1/k), quantile = λ(−ln(1−p))^(1/k)")
            .source("Weibull fitted Branch County, Michigan, corn best: [yield-weibull]", VERIFIED)
            .validity(
                    "CV 0.03 to 2. Leans to bad years only for a CV below about 0.31. The quantile needs a probability below 1.")
            .caution(TAIL_CAUTION)
            .example(
                    "mean=180 cv=.20 probability=.1",
                    "shape=5.7974 scale=194.396 skew=-.352 quantile=131.858",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "mean=50 cv=.25 probability=.5",
                    "shape=4.5422 scale=54.760 skew=-.185 quantile=50.515",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "mean=55 cv=.35 probability=.9",
                    "shape=3.1288 scale=61.474 skew=.128 quantile=80.252",
                    "independent arithmetic",
                    COMPUTED)
            .model(YieldDistributions::solveWeibull);

    private YieldDistributions() {}

    private static Outputs solveBeta(Given given, Working working) {
        double mean = given.number("mean");
        double cv = given.number("cv");
        double low = given.number("low");
        double high = given.number("high");
        if (mean <= low || mean >= high) {
            throw given.refuse(
                    "mean", "a number between low (" + Numbers.plain(low) + ") and high (" + Numbers.plain(high) + ")");
        }
        double m = working.line(
                "place of the mean", (mean - low) / (high - low), "", "({} − {}) ÷ ({} − {})", mean, low, high, low);
        double sd = working.line("spread", cv * mean / (high - low), "", "{} × {} ÷ ({} − {})", cv, mean, high, low);
        double kappa = m * (1 - m) / (sd * sd) - 1;
        if (kappa <= 0) {
            throw given.refuse(
                    "cv",
                    "a spread that fits between the ends: below "
                            + Numbers.plain(Math.sqrt(m * (1 - m)) * (high - low) / mean));
        }
        working.line("concentration κ", kappa, "", "{} × (1 − {}) ÷ {}² − 1", m, m, sd);
        double alpha = working.line("α", m * kappa, "", "{} × {}", m, kappa);
        double beta = working.line("β", (1 - m) * kappa, "", "(1 − {}) × {}", m, kappa);
        FourParameterBeta distribution = new FourParameterBeta(low, high, alpha, beta);
        Outputs outputs = new Outputs().put("alpha", alpha).put("beta", beta).put("skew", distribution.skew());
        return withQuantile(outputs, given, working, distribution);
    }

    private static Outputs solveWeibull(Given given, Working working) {
        double mean = given.number("mean");
        double cv = given.number("cv");
        WeibullDistribution distribution = WeibullDistribution.ofMeanAndCv(mean, cv);
        double k = working.line("shape k", distribution.shape(), "", "root of Γ(1+2/k)/Γ(1+1/k)² = 1 + {}²", cv);
        double scale = working.line("scale", distribution.scale(), "bu/ac", "{} bu/ac ÷ Γ(1 + 1/{})", mean, k);
        Outputs outputs = new Outputs().put("shape", k).put("scale", scale).put("skew", distribution.skew());
        if (given.numberOr("probability", 0) == 1) {
            throw given.refuse("probability", "less than 1: the curve has no upper end");
        }
        return withQuantile(outputs, given, working, distribution);
    }

    private static Outputs withQuantile(Outputs outputs, Given given, Working working, Distribution distribution) {
        if (given.has("probability")) {
            double p = given.number("probability");
            outputs.put(
                    "quantile",
                    working.line(
                            "quantile",
                            distribution.quantile(p),
                            "bu/ac",
                            "value of the distribution at chance {}",
                            p));
        }
        return outputs;
    }
}
