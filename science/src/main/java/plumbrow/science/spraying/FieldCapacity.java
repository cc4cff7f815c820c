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
 * Acres that a machine covers in an hour.
 *
 *   C = S·W·E/8.25      [ac/h];  8.25 = 43,560/5280
 *
 *   S  speed [mph];  W  effective width, nominal less overlap [ft];  E  field efficiency, 0 < E ≤ 1
 *
 * Source: Hancock et al., University of Kentucky AEN-73; scope of ASABE EP496.
 */
public final class FieldCapacity {
    private static final double ACRE_HOUR = 43_560.0 / 5280;

    public static final Figure FIGURE = Figure.declare("field-capacity", Subject.SPRAYING)
            .question("How many acres does the machine cover in an hour?")
            .input(Asked.SPEED)
            .input(number("width_ft", "Effective width, less overlap", "ft", Range.POSITIVE, "60"))
            .input(number("efficiency_pct", "Field efficiency", "%", Range.above(0, 100), "68"))
            .output("ac_h", "Field capacity", "ac/h")
            .formula("ac/h = mph × feet × efficiency ÷ 8.25")
            .source("[hancock-aen73]", VERIFIED)
            .validity(
                    "Efficiency more than 0, up to 100 %. Typical: planter 50 to 75, sprayer 50 to 80, cultivator 70 to 90 (from memory).")
            .example("mph=5 width_ft=30 efficiency_pct=100", "ac_h=18.2", "[progressiveforage]", VERIFIED)
            .example("mph=5 width_ft=30 efficiency_pct=80", "ac_h=14.5", "[progressiveforage]", VERIFIED)
            .example("mph=5 width_ft=30 efficiency_pct=60", "ac_h=10.9", "[progressiveforage]", VERIFIED)
            .example("mph=6 width_ft=40 efficiency_pct=70", "ac_h=20.4", "[iowa-a3-24], Table 1", VERIFIED)
            .example("mph=12 width_ft=60 efficiency_pct=68", "ac_h=59.3", "[iowa-a3-24]", VERIFIED)
            .example("mph=12 width_ft=80 efficiency_pct=68", "ac_h=79.1", "[iowa-a3-24]", VERIFIED)
            .example("mph=6 width_ft=30 efficiency_pct=60", "ac_h=13.1", "[iowa-a3-24]", VERIFIED)
            .example("mph=12 width_ft=90 efficiency_pct=65", "ac_h=85.1", "independent arithmetic", COMPUTED)
            .example("mph=7 width_ft=38.5 efficiency_pct=85", "ac_h=27.8", "independent arithmetic", COMPUTED)
            .example("mph=5.5 width_ft=40 efficiency_pct=65", "ac_h=17.3", "independent arithmetic", COMPUTED)
            .model(FieldCapacity::solve);

    private FieldCapacity() {}

    /** Field capacity [ac/h] at a speed [mph], width [ft] and efficiency, a share. */
    public static double acresPerHour(double mph, double widthFeet, double efficiency) {
        return mph * widthFeet * efficiency / ACRE_HOUR;
    }

    private static Outputs solve(Given given, Working working) {
        double speed = given.number("mph");
        double width = given.number("width_ft");
        double efficiency = given.number("efficiency_pct");
        return new Outputs()
                .put(
                        "ac_h",
                        working.line(
                                "field capacity",
                                acresPerHour(speed, width, efficiency / 100),
                                "ac/h",
                                "{} mph × {} ft × {} ÷ 100 ÷ 8.25",
                                speed,
                                width,
                                efficiency));
    }
}
