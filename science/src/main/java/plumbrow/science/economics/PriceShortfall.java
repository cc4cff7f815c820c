package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.LognormalDistribution;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How far, on average, a harvest price falls short of a floor.
 *
 *   E[max(K − S, 0)] = K·Φ(−d₂) − F·Φ(−d₁);  mean price given S < K: F·Φ(−d₁)/Φ(−d₂);  d₁ = d₂ + σ√T
 *
 * Symbols as in {@link PriceChanceAbove}. It is what a floor at K is worth before any discount or premium.
 *
 * Source: Black 1976, J. Financial Econ. 3:167; formula as in R package greeks.
 */
public final class PriceShortfall {
    public static final Figure FIGURE = Figure.declare("price-shortfall", Subject.ECONOMICS)
            .question("How far does the harvest price fall short of a floor, on average?")
            .input(Asked.FUTURES)
            .input(Asked.VOLATILITY)
            .input(Asked.YEARS)
            .input(number("strike_usd", "Floor", "$/bu", Range.POSITIVE, "4.20"))
            .output("shortfall_usd", "Shortfall, averaged over all outcomes", "$/bu")
            .output("chance_below", "Chance of a price below the floor", "")
            .sometimes("mean_below_usd", "Mean price when it is below", "$/bu")
            .formula("shortfall = K × Φ(−d₂) − F × Φ(−d₁)")
            .source("[black-1976], without discounting; formula as in [r-greeks-black76]", VERIFIED)
            .validity(
                    "Futures and floor above 0. The mean price below is given only where the chance of it is above 0.")
            .caution("Futures, not cash: add the basis. A crop insurance volatility factor goes in with years = 1.")
            .example(
                    "futures_usd=4.50 volatility=.25 years=.5 strike_usd=4.20",
                    "shortfall_usd=.17935 mean_below_usd=3.7297",
                    "independent arithmetic",
                    COMPUTED)
            .model(PriceShortfall::solve);

    private PriceShortfall() {}

    private static Outputs solve(Given given, Working working) {
        double futures = given.number("futures_usd");
        double strike = given.number("strike_usd");
        double volatility = given.number("volatility");
        double years = given.number("years");
        double spread = working.line(
                "spread of the logarithm", volatility * Math.sqrt(years), "", "{} × √{} yr", volatility, years);
        LognormalDistribution distribution = new LognormalDistribution(futures, spread);
        double below = 1 - distribution.chanceAbove(strike);
        if (spread > 0) {
            double d2 = working.line(
                    "d₂", distribution.d2(strike), "", "[ln({} ÷ {}) − {}²/2] ÷ {}", futures, strike, spread, spread);
            working.line("chance below", below, "", "1 − Φ({})", d2);
            working.line(
                    "shortfall",
                    distribution.shortfallBelow(strike),
                    "$/bu",
                    "{} × {} − {} × Φ(−{} − {})",
                    strike,
                    below,
                    futures,
                    d2,
                    spread);
        } else {
            working.line(
                    "shortfall",
                    distribution.shortfallBelow(strike),
                    "$/bu",
                    "{} − {} $/bu, not below 0",
                    strike,
                    futures);
        }
        Outputs outputs = new Outputs()
                .put("shortfall_usd", Math.max(distribution.shortfallBelow(strike), 0))
                .put("chance_below", below);
        if (below > 0) {
            outputs.put(
                    "mean_below_usd",
                    working.line(
                            "mean price below",
                            distribution.meanBelow(strike),
                            "$/bu",
                            "{} − {} ÷ {}",
                            strike,
                            distribution.shortfallBelow(strike),
                            below));
        }
        return outputs;
    }
}
