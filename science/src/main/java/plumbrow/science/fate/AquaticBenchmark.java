package plumbrow.science.fate;

import static plumbrow.science.figure.Input.list;
import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Input.word;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import java.util.Arrays;
import java.util.List;
import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * A benchmark for life in water from the tests at hand, and a concentration against it.
 *
 *   acute, fish and invertebrates: 0.5 × lowest LC50 or EC50;  chronic: lowest NOAEC;  plants: lowest EC50
 *
 * Source: EPA/OPP aquatic life benchmarks (rules from memory).
 */
public final class AquaticBenchmark {
    private static final double ACUTE_SHARE = 0.5;

    public static final Figure FIGURE = Figure.declare("aquatic-benchmark", Subject.FATE)
            .question("How does a concentration in water compare with what its life stands?")
            .input(list("endpoints_ug_l", "Endpoints of the tests, same kind", "µg/L", Range.POSITIVE, "180,720,95"))
            .input(word(
                    "kind",
                    "Acute LC50 or EC50 of animals, chronic NOAEC, or EC50 of plants",
                    List.of("acute", "chronic", "plants"),
                    "acute"))
            .input(number("concentration_ug_l", "Concentration in the water", "µg/L", Range.NOT_NEGATIVE, "17.65"))
            .output("benchmark_ug_l", "Benchmark", "µg/L")
            .output("share", "Concentration over the benchmark", "")
            .output("verdict", "In words", "")
            .formula(
                    "acute: half of the lowest endpoint; chronic and plants: the lowest; then concentration ÷ benchmark")
            .source("[epa-aquatic-benchmarks]", MEMORY)
            .validity("Acceptable tests of one kind. Few tests mean a benchmark that may be far too high.")
            .caution(Asked.SCREEN)
            .example(
                    "endpoints_ug_l=180,720,95 kind=acute concentration_ug_l=17.65",
                    "benchmark_ug_l=47.5 share=.3716 verdict=below the benchmark",
                    "half of the lowest, by hand",
                    COMPUTED)
            .example(
                    "endpoints_ug_l=20,10 kind=chronic concentration_ug_l=17.65",
                    "benchmark_ug_l=10 verdict=look closer",
                    "lowest, by hand",
                    COMPUTED)
            .model(AquaticBenchmark::solve);

    private AquaticBenchmark() {}

    private static Outputs solve(Given given, Working working) {
        double lowest = Arrays.stream(given.list("endpoints_ug_l")).min().orElseThrow();
        double share = given.word("kind").equals("acute") ? ACUTE_SHARE : 1;
        double benchmark = working.line("benchmark", share * lowest, "µg/L", "{} × {}", share, lowest);
        double found = given.number("concentration_ug_l");
        double of = working.line("over the benchmark", found / benchmark, "", "{} ÷ {}", found, benchmark);
        return new Outputs()
                .put("benchmark_ug_l", benchmark)
                .put("share", of)
                .put("verdict", of >= 1 ? "look closer" : "below the benchmark");
    }
}
