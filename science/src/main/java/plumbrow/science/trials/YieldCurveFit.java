package plumbrow.science.trials;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;
import static plumbrow.science.figure.Status.VERIFIED;

import java.util.Arrays;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Yield over the rate of an input, as a curve that falls again or one that levels off.
 *
 *   quadratic Y = a + b·x + c·x²;  plateau Y = Y_m − (κ/2)·(M − x)² below M, Y_m from M on;  both by least squares
 *
 * The form matters: on one corn field the two best rates lay 10 lb apart. For each M the plateau is a straight-line fit on
 * (M − x)²; M itself is sought between the lowest rates and twice the highest.
 *
 * Source: Engelstad & Parks 1971 (agridat engelstad.nitro) for the check.
 */
public final class YieldCurveFit {
    private static final int GRID = 2000;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final String RATES = "0,67,134,201,268,335";
    private static final String YIELDS = "46.5,59.0,71.9,73.1,74.5,75.5";
    private static final Input RATE_LIST = list("rates", "Rates of the input", "units/ac", Range.NOT_NEGATIVE, RATES);
    private static final Input YIELD_LIST = list("yields", "Yield at each rate", "bu/ac", Range.ANY, YIELDS);
    private static final String CAUTION =
            "Optima are poorly known and tops are flat: the form of the curve alone moves them.";

    public static final Figure QUADRATIC = Figure.declare("quadratic-fit", Subject.TRIALS)
            .question("Which parabola do these yields over rate show?")
            .input(RATE_LIST)
            .input(YIELD_LIST)
            .output("a", "Yield without the input", "bu/ac")
            .output("b", "First yield per unit of input", "bu per unit")
            .output("c", "Bend of the curve", "bu per unit²")
            .output("rss", "Squares around the curve", "")
            .formula("yield = a + b × rate + c × rate², by least squares")
            .source("Least squares", MEMORY)
            .validity("Three or more different rates.")
            .caution(CAUTION)
            .example(
                    "rates=" + RATES + " yields=" + YIELDS,
                    "a=46.825 b=.2201013 c=-.00041172",
                    "corn, Jackson, Tennessee 1962, [engelstad-parks-1971]",
                    COMPUTED)
            .model(YieldCurveFit::solveQuadratic);

    public static final Figure PLATEAU = Figure.declare("plateau-fit", Subject.TRIALS)
            .question("Which curve that levels off do these yields over rate show?")
            .input(RATE_LIST)
            .input(YIELD_LIST)
            .output("ym", "Yield on the plateau", "bu/ac")
            .output("m", "Rate at which the plateau begins", "units/ac")
            .output("kappa", "Bend below it", "bu per unit²")
            .output("rss", "Squares around the curve", "")
            .formula("yield = Ym − (κ ÷ 2) × (M − rate)² below M, Ym from M on, by least squares")
            .source("Quadratic plateau; data of [engelstad-parks-1971]", VERIFIED)
            .validity(
                    "Four or more different rates, yields that rise and level off within twice the highest rate; else refused.")
            .caution(CAUTION)
            .example(
                    "rates=" + RATES + " yields=" + YIELDS,
                    "m=225",
                    "plateau at 225 lb as in [engelstad-parks-1971]",
                    VERIFIED)
            .example(
                    "rates=" + RATES + " yields=" + YIELDS,
                    "ym=74.7426 m=225.340 kappa=.00113122 rss=8.5305",
                    "independent arithmetic",
                    COMPUTED)
            .model(YieldCurveFit::solvePlateau);

    private YieldCurveFit() {}

    private static double[] rates(Given given, int different) {
        double[] rates = given.list("rates");
        if (given.list("yields").length != rates.length) {
            throw given.refuse("yields", "as many numbers as rates has (" + rates.length + ")");
        }
        if (Arrays.stream(rates).distinct().count() < different) {
            throw given.refuse("rates", different + " or more different rates");
        }
        return rates;
    }

    /** Slope, intercept and squares left of a straight line. */
    private static double[] line(double[] x, double[] y) {
        double mx = Asked.mean(x);
        double my = Asked.mean(y);
        double xy = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
        }
        double slope = xy / Asked.squares(x, mx);
        double left = 0;
        for (int i = 0; i < x.length; i++) {
            double off = y[i] - my - slope * (x[i] - mx);
            left += off * off;
        }
        return new double[] {slope, my - slope * mx, left};
    }

    private static Outputs solveQuadratic(Given given, Working working) {
        double[] x = rates(given, 3);
        double[] y = given.list("yields");
        double mean = Asked.mean(x);
        double[] u = Arrays.stream(x).map(value -> value - mean).toArray();
        double[] square = Arrays.stream(u).map(value -> value * value).toArray();
        // What of the square and of the yield a straight line leaves, one over the other, is the bend.
        double[] bend = line(u, square);
        double[] straight = line(u, y);
        double[] squareLeft = new double[u.length];
        double[] yieldLeft = new double[u.length];
        for (int i = 0; i < u.length; i++) {
            squareLeft[i] = square[i] - bend[0] * u[i] - bend[1];
            yieldLeft[i] = y[i] - straight[0] * u[i] - straight[1];
        }
        double[] last = line(squareLeft, yieldLeft);
        double c = working.line("bend", last[0], "", "least squares over {} yields", x.length);
        double slope = straight[0] - c * bend[0];
        double b = working.line("first yield per unit", slope - 2 * c * mean, "", "{} − 2 × {} × {}", slope, c, mean);
        double middle = straight[1] - c * bend[1];
        double a = working.line(
                "yield without the input",
                middle - slope * mean + c * mean * mean,
                "",
                "{} − {} × {} + {} × {}²",
                middle,
                slope,
                mean,
                c,
                mean);
        return new Outputs()
                .put("a", a)
                .put("b", b)
                .put("c", c)
                .put("rss", working.line("squares around the curve", last[2], "", "sum of (yield − curve)²"));
    }

    private static double[] plateauAt(double m, double[] x, double[] y) {
        return line(
                Arrays.stream(x)
                        .map(rate -> rate < m ? (m - rate) * (m - rate) : 0)
                        .toArray(),
                y);
    }

    private static Outputs solvePlateau(Given given, Working working) {
        double[] x = rates(given, 4);
        double[] y = given.list("yields");
        double[] sorted = Arrays.stream(x).distinct().sorted().toArray();
        double from = sorted[1];
        double to = 2 * sorted[sorted.length - 1];
        int at = 0;
        for (int i = 1; i <= GRID; i++) {
            if (plateauAt(from + (to - from) * i / GRID, x, y)[2]
                    < plateauAt(from + (to - from) * at / GRID, x, y)[2]) {
                at = i;
            }
        }
        double low = from + (to - from) * Math.max(at - 1, 0) / GRID;
        double high = from + (to - from) * Math.min(at + 1, GRID) / GRID;
        while (high - low > 1e-10 * to) {
            double first = high - GOLDEN * (high - low);
            double second = low + GOLDEN * (high - low);
            if (plateauAt(first, x, y)[2] < plateauAt(second, x, y)[2]) {
                high = second;
            } else {
                low = first;
            }
        }
        double m = (low + high) / 2;
        double[] fit = plateauAt(m, x, y);
        if (!(fit[0] < 0) || at == GRID) {
            throw given.refuse("yields", "yields that rise and level off within twice the highest rate");
        }
        working.line("plateau begins", m, "", "least squares over {} yields", x.length);
        double kappa = working.line("bend", -2 * fit[0], "", "−2 × {}", fit[0]);
        return new Outputs()
                .put("ym", working.line("yield on the plateau", fit[1], "", "least squares over {} yields", x.length))
                .put("m", m)
                .put("kappa", kappa)
                .put("rss", working.line("squares around the curve", fit[2], "", "sum of (yield − curve)²"));
    }
}
