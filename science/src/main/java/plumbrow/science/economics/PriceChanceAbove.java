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
 * The chance of a harvest price above a strike.
 *
 *   P(S > K) = Φ(d₂),  d₂ = [ln(F/K) − σ²T/2] / (σ√T)
 *
 * Symbols as in {@link PriceQuantile}; K strike [$/bu], more than 0. Without volatility or time the price is F: the chance
 * is 1 for a strike below F and 0 for one at F or above.
 *
 * Source: Black 1976, J. Financial Econ. 3:167; formula as in R package greeks.
 */
public final class PriceChanceAbove {
    public static final Figure FIGURE = Figure.declare("price-chance-above", Subject.ECONOMICS)
            .question("How likely is a harvest price above a given one?")
            .input(Asked.FUTURES)
            .input(Asked.VOLATILITY)
            .input(Asked.YEARS)
            .input(number("strike_usd", "Price to be passed", "$/bu", Range.POSITIVE, "4.20"))
            .output("chance", "Chance of a higher price", "")
            .formula("chance = Φ(d₂), d₂ = [ln(F ÷ K) − σ²T/2] ÷ (σ√T)")
            .source("[black-1976], without discounting; formula as in [r-greeks-black76]", VERIFIED)
            .validity(
                    "Futures and strike above 0. Without volatility or time the price is the futures price for certain.")
            .caution("Futures, not cash: add the basis. A crop insurance volatility factor goes in with years = 1.")
            .example(
                    "futures_usd=4.50 volatility=.25 years=.5 strike_usd=4.20",
                    "chance=.61863",
                    "independent arithmetic",
                    COMPUTED)
            .model(PriceChanceAbove::solve);

    private PriceChanceAbove() {}

    private static Outputs solve(Given given, Working working) {
        double futures = given.number("futures_usd");
        double strike = given.number("strike_usd");
        double volatility = given.number("volatility");
        double years = given.number("years");
        double spread = working.line(
                "spread of the logarithm", volatility * Math.sqrt(years), "", "{} × √{} yr", volatility, years);
        LognormalDistribution distribution = new LognormalDistribution(futures, spread);
        double chance = distribution.chanceAbove(strike);
        if (spread == 0) {
            working.line(
                    "chance above", chance, "", "the price stays at {} $/bu, the strike is {} $/bu", futures, strike);
        } else {
            double d2 = working.line(
                    "d₂", distribution.d2(strike), "", "[ln({} ÷ {}) − {}²/2] ÷ {}", futures, strike, spread, spread);
            working.line("chance above", chance, "", "Φ({})", d2);
        }
        return new Outputs().put("chance", chance);
    }
}
