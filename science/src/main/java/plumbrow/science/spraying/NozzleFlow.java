package plumbrow.science.spraying;

import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/** Nozzle flow from volume, speed and spacing as a figure. The arithmetic is {@link BoomFlow}. */
public final class NozzleFlow {
    public static final Figure FIGURE = Figure.declare("nozzle-flow", Subject.SPRAYING)
            .question("How much must one nozzle flow?")
            .alsoAsked("Which nozzle do I take for so many gallons an acre?")
            .input(Asked.VOLUME)
            .input(Asked.SPEED)
            .input(Asked.SPACING)
            .output("gpm", "Flow of one nozzle", "gal/min")
            .output("oz_min", "The same in a measuring jug", "fl oz/min")
            .formula("gal/min = gal/ac × mph × inches ÷ 5940")
            .source(SprayVolume.SOURCE, VERIFIED)
            .validity(SprayVolume.TREATED)
            .caution(Asked.LABEL_RULES)
            .example("gpa=15 mph=12 spacing_in=20", "gpm=0.6061", "independent arithmetic", COMPUTED)
            .example("gpa=3 mph=5 spacing_in=30", "gpm=0.0758 oz_min=9.70", "in the furrow", COMPUTED)
            .model(NozzleFlow::solve);

    /** Fluid ounces in a gallon. */
    static final double OUNCES_PER_GALLON = 128;

    private NozzleFlow() {}

    private static Outputs solve(Given given, Working working) {
        double flow = showFlow(working, given.number("gpa"), given.number("mph"), given.number("spacing_in"));
        return new Outputs()
                .put("gpm", flow)
                .put(
                        "oz_min",
                        working.line("in a jug", flow * OUNCES_PER_GALLON, "fl oz/min", "{} gal/min × 128", flow));
    }

    static double showFlow(Working working, double volume, double speed, double spacing) {
        return working.line(
                "flow of one nozzle",
                BoomFlow.gpm(volume, speed, spacing),
                "gal/min",
                "{} gal/ac × {} mph × {} in ÷ 5940",
                volume,
                speed,
                spacing);
    }
}
