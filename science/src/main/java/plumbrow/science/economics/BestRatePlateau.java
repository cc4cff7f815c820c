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
 * The rate that leaves most over the input, on a yield curve that levels off.
 *
 *   Y = Y_m − (κ/2)·(M − x)² below M, Y_m from M on;  x* = M − (w/P)/κ, at least 0 and never past M
 *   used only where margin(x*) − margin(0) passes the cost of the pass
 *
 *   Y_m  plateau [bu/ac];  M  rate where it begins;  κ  bend;  w  price per unit of input [$];  P  net crop price [$/bu]
 *
 * Knows neither the label nor the rates that were tested.
 *
 * Source: Engelstad & Parks 1971 (agridat engelstad.nitro) for the check.
 */
public final class BestRatePlateau {
    public static final Figure FIGURE = Figure.declare("best-rate-plateau", Subject.ECONOMICS)
            .question("Which rate leaves most over the input, where yield levels off?")
            .input(number("ym", "Yield on the plateau", "bu/ac", Range.POSITIVE, "74.7426"))
            .input(number("m", "Rate at which the plateau begins", "units/ac", Range.POSITIVE, "225.340"))
            .input(number("kappa", "Bend below it", "bu per unit²", Range.POSITIVE, "0.00113122"))
            .input(number("price", "Net crop price", "$/bu", Range.POSITIVE, "1.15"))
            .input(number("input_price", "Price of the input", "$ per unit", Range.NOT_NEGATIVE, "0.11"))
            .input(number("pass_usd_ac", "Cost of the pass", "$/ac", Range.NOT_NEGATIVE, "7.50")
                    .orElse("0"))
            .output("rate", "Best rate; 0 is none", "units/ac")
            .output("yield", "Yield there", "bu/ac")
            .output("margin_over_input", "Crop value less input and pass", "$/ac")
            .formula(
                    "rate = M − (input price ÷ crop price) ÷ κ, from 0 to M, and none where the pass costs more than it gains")
            .source("Marginal yield equals the price ratio; data of [engelstad-parks-1971]", VERIFIED)
            .validity("A curve fitted to trials; outside the rates tested it is a guess.")
            .caution("It knows neither the label nor the highest rate tested: never go above either.")
            .example(
                    "ym=74.7426 m=225.340 kappa=.00113122 price=1.15 input_price=.11",
                    "rate=140",
                    "corn, Tennessee 1962: best rate 140 in [engelstad-parks-1971]",
                    VERIFIED)
            .example(
                    "ym=74.7426 m=225.340 kappa=.00113122 price=1.15 input_price=.11",
                    "rate=140.78 yield=70.70",
                    "independent arithmetic",
                    COMPUTED)
            .model(BestRatePlateau::solve);

    private BestRatePlateau() {}

    private static Outputs solve(Given given, Working working) {
        double top = given.number("ym");
        double m = given.number("m");
        double kappa = given.number("kappa");
        double price = given.number("price");
        double input = given.number("input_price");
        double pass = given.number("pass_usd_ac");
        double free = working.line(
                "rate where a unit just pays",
                m - input / price / kappa,
                "units/ac",
                "{} − {} ÷ {} ÷ {}",
                m,
                input,
                price,
                kappa);
        double tried = Math.max(0, free);
        double yield = working.line(
                "yield there",
                top - kappa / 2 * (m - tried) * (m - tried),
                "bu/ac",
                "{} − {} ÷ 2 × ({} − {})²",
                top,
                kappa,
                m,
                tried);
        double none = working.line(
                "crop value with none",
                price * (top - kappa / 2 * m * m),
                "$/ac",
                "{} × ({} − {} ÷ 2 × {}²)",
                price,
                top,
                kappa,
                m);
        double margin = working.line(
                "crop value less input and pass",
                price * yield - input * tried - pass,
                "$/ac",
                "{} × {} − {} × {} − {}",
                price,
                yield,
                input,
                tried,
                pass);
        if (tried == 0 || margin <= none) {
            working.caution("No rate pays for the pass and the input: none is best.");
            return new Outputs().put("rate", 0).put("yield", none / price).put("margin_over_input", none);
        }
        return new Outputs().put("rate", tried).put("yield", yield).put("margin_over_input", margin);
    }
}
