package plumbrow.science.fate;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.MEMORY;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Whether spraying in the evening is enough for bees.
 *
 *   missing hours = RT25 − hours until bees fly;  RT25 above 8 h is extended toxicity: evening is not enough
 *
 *   RT25  time until field residue kills a quarter or less of the bees [h]
 *
 * Source: EPA, residual time 25 (from memory).
 */
public final class BeeResidueTime {
    private static final double EXTENDED_H = 8;

    public static final Figure FIGURE = Figure.declare("bee-residue-time", Subject.FATE)
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
            .source("[epa-rt25]", MEMORY)
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
            .model(BeeResidueTime::solve);

    private BeeResidueTime() {}

    private static Outputs solve(Given given, Working working) {
        double fades = given.number("rt25_h");
        double flight = given.number("hours_to_flight");
        double missing = working.line("hours that are missing", fades - flight, "h", "{} − {}", fades, flight);
        String verdict = fades > EXTENDED_H
                ? "extended toxicity: evening is not enough"
                : missing > 0 ? "bees fly before the residue fades" : "residue fades before bees fly";
        return new Outputs().put("verdict", verdict).put("hours_short", missing);
    }
}
