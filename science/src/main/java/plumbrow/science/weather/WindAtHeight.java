package plumbrow.science.weather;

import static plumbrow.science.figure.Input.number;
import static plumbrow.science.figure.Status.COMPUTED;
import static plumbrow.science.figure.Status.PRACTICE;
import static plumbrow.science.figure.Status.VERIFIED;

import plumbrow.science.figure.Figure;
import plumbrow.science.figure.Given;
import plumbrow.science.figure.Numbers;
import plumbrow.science.figure.Outputs;
import plumbrow.science.figure.Range;
import plumbrow.science.figure.Subject;
import plumbrow.science.figure.Working;

/**
 * Wind at another height, as at the boom from a forecast at 10 m.
 *
 *   u2 = u1·ln((z2 − d)/z0)/ln((z1 − d)/z0);  over grass to 2 m: u2 = uz·4.87/ln(67.8·z − 5.42)
 *
 *   z1, z2  heights [m], above d + z0;  z0  roughness [m], 0.03 short grass, 0.1 crop;  d  displacement [m]
 *
 * Neutral air only: not valid in an inversion, where the air near the ground may stand still.
 *
 * Source: logarithmic law; over grass: Allen et al. 1998, FAO-56, eq. 47.
 */
public final class WindAtHeight {
    private static final String NEUTRAL =
            "Neutral air only: in an inversion the wind at the boom may be nothing. The label's limit is usually at the boom: measure there.";

    public static final Figure FIGURE = Figure.declare("wind-at-height", Subject.WEATHER)
            .question("How strong is the wind at another height?")
            .input(number("speed", "Wind speed, in any unit", "", Range.NOT_NEGATIVE, "12"))
            .input(number("height", "Height of that wind", "m", Range.above(0, 500), "10"))
            .input(number("to_height", "Height asked for", "m", Range.above(0, 500), "2"))
            .input(number("roughness", "Roughness: 0.03 short grass, 0.1 crop", "m", Range.above(0, 5), "0.03")
                    .orElse("0.03"))
            .input(number(
                            "displacement_m",
                            "Lift by a tall crop, about two thirds of its height",
                            "m",
                            Range.closed(0, 50),
                            "0")
                    .orElse("0"))
            .output("speed", "Wind there, in the unit given", "")
            .output("factor", "Times the wind given", "")
            .formula("wind = speed × ln((to height − lift) ÷ roughness) ÷ ln((height − lift) ÷ roughness)")
            .source("Logarithmic law of the wind", PRACTICE)
            .validity("Both heights above lift and roughness together.")
            .caution(NEUTRAL)
            .example("speed=1 height=10 to_height=2", "factor=0.723 speed=0.723", "independent arithmetic", COMPUTED)
            .example("speed=1 height=10 to_height=2 roughness=.1", "factor=0.651", "independent arithmetic", COMPUTED)
            .model(WindAtHeight::solve);

    public static final Figure GRASS = Figure.declare("wind-at-two-metres", Subject.WEATHER)
            .question("How strong is a wind over grass at two metres?")
            .input(number("speed", "Wind speed, in any unit", "", Range.NOT_NEGATIVE, "12"))
            .input(number("height", "Height of that wind", "m", Range.closed(0.5, 500), "10"))
            .output("speed", "Wind at two metres, in the unit given", "")
            .formula("wind = speed × 4.87 ÷ ln(67.8 × height − 5.42)")
            .source("[fao-56], equation 47", VERIFIED)
            .validity("Short grass; 0.5 m or more.")
            .caution(NEUTRAL)
            .example("speed=5 height=10", "speed=3.74", "[sirad], wind2", VERIFIED)
            .example("speed=3.2 height=10", "speed=2.39", "FAO-56 example 14 prints 2.4", COMPUTED)
            .example("speed=12 height=10", "speed=8.98", "independent arithmetic", COMPUTED)
            .model(WindAtHeight::solveGrass);

    private WindAtHeight() {}

    /** Factor from one height [m] to another; both above displacement and roughness together. */
    public static double factor(double height, double toHeight, double roughness, double displacement) {
        return Math.log((toHeight - displacement) / roughness) / Math.log((height - displacement) / roughness);
    }

    /** Wind at two metres over grass from a wind at a height [m], in the unit given. */
    public static double atTwoMetres(double speed, double height) {
        return speed * 4.87 / Math.log(67.8 * height - 5.42);
    }

    private static Outputs solve(Given given, Working working) {
        double speed = given.number("speed");
        double roughness = given.number("roughness");
        double lift = given.number("displacement_m");
        double height = above(given, "height", lift + roughness);
        double toHeight = above(given, "to_height", lift + roughness);
        double factor = working.line(
                "factor",
                factor(height, toHeight, roughness, lift),
                "",
                "ln(({} − {}) ÷ {}) ÷ ln(({} − {}) ÷ {})",
                toHeight,
                lift,
                roughness,
                height,
                lift,
                roughness);
        return new Outputs()
                .put("speed", working.line("wind", speed * factor, "", "{} × {}", speed, factor))
                .put("factor", factor);
    }

    private static Outputs solveGrass(Given given, Working working) {
        double speed = given.number("speed");
        double height = given.number("height");
        return new Outputs()
                .put(
                        "speed",
                        working.line(
                                "wind at two metres",
                                atTwoMetres(speed, height),
                                "",
                                "{} × 4.87 ÷ ln(67.8 × {} − 5.42)",
                                speed,
                                height));
    }

    private static double above(Given given, String key, double least) {
        double height = given.number(key);
        if (height <= least) {
            throw given.refuse(key, "a height above lift and roughness together (" + Numbers.plain(least) + " m)");
        }
        return height;
    }
}
