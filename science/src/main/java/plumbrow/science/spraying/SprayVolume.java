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

/** Spray volume from flow, speed and spacing as a figure. The arithmetic is {@link BoomFlow}. */
public final class SprayVolume {
    static final String SOURCE = "[florida-wg013]; [illinois-60-ways], no. 55";
    static final String TREATED =
            "Volume on the treated area: in a band that is the band, not the field. Every number more than 0.";

    public static final Figure FIGURE = Figure.declare("spray-volume", Subject.SPRAYING)
            .question("How much spray goes on an acre?")
            .input(number("gpm", "Flow of one nozzle", "gal/min", Range.POSITIVE, "0.4"))
            .input(Asked.SPEED)
            .input(Asked.SPACING)
            .output("gpa", "Spray volume on the treated area", "gal/ac")
            .formula("gal/ac = 5940 × gal/min ÷ (mph × inches)")
            .source(SOURCE, VERIFIED)
            .validity(TREATED)
            .caution(Asked.LABEL_RULES)
            .example("gpm=3.75 mph=5 spacing_in=222", "gpa=20.07", "[albany-sprayer], boomless, prints 20", VERIFIED)
            .example("gpm=0.40 mph=10 spacing_in=20", "gpa=11.88", "independent arithmetic", COMPUTED)
            .model(SprayVolume::solve);

    private SprayVolume() {}

    private static Outputs solve(Given given, Working working) {
        double flow = given.number("gpm");
        double speed = given.number("mph");
        double spacing = given.number("spacing_in");
        return new Outputs()
                .put(
                        "gpa",
                        working.line(
                                "spray volume",
                                BoomFlow.gpa(flow, speed, spacing),
                                "gal/ac",
                                "5940 × {} gal/min ÷ ({} mph × {} in)",
                                flow,
                                speed,
                                spacing));
    }
}
