package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.LognormalDistribution;
import plumbrow.science.chance.StandardNormal;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The harvest price that is not passed with a given chance.
 *
 *   S = F·exp(−σ²T/2 + σ√T·Z), Z = Φ⁻¹(p);  mean F
 *
 *   F  harvest futures today [$/bu];  σ implied volatility per year [1/√yr];  T years to the harvest price [yr]
 *
 * A crop insurance volatility factor is scaled to its window already and goes in with T = 1. σ√T = 0 gives F. Fat tails
 * are not modelled; basis is not in it.
 *
 * Source: Black 1976, J. Financial Econ. 3:167; formula as in R package greeks, without discounting.
 */
public final class PriceQuantile {
    public static final Figure FIGURE = Figure.declare("price-quantile", Subject.ECONOMICS)
            .question("Which harvest price is not passed with a given chance?")
            .input(Asked.FUTURES)
            .input(Asked.VOLATILITY)
            .input(Asked.YEARS)
            .input(number("probability", "Chance of a price at or below the answer", "", Range.open(0, 1), "0.1"))
            .output("price_usd", "Price not passed", "$/bu")
            .output("mean_usd", "Mean price", "$/bu")
            .output("sd_usd", "Standard deviation of the price", "$/bu")
            .formula("price = F × exp(−σ²T/2 + σ√T × Z), Z = Φ⁻¹(probability)")
            .source("[black-1976], without discounting; formula as in [r-greeks-black76]", VERIFIED)
            .validity(
                    "Futures above 0, volatility 0 to 3 per year. Without volatility or time the answer is the futures price.")
            .caution("Futures, not cash: add the basis. A crop insurance volatility factor goes in with years = 1.")
            .example(
                    "futures_usd=4.50 volatility=.25 years=.5 probability=.1",
                    "price_usd=3.5321 mean_usd=4.50 sd_usd=0.8018",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "futures_usd=4.50 volatility=.25 years=.5 probability=.05",
                    "price_usd=3.3124",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "futures_usd=11.00 volatility=.18 years=.8 probability=.5",
                    "price_usd=10.8584 sd_usd=1.7825",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "futures_usd=6.00 volatility=.32 years=.25 probability=.9",
                    "price_usd=7.2718 sd_usd=0.9662",
                    "independent arithmetic",
                    COMPUTED)
            .model(PriceQuantile::solve);

    private PriceQuantile() {}

    private static Outputs solve(Given given, Working working) {
        double futures = given.number("futures_usd");
        double volatility = given.number("volatility");
        double years = given.number("years");
        double chance = given.number("probability");
        double spread = working.line(
                "spread of the logarithm", volatility * Math.sqrt(years), "", "{} × √{} yr", volatility, years);
        LognormalDistribution distribution = new LognormalDistribution(futures, spread);
        double z = working.line("standard normal", StandardNormal.quantile(chance), "", "Φ⁻¹({})", chance);
        double price = working.line(
                "price",
                distribution.quantile(chance),
                "$/bu",
                "{} $/bu × exp(−{}²/2 + {} × {})",
                futures,
                spread,
                spread,
                z);
        double sd = working.line(
                "standard deviation", distribution.sd(), "$/bu", "{} $/bu × √(exp({}²) − 1)", futures, spread);
        return new Outputs().put("price_usd", price).put("mean_usd", futures).put("sd_usd", sd);
    }
}
