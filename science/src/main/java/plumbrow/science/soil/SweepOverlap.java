package plumbrow.science.soil;

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
 * By how much the sweeps of a cultivator cut past one another.
 *
 *   overlap = sweep width − lateral shank spacing, > 0 for a full cut; 1.5 to 3 in usual
 *
 * Worn sweeps are narrower than new ones: measure them.
 *
 * Source: common practice.
 */
public final class SweepOverlap {
    public static final Figure FIGURE = Figure.declare("sweep-overlap", Subject.SOIL)
            .question("Do the sweeps cut the full width?")
            .input(number("sweep_in", "Width of a sweep, measured", "in", Range.above(0, 60), "9"))
            .input(number(
                    "spacing_in", "From shank to shank across the tool, all ranks", "in", Range.above(0, 60), "7"))
            .output("overlap_in", "Overlap", "in")
            .output("verdict", "The cut is", "")
            .formula("overlap = sweep width − shank spacing")
            .source("Common practice", PRACTICE)
            .validity("Sweeps run flat. 1.5 to 3 inches are usual.")
            .caution("Worn sweeps leave strips of living weeds: measure them, do not take the catalogue's width.")
            .example("sweep_in=9 spacing_in=7", "overlap_in=2 verdict=full", "by hand", COMPUTED)
            .example(
                    "sweep_in=7.5 spacing_in=7",
                    "overlap_in=.5 verdict=full, with little to spare",
                    "by hand",
                    COMPUTED)
            .example("sweep_in=6.5 spacing_in=7", "overlap_in=-.5 verdict=not full", "by hand", COMPUTED)
            .model(SweepOverlap::solve);

    private SweepOverlap() {}

    private static Outputs solve(Given given, Working working) {
        double sweep = given.number("sweep_in");
        double spacing = given.number("spacing_in");
        double overlap = working.line("overlap", sweep - spacing, "in", "{} − {}", sweep, spacing);
        String verdict = overlap <= 0 ? "not full" : overlap < 1.5 ? "full, with little to spare" : "full";
        return new Outputs().put("overlap_in", overlap).put("verdict", verdict);
    }
}
