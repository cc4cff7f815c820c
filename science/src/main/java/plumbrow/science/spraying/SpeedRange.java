package plumbrow.science.spraying;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Speeds between which a rate controller can hold the volume inside a pressure window.
 *
 *   MPH = 5940·q0·√(P/P0)/(GPA·W) at both ends; high over low is √(P high/P low), whatever the nozzle
 *
 * Source: {@link BoomFlow} and the orifice law of {@link NozzlePressure}.
 */
public final class SpeedRange {
    public static final Figure FIGURE = Figure.declare("speed-range", Subject.SPRAYING)
            .question("Between which speeds can the controller hold the volume?")
            .input(Asked.VOLUME)
            .input(Asked.SPACING)
            .input(Asked.RATED_FLOW)
            .input(number("low_psi", "Lowest pressure allowed", "psi", Range.POSITIVE, "30"))
            .input(number("high_psi", "Highest pressure allowed", "psi", Range.POSITIVE, "70"))
            .input(Asked.RATED_PRESSURE)
            .output("low_mph", "Slowest", "mph")
            .output("high_mph", "Fastest", "mph")
            .formula("mph = 5940 × rated flow × √(pressure ÷ rated pressure) ÷ (gal/ac × inches), at both ends")
            .source("Spray volume formula and orifice law", PRACTICE)
            .validity("Water-like spray. The lowest pressure not above the highest.")
            .caution("Droplets get finer towards the top: look the droplet class up at both ends. " + Asked.LABEL_RULES)
            .example(
                    "gpa=15 spacing_in=20 rated_gpm=.4 low_psi=30 high_psi=70",
                    "low_mph=6.86 high_mph=10.48",
                    "size 04",
                    COMPUTED)
            .example(
                    "gpa=15 spacing_in=20 rated_gpm=.5 low_psi=30 high_psi=60",
                    "low_mph=8.57 high_mph=12.12",
                    "size 05",
                    COMPUTED)
            .example(
                    "gpa=20 spacing_in=20 rated_gpm=.8 low_psi=25 high_psi=90",
                    "low_mph=9.39 high_mph=17.82",
                    "size 08",
                    COMPUTED)
            .model(SpeedRange::solve);

    private SpeedRange() {}

    private static Outputs solve(Given given, Working working) {
        double low = given.number("low_psi");
        double high = given.number("high_psi");
        if (low > high) {
            throw given.refuse("low_psi", "a pressure not above high_psi (" + Numbers.plain(high) + ")");
        }
        return new Outputs()
                .put("low_mph", showSpeed(given, working, "slowest", low))
                .put("high_mph", showSpeed(given, working, "fastest", high));
    }

    private static double showSpeed(Given given, Working working, String label, double psi) {
        double rated = given.number("rated_gpm");
        double ratedPsi = given.number("rated_psi");
        double volume = given.number("gpa");
        double spacing = given.number("spacing_in");
        return working.line(
                label,
                BoomFlow.mph(NozzlePressure.waterGpm(psi, rated, ratedPsi), volume, spacing),
                "mph",
                "5940 × {} × √({} psi ÷ {} psi) ÷ ({} gal/ac × {} in)",
                rated,
                psi,
                ratedPsi,
                volume,
                spacing);
    }
}
