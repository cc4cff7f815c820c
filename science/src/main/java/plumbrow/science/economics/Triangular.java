package plumbrow.science.economics;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.chance.TriangularDistribution;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** The triangular distribution as a figure: mean, spread and a quantile. The distribution is {@link TriangularDistribution}. */
public final class Triangular {
    public static final Figure FIGURE = Figure.declare("triangular", Subject.ECONOMICS)
            .question("What do low, likely and high say together, as a triangle?")
            .input(Asked.LOW)
            .input(Asked.LIKELY)
            .input(Asked.HIGH)
            .input(Asked.PROBABILITY)
            .output("mean", "Mean", "")
            .output("sd", "Standard deviation", "")
            .sometimes("quantile", "Value not passed with the given chance", "")
            .formula(
                    "mean = (a + m + b) ÷ 3; sd = √((a² + m² + b² − am − ab − mb) ÷ 18); quantile = a + √(p(b−a)(m−a)) up to"
                            + " the likely value, else b − √((1−p)(b−a)(b−m))")
            .source("Triangular distribution, as in [scipy]", VERIFIED)
            .validity(
                    "low ≤ likely ≤ high and low < high, else refused. Low and high are absolute ends. The quantile is given"
                            + " only when a probability is.")
            .example(
                    "low=90 likely=160 high=200 probability=.1",
                    "mean=150.0 sd=22.730 quantile=117.75",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "low=10 likely=15 high=35 probability=.5",
                    "mean=20.0 sd=5.4006 quantile=19.189",
                    "independent arithmetic",
                    COMPUTED)
            .example(
                    "low=0 likely=15 high=30 probability=.9",
                    "mean=15.0 sd=6.1237 quantile=23.292",
                    "independent arithmetic",
                    COMPUTED)
            .model(Triangular::solve);

    private Triangular() {}

    private static Outputs solve(Given given, Working working) {
        Asked.rising(given);
        double a = given.number("low");
        double m = given.number("likely");
        double b = given.number("high");
        TriangularDistribution distribution = new TriangularDistribution(a, m, b);
        double mean = working.line("mean", distribution.mean(), "", "({} + {} + {}) ÷ 3", a, m, b);
        double sd = working.line(
                "standard deviation",
                distribution.sd(),
                "",
                "√(({}² + {}² + {}² − {} × {} − {} × {} − {} × {}) ÷ 18)",
                a,
                m,
                b,
                a,
                m,
                a,
                b,
                m,
                b);
        Outputs outputs = new Outputs().put("mean", mean).put("sd", sd);
        if (given.has("probability")) {
            double p = given.number("probability");
            double quantile = distribution.quantile(p);
            outputs.put(
                    "quantile",
                    quantile <= m
                            ? working.line(
                                    "quantile", quantile, "", "{} + √({} × ({} − {}) × ({} − {}))", a, p, b, a, m, a)
                            : working.line(
                                    "quantile",
                                    quantile,
                                    "",
                                    "{} − √((1 − {}) × ({} − {}) × ({} − {}))",
                                    b,
                                    p,
                                    b,
                                    a,
                                    b,
                                    m));
        }
        return outputs;
    }
}
