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
 * Water that an irrigation puts on, as to activate a herbicide.
 *
 *   in = gpm·60·h/(27,154.29·ac)
 *
 * About half an inch within 7 to 10 days, before weeds come up, is the common want; the label says what its product needs.
 *
 * Source: arithmetic; want: Purdue Pest & Crop, Residual Herbicides: Precipitation Requirements.
 */
public final class IrrigationDepth {
    private static final double GALLONS_PER_ACRE_INCH = 43_560.0 * 144 / 231;

    public static final Figure FIGURE = Figure.declare("irrigation-depth", Subject.SOIL)
            .question("How much water does the irrigation put on?")
            .input(number("gpm", "Flow", "gal/min", Range.POSITIVE, "800"))
            .input(number("hours", "Hours", "h", Range.POSITIVE, "12"))
            .input(number("acres", "Acres", "ac", Range.POSITIVE, "130"))
            .output("depth_in", "Depth of water", "in")
            .formula("inches = gal/min × 60 × hours ÷ (27,154.29 × acres)")
            .source("Arithmetic", PRACTICE)
            .validity("Water pumped; what evaporates and runs off is not taken away.")
            .caution(
                    "About 0.5 in within 7 to 10 days activates most residuals (Purdue); the label says what its product needs.")
            .example("gpm=800 hours=12 acres=130", "depth_in=0.163", "independent arithmetic", COMPUTED)
            .model(IrrigationDepth::solve);

    private IrrigationDepth() {}

    private static Outputs solve(Given given, Working working) {
        double flow = given.number("gpm");
        double hours = given.number("hours");
        double acres = given.number("acres");
        return new Outputs()
                .put(
                        "depth_in",
                        working.line(
                                "depth",
                                flow * 60 * hours / (GALLONS_PER_ACRE_INCH * acres),
                                "in",
                                "{} gal/min × 60 × {} ÷ (27,154.29 × {})",
                                flow,
                                hours,
                                acres));
    }
}
