package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Speed that gives a volume, and speed timed over a course.
 *
 *   MPH = 5940·GPM/(GPA·W);  MPH = ft·60/(s·88)
 *
 * Source: {@link BoomFlow}; timed: Oklahoma State, turf.okstate.edu/FactSheets/sprayer.htm.
 */
public final class SpraySpeed {
    private static final double FT_PER_MINUTE_PER_MPH = 88;
    private static final double SECONDS_PER_MINUTE = 60;

    public static final Figure FIGURE = Figure.declare("spray-speed", Subject.SPRAYING)
            .question("How fast must the sprayer drive for this volume?")
            .input(number("gpm", "Flow of one nozzle", "gal/min", Range.POSITIVE, "0.4"))
            .input(Asked.VOLUME)
            .input(Asked.SPACING)
            .output("mph", "Ground speed", "mph")
            .formula("mph = 5940 × gal/min ÷ (gal/ac × inches)")
            .source(SprayVolume.SOURCE, VERIFIED)
            .validity(SprayVolume.TREATED)
            .caution(Asked.LABEL_RULES)
            .example("gpm=.6061 gpa=15 spacing_in=20", "mph=12.00", "turned round", COMPUTED)
            .model(SpraySpeed::solve);

    public static final Figure TIMED = Figure.declare("timed-speed", Subject.SPRAYING)
            .question("How fast was that, over a measured course?")
            .input(number("course_ft", "Length of the course", "ft", Range.POSITIVE, "200"))
            .input(number("seconds", "Seconds it took", "s", Range.POSITIVE, "27"))
            .output("mph", "Ground speed", "mph")
            .formula("mph = feet × 60 ÷ (seconds × 88)")
            .source("[oklahoma-sprayer]", VERIFIED)
            .validity("A flying start, in the field, tank half full.")
            .example("course_ft=200 seconds=45", "mph=3.03", "[oklahoma-sprayer] prints 3", VERIFIED)
            .example("course_ft=200 seconds=27", "mph=5.05", "[oklahoma-sprayer] prints 5", VERIFIED)
            .model(SpraySpeed::solveTimed);

    private SpraySpeed() {}

    /** Speed [mph] over a course [ft] in a time [s]. */
    public static double timedMph(double feet, double seconds) {
        return feet * SECONDS_PER_MINUTE / (seconds * FT_PER_MINUTE_PER_MPH);
    }

    private static Outputs solve(Given given, Working working) {
        double flow = given.number("gpm");
        double volume = given.number("gpa");
        double spacing = given.number("spacing_in");
        return new Outputs()
                .put(
                        "mph",
                        working.line(
                                "speed",
                                BoomFlow.mph(flow, volume, spacing),
                                "mph",
                                "5940 × {} gal/min ÷ ({} gal/ac × {} in)",
                                flow,
                                volume,
                                spacing));
    }

    private static Outputs solveTimed(Given given, Working working) {
        double feet = given.number("course_ft");
        double seconds = given.number("seconds");
        return new Outputs()
                .put(
                        "mph",
                        working.line("speed", timedMph(feet, seconds), "mph", "{} ft × 60 ÷ ({} × 88)", feet, seconds));
    }
}
