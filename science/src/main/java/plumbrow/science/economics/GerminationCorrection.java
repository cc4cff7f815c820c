package plumbrow.science.economics;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * How much more seed a poor germination takes.
 *
 *   more = usual germination / germination − 1
 *
 * 70 % instead of 90 % takes 28.6 % more seed, not 20 % more as some trade pages print.
 */
public final class GerminationCorrection {
    public static final Figure FIGURE = Figure.declare("germination-correction", Subject.ECONOMICS)
            .question("How much more seed does a poorer germination take?")
            .input(number("germination_pct", "Germination of this lot", "%", Range.above(0, 100), "70"))
            .input(number(
                            "usual_germination_pct",
                            "Germination the usual rate is meant for",
                            "%",
                            Range.above(0, 100),
                            "90")
                    .orElse("90"))
            .output("extra_seed_pct", "More seed", "%")
            .formula("more = usual germination ÷ germination − 1")
            .source("Same live seeds from both lots: arithmetic", PRACTICE)
            .validity("Both above 0, at most 100 %. A better germination gives a negative answer: less seed.")
            .caution("Below about 80 % in soybean, thin stands and weak vigour are not made good by rate alone.")
            .example(
                    "germination_pct=70 usual_germination_pct=90",
                    "extra_seed_pct=28.6",
                    "where a trade page says 20",
                    COMPUTED)
            .model(GerminationCorrection::solve);

    private GerminationCorrection() {}

    private static Outputs solve(Given given, Working working) {
        double germination = given.number("germination_pct");
        double usual = given.number("usual_germination_pct");
        return new Outputs()
                .put(
                        "extra_seed_pct",
                        working.line(
                                "more seed",
                                (usual / germination - 1) * 100,
                                "%",
                                "{} % ÷ {} % − 1",
                                usual,
                                germination));
    }
}
