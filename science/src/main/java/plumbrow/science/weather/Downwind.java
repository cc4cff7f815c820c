package plumbrow.science.weather;

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
 * Whether a place lies downwind of the field.
 *
 *   downwind where |angle between (wind from + 180) and the bearing| ≤ tolerance, 45° by default (common practice)
 *
 * Bearings in degrees from north, clockwise; the bearing goes from the field to the place.
 */
public final class Downwind {
    public static final Figure FIGURE = Figure.declare("downwind", Subject.WEATHER)
            .question("Does the wind blow from the field to that place?")
            .input(number("wind_from_deg", "Wind comes from", "°", Range.closed(0, 360), "190"))
            .input(number("bearing_deg", "Bearing from the field to the place", "°", Range.closed(0, 360), "20"))
            .input(number("tolerance_deg", "Counts as downwind up to", "°", Range.closed(0, 180), "45")
                    .orElse("45"))
            .output("downwind", "Downwind", "")
            .output("angle_deg", "Off the wind's line", "°")
            .formula("angle between wind from + 180 and the bearing, compared with the tolerance")
            .source("Geometry; 45° by common practice", PRACTICE)
            .validity("A wind below 3 mph has no direction to rely on.")
            .caution("Label words such as toward or in the direction of decide, and gusts turn.")
            .example("wind_from_deg=190 bearing_deg=20", "downwind=yes angle_deg=10.0", "by hand", COMPUTED)
            .example(
                    "wind_from_deg=350 bearing_deg=180",
                    "downwind=yes angle_deg=10.0",
                    "across north, by hand",
                    COMPUTED)
            .example("wind_from_deg=190 bearing_deg=200", "downwind=no angle_deg=170.0", "by hand", COMPUTED)
            .model(Downwind::solve);

    private Downwind() {}

    /** Angle [°], 0 to 180, between where the wind goes and a bearing. */
    public static double offDegrees(double windFromDegrees, double bearingDegrees) {
        double turn = Math.abs(windFromDegrees + 180 - bearingDegrees) % 360;
        return Math.min(turn, 360 - turn);
    }

    private static Outputs solve(Given given, Working working) {
        double from = given.number("wind_from_deg");
        double bearing = given.number("bearing_deg");
        double off = working.line(
                "off the wind's line",
                offDegrees(from, bearing),
                "°",
                "turn from {} + 180 to {}, the short way",
                from,
                bearing);
        return new Outputs()
                .put("downwind", off <= given.number("tolerance_deg") ? "yes" : "no")
                .put("angle_deg", off);
    }
}
