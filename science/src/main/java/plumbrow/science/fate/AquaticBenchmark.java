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
 * A benchmark for life in water from the tests at hand, and a concentration against it; and whether evening is enough for bees.
 *
 *   acute, fish and invertebrates: 0.5 × lowest LC50 or EC50;  chronic: lowest NOAEC;  plants: lowest EC50
 *   bees: residue that kills a quarter for more than 8 hours is extended toxicity: spraying in the evening is not enough
 *
 * Source: EPA/OPP aquatic life benchmarks (rules from memory); RT25 from memory.
 */
public final class AquaticBenchmark {
    private static final double ACUTE_SHARE = 0.5;
    private static final double EXTENDED_H = 8;

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
            .source("EPA/OPP aquatic life benchmarks", MEMORY)
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

    public static final Figure EVENING = Figure.declare("bee-residue-time", Subject.FATE)
            .question("Is spraying in the evening enough for bees?")
            .input(number(
                    "rt25_h",
                    "Hours until residue kills a quarter or less of the bees",
                    "h",
                    Range.closed(0, 5000),
                    "6"))
            .input(number("hours_to_flight", "Hours from the spray until bees fly", "h", Range.closed(0, 72), "10"))
            .output("verdict", "In words", "")
            .output("hours_short", "Hours that are missing; negative is to spare", "h")
            .formula("missing = RT25 − hours until bees fly; above 8 h the toxicity is extended")
            .source("EPA residual time 25", MEMORY)
            .validity("Of the same rate and formulation: never carried over to another. Warm dry weather shortens it.")
            .caution("The label's bee box and its words on bloom decide.")
            .example(
                    "rt25_h=6 hours_to_flight=10",
                    "verdict=residue fades before bees fly hours_short=-4",
                    "by hand",
                    COMPUTED)
            .example(
                    "rt25_h=24 hours_to_flight=10",
                    "verdict=extended toxicity: evening is not enough hours_short=14",
                    "more than 8 h",
                    MEMORY)
            .example(
                    "rt25_h=7 hours_to_flight=5",
                    "verdict=bees fly before the residue fades hours_short=2",
                    "by hand",
                    COMPUTED)
            .model(AquaticBenchmark::solveEvening);

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

    private static Outputs solveEvening(Given given, Working working) {
        double fades = given.number("rt25_h");
        double flight = given.number("hours_to_flight");
        double missing = working.line("hours that are missing", fades - flight, "h", "{} − {}", fades, flight);
        String verdict = fades > EXTENDED_H
                ? "extended toxicity: evening is not enough"
                : missing > 0 ? "bees fly before the residue fades" : "residue fades before bees fly";
        return new Outputs().put("verdict", verdict).put("hours_short", missing);
    }
}
