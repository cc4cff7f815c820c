package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Input;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Yield left by the time of weed removal or of the last weeding, as a figure. The curves are {@link CriticalCurves}. */
public final class CriticalPeriod {
    private static final Input TIME = number(
            "t",
            "Time since the crop emerged, in the unit of the curve",
            "d or degree days",
            Range.closed(0, 20_000),
            "400");

    public static final Figure FIGURE = Figure.declare("critical-period", Subject.WEEDS)
            .question("What yield is left when weeds stay until this time, or come after it?")
            .input(word(
                    "model",
                    "logistic: weeds stay until t; gompertz: clean until t",
                    List.of("logistic", "gompertz"),
                    "logistic"))
            .input(TIME)
            .input(number("c", "Rate of the weedy curve", "1/time", Range.above(0, 10), "0.01")
                    .optional())
            .input(number("d", "Inflection of the weedy curve", "time", Range.closed(-1000, 20_000), "500")
                    .optional())
            .input(number("f", "Shape of the weedy curve, more than 1", "", Range.above(1, 1000), "1.8")
                    .optional())
            .input(number("a", "Highest yield of the weed-free curve", "%", Range.above(0, 150), "100")
                    .optional())
            .input(number("b", "Shape of the weed-free curve", "", Range.above(0, 1000), "0.5")
                    .optional())
            .input(number("k", "Rate of the weed-free curve", "1/time", Range.above(0, 10), "0.008")
                    .optional())
            .output("yield_pct", "Yield left, of weed-free", "%")
            .formula("logistic: 100 × (1 ÷ (exp(c(t − d)) + f) + (f − 1) ÷ f); gompertz: a × exp(−b × exp(−k t))")
            .source("[hall-1992]; [knezevic-2002]", MEMORY)
            .validity(
                    "Each curve needs its own numbers, fitted on fields like this one; those of the other curve are refused.")
            .caution("Curves differ by field, nitrogen, row width and year: show a band.")
            .example("model=logistic t=0 c=.01 d=500 f=1.8", "yield_pct=99.7928", "independent arithmetic", COMPUTED)
            .example("model=logistic t=200 c=.01 d=500 f=1.8", "yield_pct=98.5047", "independent arithmetic", COMPUTED)
            .example("model=logistic t=400 c=.01 d=500 f=1.8", "yield_pct=90.5725", "independent arithmetic", COMPUTED)
            .example("model=logistic t=800 c=.01 d=500 f=1.8", "yield_pct=49.0137", "independent arithmetic", COMPUTED)
            .example("model=gompertz t=0 a=100 b=.5 k=.008", "yield_pct=60.6531", "independent arithmetic", COMPUTED)
            .example("model=gompertz t=100 a=100 b=.5 k=.008", "yield_pct=79.8784", "independent arithmetic", COMPUTED)
            .example("model=gompertz t=285 a=100 b=.5 k=.008", "yield_pct=95.0144", "independent arithmetic", COMPUTED)
            .example("model=gompertz t=600 a=100 b=.5 k=.008", "yield_pct=99.5894", "independent arithmetic", COMPUTED)
            .model(CriticalPeriod::solve);

    private CriticalPeriod() {}

    private static Outputs solve(Given given, Working working) {
        double t = given.number("t");
        boolean logistic = given.word("model").equals("logistic");
        Asked.onlyFor(
                given,
                "model",
                logistic ? List.of("c", "d", "f") : List.of("a", "b", "k"),
                logistic ? List.of("a", "b", "k") : List.of("c", "d", "f"));
        double yield;
        if (logistic) {
            double c = given.number("c");
            double d = given.number("d");
            double f = given.number("f");
            yield = working.line(
                    "yield left",
                    CriticalCurves.weedyUntil(t, c, d, f),
                    "%",
                    "100 × (1 ÷ (exp({} × ({} − {})) + {}) + ({} − 1) ÷ {})",
                    c,
                    t,
                    d,
                    f,
                    f,
                    f);
        } else {
            double a = given.number("a");
            double b = given.number("b");
            double k = given.number("k");
            yield = working.line(
                    "yield left",
                    CriticalCurves.cleanUntil(t, a, b, k),
                    "%",
                    "{} × exp(−{} × exp(−{} × {}))",
                    a,
                    b,
                    k,
                    t);
        }
        return new Outputs().put("yield_pct", yield);
    }
}
