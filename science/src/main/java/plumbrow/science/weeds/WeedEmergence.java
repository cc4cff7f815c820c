package plumbrow.science.weeds;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * The share of a season's weeds that is up.
 *
 *   Weibull   E = 100·(1 − e^{−(x/λ)^κ}),  λ = E50/(ln 2)^{1/κ}
 *   Gompertz  E = 100·e^{−b·e^{−kx}},      b = ln 2·e^{k·E50}
 *
 *   x  soil degree days summed as the source of the numbers says [°C·d, or °F·d throughout]
 *   λ, E50  [same unit as x];  κ [-], 1.5 to 3 where the source gives none;  b [-];  k [1/unit of x]
 *
 * Degree days of different base temperatures are never mixed. Packages that report Asym − Drop·exp(−exp(lrc)·x^pwr):
 * κ = pwr, λ = e^{−lrc/pwr}.
 *
 * Source: E50 of thirteen species: Forcella et al. 1997 (ars.usda.gov 80836); forms: common practice.
 */
public final class WeedEmergence {
    private static final double LN_2 = Math.log(2);

    public static final Figure FIGURE = Figure.declare("weed-emergence", Subject.WEEDS)
            .question("What share of this season's weeds is up?")
            .input(number(
                    "gdd",
                    "Soil degree days since the start its source names",
                    "degree days",
                    Range.closed(0, 20_000),
                    "200"))
            .input(word("form", "Form of the curve", List.of("weibull", "gompertz"), "weibull"))
            .input(number("scale", "Scale of the Weibull curve", "degree days", Range.above(0, 20_000), "240.2")
                    .optional())
            .input(number(
                            "e50",
                            "Degree days at half emergence, instead of the scale or of b",
                            "degree days",
                            Range.above(0, 20_000),
                            "200")
                    .optional())
            .input(number("shape", "Shape of the Weibull curve", "", Range.above(0, 20), "2")
                    .optional())
            .input(number("b", "b of the Gompertz curve", "", Range.POSITIVE, "8.44426")
                    .optional())
            .input(number("k", "k of the Gompertz curve", "1/degree day", Range.above(0, 10), "0.01")
                    .optional())
            .output("emerged_pct", "Weeds up", "%")
            .formula("weibull: 100 × (1 − exp(−(x ÷ scale)^shape)); gompertz: 100 × exp(−b × exp(−k x))")
            .source("Common forms; half emergence of 13 species in [forcella-1997]", PRACTICE)
            .validity(
                    "weibull needs shape and scale or e50; gompertz needs k and b or e50. Degree days in one unit and of one base"
                            + " temperature.")
            .caution("Early stragglers come before any curve: walk the field.")
            .example("gdd=200 form=weibull e50=200 shape=2", "emerged_pct=50.0000", "independent arithmetic", COMPUTED)
            .example("gdd=400 form=weibull e50=200 shape=2", "emerged_pct=93.7500", "independent arithmetic", COMPUTED)
            .example("gdd=400 form=weibull e50=725 shape=2", "emerged_pct=19.0221", "morningglory", COMPUTED)
            .example(
                    "gdd=400 form=weibull scale=492.749 shape=2",
                    "emerged_pct=48.2618",
                    "independent arithmetic",
                    COMPUTED)
            .example("gdd=100 form=gompertz b=8.44426 k=.01", "emerged_pct=4.476", "independent arithmetic", COMPUTED)
            .example("gdd=250 form=gompertz e50=250 k=.01", "emerged_pct=50.000", "independent arithmetic", COMPUTED)
            .example("gdd=400 form=gompertz e50=250 k=.01", "emerged_pct=85.670", "independent arithmetic", COMPUTED)
            .example("gdd=600 form=gompertz b=8.44426 k=.01", "emerged_pct=97.929", "independent arithmetic", COMPUTED)
            .model(WeedEmergence::solve);

    private WeedEmergence() {}

    /** E [%] by the Weibull form. */
    public static double weibullPct(double degreeDays, double scale, double shape) {
        return -100 * Math.expm1(-Math.pow(degreeDays / scale, shape));
    }

    /** λ from the degree days of half emergence. */
    public static double scaleOfHalf(double half, double shape) {
        return half / Math.pow(LN_2, 1 / shape);
    }

    /** The degree days by which a share [%], below 100, is up by the Weibull form. */
    public static double weibullDegreeDays(double percent, double scale, double shape) {
        return scale * Math.pow(-Math.log1p(-percent / 100), 1 / shape);
    }

    /** E [%] by the Gompertz form. */
    public static double gompertzPct(double degreeDays, double b, double k) {
        return 100 * Math.exp(-b * Math.exp(-k * degreeDays));
    }

    /** b from the degree days of half emergence. */
    public static double gompertzB(double half, double k) {
        return LN_2 * Math.exp(k * half);
    }

    private static Outputs solve(Given given, Working working) {
        boolean weibull = given.word("form").equals("weibull");
        String place = weibull ? "scale" : "b";
        Asked.onlyFor(
                given,
                "form",
                List.of(weibull ? "shape" : "k"),
                weibull ? List.of("b", "k") : List.of("scale", "shape"));
        if (given.has(place) == given.has("e50")) {
            throw given.refuse(
                    "form", "with " + given.word("form") + " either " + place + " or e50, not both or neither");
        }
        double x = given.number("gdd");
        double up;
        if (weibull) {
            double shape = given.number("shape");
            double scale = given.has("scale")
                    ? given.number("scale")
                    : working.line(
                            "scale",
                            scaleOfHalf(given.number("e50"), shape),
                            "",
                            "{} ÷ (ln(2))^(1 ÷ {})",
                            given.number("e50"),
                            shape);
            up = working.line(
                    "weeds up", weibullPct(x, scale, shape), "%", "100 × (1 − exp(−({} ÷ {})^{}))", x, scale, shape);
        } else {
            double k = given.number("k");
            double b = given.has("b")
                    ? given.number("b")
                    : working.line(
                            "b", gompertzB(given.number("e50"), k), "", "ln(2) × exp({} × {})", k, given.number("e50"));
            up = working.line("weeds up", gompertzPct(x, b, k), "%", "100 × exp(−{} × exp(−{} × {}))", b, k, x);
        }
        return new Outputs().put("emerged_pct", up);
    }
}
