package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The rate that leaves most over the input, on a yield curve that rises, levels and falls.
 *
 *   Y = a + b·x + c·x², c < 0;  x* = (w/P − b)/(2c), at least 0;  margin = P·Y − w·x
 *
 *   x  rate [unit of input per acre];  w  price per unit of input [$];  P  net crop price [$ per unit of yield]
 *
 * Knows neither the label nor the rates that were tested. Optima on flat tops are poorly known: the 90 % band of one corn
 * field ran from 119 to 265 kg/ha of nitrogen.
 *
 * Source: dY/dx = w/P; Hernandez & Mulla 2008 (agridat hernandez.nitrogen) for the check.
 */
public final class BestRateQuadratic {
    public static final Figure FIGURE = Figure.declare("best-rate-quadratic", Subject.ECONOMICS)
            .question("Which rate leaves most over the cost of the input?")
            .input(number("a", "Yield without the input", "bu/ac", Range.ANY, "105"))
            .input(number("b", "First yield per unit of input", "bu per unit", Range.ANY, "1.05"))
            .input(number(
                    "c",
                    "Bend of the curve, below 0",
                    "bu per unit²",
                    new Range(Double.NEGATIVE_INFINITY, true, 0, true),
                    "-0.0030"))
            .input(number("price", "Net crop price", "$/bu", Range.POSITIVE, "4.40"))
            .input(number("input_price", "Price of the input", "$ per unit", Range.NOT_NEGATIVE, "0.55"))
            .output("rate", "Best rate", "units/ac")
            .output("yield", "Yield there", "bu/ac")
            .output("margin_over_input", "Crop value less input", "$/ac")
            .output("rate_of_highest_yield", "Rate of the highest yield", "units/ac")
            .formula(
                    "rate = (input price ÷ crop price − b) ÷ (2c), at least 0; margin = price × yield − input price × rate")
            .source("Marginal yield equals the price ratio", PRACTICE)
            .validity("c below 0, else there is no best rate and it is refused. A best rate below 0 is shown as 0.")
            .caution("It knows neither the label nor the highest rate tested: never go above either.")
            .caution("Yield curves are flat on top: a rate some way below the best loses very little.")
            .example(
                    "a=105 b=1.05 c=-.0030 price=4.40 input_price=.55",
                    "rate=154.17 yield=195.57 rate_of_highest_yield=175",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "a=8.5451517 b=.062943146 c=-.000149546 price=118.1 input_price=.6615",
                    "rate=191.72",
                    "corn, Olmsted Co., Minnesota 2006, site S5 ([hernandez-mulla-2008]; 191.7198 there), Mg/ha by kg N",
                    VERIFIED)
            .example(
                    "a=46.825 b=.2201013 c=-.00041172 price=1.15 input_price=.11",
                    "rate=151.13 rate_of_highest_yield=267.29",
                    "corn, Jackson, Tennessee 1962, [engelstad-parks-1971]",
                    COMPUTED)
            .model(BestRateQuadratic::solve);

    private BestRateQuadratic() {}

    /** x*, at least 0; c below 0. */
    public static double bestRate(double b, double c, double price, double inputPrice) {
        return Math.max(0, (inputPrice / price - b) / (2 * c));
    }

    private static Outputs solve(Given given, Working working) {
        double a = given.number("a");
        double b = given.number("b");
        double c = given.number("c");
        double price = given.number("price");
        double input = given.number("input_price");
        double rate = bestRate(b, c, price, input);
        String formula = rate > 0 ? "({} ÷ {} − {}) ÷ (2 × {})" : "0, since ({} ÷ {} − {}) ÷ (2 × {}) is not above 0";
        working.line("best rate", rate, "units/ac", formula, input, price, b, c);
        double yield = working.line(
                "yield there", a + b * rate + c * rate * rate, "bu/ac", "{} + {} × {} + {} × {}²", a, b, rate, c, rate);
        double margin = working.line(
                "crop value less input",
                price * yield - input * rate,
                "$/ac",
                "{} × {} − {} × {}",
                price,
                yield,
                input,
                rate);
        double top = bestRate(b, c, 1, 0);
        if (yield < 0) {
            working.caution("The curve gives a yield below 0 here: check its numbers.");
        }
        return new Outputs()
                .put("rate", rate)
                .put("yield", yield)
                .put("margin_over_input", margin)
                .put(
                        "rate_of_highest_yield",
                        working.line(
                                "rate of the highest yield",
                                top,
                                "units/ac",
                                top > 0 ? "−{} ÷ (2 × {})" : "0, since −{} ÷ (2 × {}) is not above 0",
                                b,
                                c));
    }
}
